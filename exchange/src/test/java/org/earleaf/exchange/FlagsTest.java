// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.Stream;
import org.earleaf.farm.Farm;
import org.earleaf.field.Drainage;
import org.earleaf.field.Tillage;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What does not stop the work but is never passed over in silence. */
class FlagsTest {
    @TempDir
    private Path dir;

    private Farm read(TinyFolder folder) {
        return FarmFolder.read(folder.write(dir));
    }

    private static Flag flag(String where, Said what) {
        return new Flag(Said.text(where), what);
    }

    /** Remarks with their place in a file as people read it. */
    private static List<Flag> flags(Farm farm) {
        return farm.flags().stream()
                .map(f -> flag(PlaceText.of(f.where()), f.what()))
                .toList();
    }

    private record Clamp(
            String file,
            String from,
            String to,
            String where,
            String code,
            ToDoubleFunction<Farm> value,
            double taken) {
        @Override
        public String toString() {
            return where + " " + to;
        }
    }

    @ParameterizedTest
    @MethodSource
    void values_outside_the_range_of_the_model_are_brought_in_and_flagged(Clamp clamp) {
        Farm farm = read(TinyFolder.us().edit(clamp.file(), clamp.from(), clamp.to()));
        assertThat(clamp.value().applyAsDouble(farm)).isCloseTo(clamp.taken(), within(1e-9));
        assertThat(flags(farm))
                .filteredOn(f -> f.where().toString().equals(clamp.where()))
                .singleElement()
                .extracting(f -> f.what().code())
                .isEqualTo(clamp.code());
    }

    static Stream<Clamp> values_outside_the_range_of_the_model_are_brought_in_and_flagged() {
        return Stream.of(
                new Clamp(
                        "farm.csv",
                        "latitude,41.5",
                        "latitude,20",
                        "farm.csv, row 3, column value of latitude",
                        "flag.outside",
                        f -> f.site().latitude_deg(),
                        25),
                new Clamp(
                        "farm.csv",
                        "elevation_ft,700",
                        "elevation_ft,9000",
                        "farm.csv, row 5, column value of elevation_ft",
                        "flag.outside",
                        f -> f.site().elevation_m(),
                        2500),
                new Clamp(
                        "fields.csv",
                        "05-04,108",
                        "05-04,124",
                        "fields.csv, row 2, column relative_maturity_d",
                        "flag.outside",
                        f -> f.zones().get(0).planting().hybrid().relativeMaturity_d(),
                        120),
                new Clamp(
                        "fields.csv",
                        "32000",
                        "50000",
                        "fields.csv, row 2, column population_ac",
                        "flag.outside",
                        f -> f.zones().get(0).planting().population_m2(),
                        10.5),
                new Clamp(
                        "fields.csv",
                        "30,soybean",
                        "10,soybean",
                        "fields.csv, row 2, column row_spacing_in",
                        "flag.outside",
                        f -> f.zones().get(0).rowSpacing_m(),
                        0.38),
                new Clamp(
                        "fields.csv",
                        "2012-05-04",
                        "2012-07-09",
                        "fields.csv, row 2, column planted",
                        "field.planting-brought-in",
                        f -> f.zones().get(0).planted().getDayOfYear(),
                        180),
                new Clamp(
                        "fields.csv",
                        ",108,",
                        ",,",
                        "fields.csv, row 2, column relative_maturity_d",
                        "flag.empty",
                        f -> f.zones().get(0).planting().hybrid().relativeMaturity_d(),
                        108),
                new Clamp(
                        "readings.csv",
                        "18,ppm",
                        "85,ppm",
                        "readings.csv, row 2, column value",
                        "reading.beyond-the-model",
                        f -> f.readings().get(0).value(),
                        60),
                new Clamp(
                        "readings.csv",
                        "18,ppm,,0,12",
                        "18,ppm,,,",
                        "readings.csv, row 2, column top_in",
                        "reading.depth-assumed",
                        f -> f.readings().get(0).bottom_mm(),
                        304.8),
                new Clamp(
                        "irrigation.csv",
                        "0.75",
                        "8",
                        "irrigation.csv, row 2, column depth_in",
                        "flag.outside",
                        f -> f.work().irrigation().get(0).depth_mm(),
                        150),
                new Clamp(
                        "passes.csv",
                        "urea,100",
                        "urea,400",
                        "passes.csv, row 2, column rate",
                        "rate.beyond-the-model",
                        f -> f.passes().get(0).nitrogen_kgHa(),
                        300),
                new Clamp(
                        "rigs.csv",
                        ",60,2,",
                        ",60,,",
                        "rigs.csv, row 2, column outlets_per_row",
                        "flag.empty",
                        f -> f.rigs().get(0).boom().outletsPerRow(),
                        1));
    }

    @Test
    void clay_beyond_the_model_is_brought_in_layer_by_layer() {
        Farm farm = read(TinyFolder.us().edit("soil.csv", "60,22,32,1.0", "60,22,70,1.0"));
        assertThat(farm.flags())
                .anyMatch(f ->
                        f.where().equals(Said.of("where.soil-layer", "where", "soil.csv, Creek, hill", "layer", "6"))
                                && f.what().toString().startsWith("flag.soil-clamped{what=soil.clay, value=70.0"));
    }

    @Test
    void what_nobody_knows_is_left_unread_and_said() {
        TinyFolder folder = TinyFolder.us().with("feilds.csv", "x\n").with("notes.txt", "walk on Friday\n");
        folder.with("farm.csv", folder.text("farm.csv") + "motto,early\n");
        folder.edit("fields.csv", "hybrid,gdd", "brand_of_seed,gdd");
        assertThat(flags(read(folder)))
                .contains(
                        flag("feilds.csv", Said.of("flag.file-unknown")),
                        flag("farm.csv, row 11", Said.of("flag.key-unknown", "key", "motto")),
                        flag("fields.csv, row 1, column brand_of_seed", Said.of("flag.column-unknown")))
                .noneMatch(f -> f.where().toString().startsWith("notes"));
    }

    @Test
    void missing_columns_take_their_defaults_and_say_so_once() {
        TinyFolder folder = TinyFolder.us();
        folder.edit("fields.csv", "drainage,tillage", "spare,waste");
        Farm farm = read(folder);
        assertThat(farm.zones())
                .allMatch(
                        z -> z.land().drainage() == Drainage.WELL && z.seedbed().tillage() == Tillage.REDUCED);
        assertThat(flags(farm))
                .containsOnlyOnce(
                        flag("fields.csv, column drainage", Said.of("flag.no-column", "taken", "well")),
                        flag("fields.csv, column tillage", Said.of("flag.no-column", "taken", "reduced")));
    }

    @Test
    void prices_not_given_are_assumed_and_said() {
        TinyFolder folder = TinyFolder.us();
        folder.edit("farm.csv", "harvest_cost_usd_bu,0.30\nn_price_usd_lb,0.55\nuan_price_usd_ton,350\n", "");
        Farm farm = read(folder);
        assertThat(farm.prices().nitrogen_usdKg() * Units.KG_PER_LB).isCloseTo(0.60, within(1e-12));
        assertThat(farm.prices().harvestCost_usdBu()).isEqualTo(0.25);
        assertThat(flags(farm))
                .extracting(Flag::what)
                .contains(Said.of("flag.key-missing", "key", "n_price_usd_lb", "taken", "0.6"));
    }

    /** 640 lb of nitrogen in a ton of UAN 32: 350 $/ton is 0.546875 $/lb. */
    @Test
    void a_price_of_uan_stands_for_nitrogen_when_none_is_given() {
        Farm farm = read(TinyFolder.us().edit("farm.csv", "n_price_usd_lb,0.55\n", ""));
        assertThat(farm.prices().nitrogen_usdKg() * Units.KG_PER_LB).isCloseTo(0.546875, within(1e-12));
        assertThat(farm.prices().nitrogen_usdKg("UAN 28") * Units.KG_PER_LB).isCloseTo(0.546875, within(1e-12));
        assertThat(farm.prices().nitrogen_usdKg("Starter 10") * Units.KG_PER_LB).isCloseTo(3.0, within(1e-12));
    }

    @Test
    void a_file_of_work_with_a_header_alone_is_an_empty_season() {
        Farm farm = read(TinyFolder.us().with("passes.csv", "field,date,product,rate,rate_unit,placement\n"));
        assertThat(farm.passes()).isEmpty();
        assertThat(flags(farm)).contains(flag("passes.csv", Said.of("found.header-alone")));
    }

    @Test
    void a_crop_that_is_not_modelled_needs_none_of_corns_columns() {
        TinyFolder folder = TinyFolder.us();
        folder.edit("fields.csv", "Home,,80,corn,2012-05-04,108,32000,30", "Home,,80,Wheat,2011-10-05,,,");
        folder.edit("readings.csv", "Home,2012-06-05,stage", "Creek,2012-06-05,stage");
        Farm farm = read(folder);
        assertThat(farm.zones().get(0).crop()).isEqualTo("wheat");
        assertThat(farm.zones().get(0).planted()).isEqualTo(LocalDate.of(2011, 10, 5));
        assertThat(farm.zones().get(0).isCorn()).isFalse();
        assertThat(farm.zones().get(0).planting().population_m2()).isNaN();
    }

    @Test
    void an_outline_of_another_size_is_flagged_and_kept() {
        String square = """
                {"type":"FeatureCollection","features":[{"type":"Feature","properties":{"field":"home"},
                "geometry":{"type":"Polygon","coordinates":[[[-90.5,41.5],[-90.49,41.5],[-90.49,41.51],[-90.5,41.51],[-90.5,41.5]]]}}]}
                """;
        Farm farm = read(TinyFolder.us().with("boundaries.geojson", square));
        assertThat(farm.ground().boundaries()).singleElement().satisfies(b -> {
            assertThat(b.field()).isEqualTo("Home");
            assertThat(b.shape_lonLat().getNumPoints()).isEqualTo(5);
        });
        assertThat(flags(farm))
                .anyMatch(f -> f.where().toString().equals("boundaries.geojson, feature 1")
                        && f.what().toString().contains("drawn=92.7")
                        && f.what().toString().contains("listed=32.37"));
    }

    @Test
    void an_outline_of_the_right_size_is_kept_without_a_remark() {
        String square = """
                {"type":"FeatureCollection","features":[{"type":"Feature","properties":{"field":"Creek","zone":"flat"},
                "geometry":{"type":"Polygon","coordinates":[[[-90.5,41.5],[-90.4946,41.5],[-90.4946,41.5040],[-90.5,41.5040],[-90.5,41.5]]]}}]}
                """;
        Farm farm = read(TinyFolder.us().with("boundaries.geojson", square));
        assertThat(farm.ground().boundaries()).hasSize(1);
        assertThat(flags(farm)).noneMatch(f -> f.where().toString().startsWith("boundaries"));
    }
}
