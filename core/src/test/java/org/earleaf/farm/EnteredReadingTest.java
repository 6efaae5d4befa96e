// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.farm.EnteredReading.Entry;
import org.earleaf.field.Drainage;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.ScoutingCount;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class EnteredReadingTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    private static Zone zone(String field, String zone) {
        double unknown = Double.NaN;
        SoilProfile soil = SoilProfile.of(
                List.of(new Horizon(0, 1524, 20, 25, 3, 6.5, unknown, 1.4, unknown, unknown)),
                "test",
                new ArrayList<>());
        return new Zone(
                field,
                zone,
                10,
                "corn",
                LocalDate.of(2026, 5, 1),
                108,
                8,
                .76,
                PreviousCrop.SOYBEAN,
                Drainage.TILED,
                Tillage.REDUCED,
                unknown,
                unknown,
                "",
                unknown,
                unknown,
                unknown,
                soil);
    }

    private static final Farm FARM = new Farm(
            "Test",
            new Site(40, -88, 220),
            ZoneId.of("America/Chicago"),
            new Prices(4, .5, 1, Map.of()),
            List.of(zone("Home", "east"), zone("Home", "west"), zone("Hill", "")),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            new WeatherBook(new WeatherSeries(List.of()), List.of(), List.of(), List.of(), List.of(), List.of()),
            List.of());

    private static Reading read(
            String field, String zone, String kind, String value, String top, String bottom, String position) {
        return EnteredReading.of(FARM, new Entry(field, zone, DAY, kind, value, top, bottom, position, ""));
    }

    @Test
    void a_soil_test_keeps_what_was_written_and_its_depths_in_mm() {
        Reading r = read("home", "East", "nitrate", " 12 ppm ", "0 in", "12 in", "row");
        assertThat(r.field()).isEqualTo("Home");
        assertThat(r.zone()).isEqualTo("east");
        assertThat(r.value()).isEqualTo(12);
        assertThat(r.entered()).isEqualTo("12 ppm");
        assertThat(r.bottom_mm()).isCloseTo(304.8, within(1e-9));
        assertThat(r.position()).isEqualTo(Reading.Position.ROW);
    }

    /** 43 lb N/ac = 48.2 kg/ha in 304.8 mm of soil at 1.4 g/cm3 is 48.2 / (.1 x 1.4 x 30.48) = 11.29 mg/kg, by hand. */
    @Test
    void a_soil_test_by_area_uses_the_soil_of_the_field() {
        assertThat(read("Hill", "", "nitrate", "43 lb N/ac", "", "", "").value())
                .isCloseTo(11.29, within(.01));
    }

    @Test
    void stages_heights_and_rain_are_read_in_the_words_of_the_field() {
        assertThat(read("Hill", "", "stage", "V9", "", "", "").value()).isEqualTo(9);
        assertThat(read("Hill", "", "stage", "vt", "", "", "").value()).isEqualTo(30);
        assertThat(read("Hill", "", "height", "40 in", "", "", "").value()).isCloseTo(101.6, within(1e-9));
        assertThat(read("Hill", "", "rain", ".5 in", "", "", "").value()).isCloseTo(12.7, within(1e-9));
    }

    private static Reading counted(String kind, String value, ScoutingCount count) {
        return EnteredReading.of(FARM, new Entry("Hill", "", DAY, kind, value, "", "", "", "low corner", count));
    }

    @Test
    void plants_with_lesions_are_a_reading_of_their_own_and_are_kept_in_words() {
        Reading r = counted("lesions", "", new ScoutingCount("NLB", "58", "100", "+1"));
        assertThat(r.value()).isEqualTo(.58);
        assertThat(r.entered()).isEqualTo("58 of 100 plants");
        assertThat(r.note()).isEqualTo("northern leaf blight, 58 of 100 plants, ear leaf +1, low corner");
        assertThat(Scouted.of(r.note()).leaf()).hasValue(1);
        assertThat(counted("insects", "60", new ScoutingCount("aphids", "40", "100", ""))
                        .note())
                .isEqualTo("aphids, 40 of 100 plants, low corner");
    }

    @Test
    void a_count_that_cannot_be_is_refused_with_what_to_do() {
        assertThatThrownBy(() -> counted("lesions", "", new ScoutingCount("", "120", "100", "")))
                .hasMessageContaining("positive")
                .hasMessageContaining("120 of 100");
        assertThatThrownBy(() -> counted("lesions", "", new ScoutingCount("", "12", "", "")))
                .hasMessageContaining("plants looked at");
        assertThatThrownBy(() -> counted("lesions", "", new ScoutingCount("mildew", "12", "50", "")))
                .hasMessageContaining("gray leaf spot");
        assertThatThrownBy(() -> counted("lesions", "", new ScoutingCount("tar spot", "12", "50", "V8")))
                .hasMessageContaining("ear leaf");
        assertThatThrownBy(() -> counted("insects", "", new ScoutingCount("aphids", "40", "100", "")))
                .hasMessageContaining("value");
        assertThatThrownBy(() -> counted("height", "40 in", new ScoutingCount("", "40", "100", "")))
                .hasMessageContaining("lesions or insects");
        assertThatThrownBy(() -> EnteredReading.of(
                        FARM, new Entry("Hill", "", DAY, "lesions", "2", "", "", "", "tar spot on 60 of 50 plants")))
                .hasMessageContaining("60 of 50");
    }

    @Test
    void every_problem_is_told_at_once_with_what_was_expected() {
        assertThatThrownBy(() -> read("Holm", "", "nitrat", "12", "6 in", "", "left"))
                .isInstanceOfSatisfying(
                        EarleafException.class, e -> assertThat(e.problems()).hasSize(4))
                .hasMessageContaining("Home, Hill")
                .hasMessageContaining("nitrate, ammonium")
                .hasMessageContaining("random, row, middle")
                .hasMessageContaining("both depths");
    }

    @Test
    void wrong_units_values_and_depths_are_refused() {
        assertThatThrownBy(() -> read("Hill", "", "nitrate", "12", "", "", "")).hasMessageContaining("ppm");
        assertThatThrownBy(() -> read("Hill", "", "nitrate", "twelve ppm", "", "", ""))
                .hasMessageContaining("as in 12 ppm");
        assertThatThrownBy(() -> read("Hill", "", "rain", "-1 in", "", "", "")).hasMessageContaining("0 to 400 mm");
        assertThatThrownBy(() -> read("Hill", "", "nitrate", "12 ppm", "12 in", "6 in", ""))
                .hasMessageContaining("a bottom below it");
        assertThatThrownBy(() -> read("Home", "north", "rain", "1 in", "", "", ""))
                .hasMessageContaining("east, west");
        assertThatThrownBy(() -> read("Hill", "north", "rain", "1 in", "", "", ""))
                .hasMessageContaining("one zone");
    }
}
