// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.tuple;
import static org.assertj.core.api.Assertions.within;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.assertj.core.api.recursive.comparison.RecursiveComparisonConfiguration;
import org.earleaf.farm.Farm;
import org.earleaf.field.Drainage;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneId;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FarmFolderTest {
    @TempDir
    private Path dir;

    private Farm read(TinyFolder folder) {
        return FarmFolder.read(folder.write(dir));
    }

    @Test
    void a_farm_as_an_american_grower_writes_it_is_read_into_inside_units() {
        Farm farm = read(TinyFolder.us());
        assertThat(farm.name()).isEqualTo("Two Creeks");
        assertThat(farm.timeZone()).isEqualTo(java.time.ZoneId.of("America/Chicago"));
        assertThat(farm.site().elevation_m()).isCloseTo(213.36, within(1e-9));
        Zone home = farm.zones().get(0);
        assertThat(home.label()).isEqualTo("Home");
        assertThat(home.area_ha()).isCloseTo(32.374851, within(1e-6));
        assertThat(home.planting().population_m2()).isCloseTo(7.907372, within(1e-6));
        assertThat(home.rowSpacing_m()).isCloseTo(0.762, within(1e-12));
        assertThat(home.planted()).isEqualTo(LocalDate.of(2012, 5, 4));
        assertThat(home.seedbed().previousCrop()).isEqualTo(PreviousCrop.SOYBEAN);
        assertThat(home.land().drainage()).isEqualTo(Drainage.TILED);
        assertThat(home.seedbed().tillage()).isEqualTo(Tillage.REDUCED);
        assertThat(home.seedbed().residueCover()).isCloseTo(0.30, within(1e-12));
        assertThat(home.soil().texture()).isEqualTo(org.earleaf.soil.Texture.SILT_LOAM);
        assertThat(farm.zones()).extracting(Zone::label).containsExactly("Home", "Creek, hill", "Creek, flat");
        assertThat(farm.zones().get(1).soil()).isEqualTo(farm.zones().get(2).soil());
        assertThat(farm.weather().observed().days()).hasSize(TinyFolder.WEATHER_DAYS);
        assertThat(farm.weather().forecast()).hasSize(2);
        assertThat(farm.weather().rainChance()).containsExactly(0.4, 0.1);
    }

    /** 188 bu/ac is 188 x 56 lb x .845 = 8,896 lb/ac dry, 9,971 kg/ha; by hand. */
    @Test
    void the_past_years_of_a_zone_are_told_newest_first() {
        Farm farm = read(TinyFolder.us());
        List<PastYear> home = farm.past(farm.zones().get(0));
        assertThat(home).extracting(PastYear::year).containsExactly(2011, 2010);
        assertThat(home).extracting(PastYear::crop).containsExactly(PreviousCrop.SOYBEAN, PreviousCrop.CORN);
        assertThat(home.get(0).hasYield()).isFalse();
        assertThat(home.get(0).nitrogen_kgHa()).isZero();
        assertThat(home.get(1).yield_kgHa()).isCloseTo(9971, within(1.0));
        assertThat(farm.past(farm.zones().get(1))).isEmpty();
        assertThat(farm.past(farm.zones().get(2))).hasSize(1);
    }

    @Test
    void what_may_be_a_slip_in_a_past_year_is_flagged_and_an_empty_crop_is_corn() {
        Farm farm = read(TinyFolder.us()
                .edit("yields.csv", "corn,188", ",330")
                .edit("yields.csv", "soybean,,0", "soybean,60,0"));
        assertThat(farm.past(farm.zones().get(0)))
                .extracting(PastYear::crop, PastYear::hasYield)
                .containsExactly(tuple(PreviousCrop.SOYBEAN, false), tuple(PreviousCrop.CORN, true));
        assertThat(farm.flags().stream()
                        .map(f -> PlaceText.of(f.where()) + " " + f.what().code())
                        .filter(told -> told.startsWith("yields.csv")))
                .containsExactlyInAnyOrder(
                        "yields.csv, row 2, column yield_bu_ac past.yield-of-another-crop",
                        "yields.csv, row 3, column crop flag.empty",
                        "yields.csv, row 3, column yield_bu_ac past.yield-seldom");
    }

    /** Extension figures: a gallon of UAN 32 weighs 11.06 lb and carries 3.54 lb of nitrogen. */
    @Test
    void the_nitrogen_of_a_pass_follows_from_rate_unit_and_product() {
        Farm farm = read(TinyFolder.us());
        Pass urea = farm.passes().get(0);
        assertThat(urea.nitrogen_kgHa()).isCloseTo(112.085, within(1e-3));
        assertThat(urea.state()).isEqualTo(Pass.State.MADE);
        Pass uan = farm.passes().get(1);
        assertThat(uan.nitrogen_kgHa() / 1.120851).isCloseTo(35.4, within(0.05));
        assertThat(uan.state()).isEqualTo(Pass.State.PLANNED);
        assertThat(uan.placement()).isEqualTo(Placement.MID_INJECT);
        assertThat(uan.inhibitor()).isEqualTo(Inhibitor.BOTH);
        Pass starter = farm.passes().get(2);
        assertThat(starter.nitrogen_kgHa()).isCloseTo(4 * 1.120851, within(1e-5));
        assertThat(starter.zone()).isEqualTo("flat");
    }

    @Test
    void the_same_farm_in_metric_units_is_the_same_farm() {
        Farm us = read(TinyFolder.us());
        Farm metric = read(TinyFolder.metric());
        RecursiveComparisonConfiguration close = RecursiveComparisonConfiguration.builder()
                .withComparatorForType(
                        (a, b) ->
                                Double.compare(a, b) == 0 || Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a)) ? 0 : 1,
                        Double.class)
                .withIgnoredFields("flags", "weather.flags", "boundaries")
                .build();
        assertThat(metric).usingRecursiveComparison(close).isEqualTo(us);
    }

    @Test
    void byte_order_mark_line_ends_quotes_and_the_order_of_columns_do_not_matter() {
        Farm plain = read(TinyFolder.us());
        TinyFolder odd = TinyFolder.us();
        String fields =
                "\uFEFF" + odd.text("fields.csv").replace("Home,", "\"Home\",").replace("field,zone", "FIELD,Zone");
        odd.with("fields.csv", fields.replace("\n", "\r\n"));
        odd.with(
                "irrigation.csv",
                "# from the pivot's log\nzone,depth_in,date,field\n\nhill,0.75,2012-07-03,\" Creek \"\n");
        assertThat(odd.text("fields.csv").getBytes(StandardCharsets.UTF_8)[0]).isEqualTo((byte) 0xEF);
        Farm read = read(odd);
        assertThat(read.zones()).isEqualTo(plain.zones());
        assertThat(read.work().irrigation()).isEqualTo(plain.work().irrigation());
    }

    @Test
    void the_faults_of_all_files_are_told_at_once() {
        TinyFolder folder = TinyFolder.us()
                .edit("farm.csv", "latitude,41.5", "latitude,95")
                .edit("fields.csv", "tiled", "wet")
                .edit("soil.csv", "12,24,3.6", "80,24,3.6")
                .edit("weather.csv", "2012-01-02", "2 Jan")
                .edit("passes.csv", "UAN 32", "UAN 34")
                .edit("readings.csv", "V6", "V99")
                .edit("irrigation.csv", "0.75", "-0.75")
                .edit("manure.csv", "knifed", "spread")
                .edit("rigs.csv", "self-propelled", "sprayer")
                .edit("stock.csv", "gal", "jug")
                .with("boundaries.geojson", "{}");
        EarleafException thrown = catchThrowableOfType(EarleafException.class, () -> read(folder));
        assertThat(thrown.problems())
                .extracting(p -> PlaceText.of(p.place()).split(",")[0])
                .containsExactlyInAnyOrder(
                        "farm.csv",
                        "fields.csv",
                        "soil.csv",
                        "weather.csv",
                        "passes.csv",
                        "readings.csv",
                        "irrigation.csv",
                        "manure.csv",
                        "rigs.csv",
                        "stock.csv",
                        "boundaries.geojson");
    }

    @Test
    void thirty_years_of_weather_are_read_whole() {
        StringBuilder rows = new StringBuilder("date,tmax_c,tmin_c,rain_mm\n");
        for (LocalDate d = LocalDate.of(1985, 1, 1); d.getYear() < 2015; d = d.plusDays(1)) {
            rows.append(d).append(",20,10,").append(d.getDayOfYear() % 4).append('\n');
        }
        Path folder = TinyFolder.us().with("weather.csv", rows.toString()).write(dir);
        assertThat(FarmFolder.read(folder).weather().observed().days()).hasSize(10_957);
    }

    @Test
    void a_folder_may_know_its_things_by_ids() {
        Farm farm = read(TinyFolder.us().with("fields.csv", """
                        field,zone,field_id,area_ac,crop,planted,relative_maturity_d,population_ac,row_spacing_in,previous_crop
                        Home,,f-1,80,corn,2012-05-04,108,32000,30,soybean
                        Creek,hill,f-2,30,corn,2012-05-10,105,30000,30,corn
                        Creek,flat,f-2,50,corn,2012-05-10,105,31000,30,corn
                        """));
        assertThat(farm.zones())
                .extracting(Zone::id)
                .containsExactly(ZoneId.named("f-1", ""), ZoneId.named("f-2", "hill"), ZoneId.named("f-2", "flat"));
        assertThat(read(TinyFolder.us()).zones())
                .extracting(Zone::id)
                .containsExactly(
                        ZoneId.named("Home", ""), ZoneId.named("Creek", "hill"), ZoneId.named("Creek", "flat"));
    }

    @Test
    void an_id_is_one_things_and_a_thing_has_one_id() {
        EarleafException wrong = catchThrowableOfType(
                EarleafException.class, () -> read(TinyFolder.us().with("fields.csv", """
                                field,zone,field_id,area_ac,crop,planted,relative_maturity_d,population_ac,row_spacing_in,previous_crop
                                Home,,Creek,80,corn,2012-05-04,108,32000,30,soybean
                                Creek,hill,,30,corn,2012-05-10,105,30000,30,corn
                                Creek,flat,f-2,50,corn,2012-05-10,105,31000,30,corn
                                """)));
        assertThat(wrong.problems()).extracting(p -> p.code()).containsExactly("id.twice", "id.another");
    }
}
