// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Prices;
import org.earleaf.farm.WeatherBook;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.Hybrid;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class ReadingEntryTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 10);

    private static Zone zone(String field, String zone) {
        double unknown = Double.NaN;
        SoilProfile soil = SoilProfile.of(
                List.of(new Horizon(0, 1524, 20, 25, 3, 6.5, unknown, new Horizon.Measured(1.4, unknown, unknown))),
                "test",
                new ArrayList<>());
        return new Zone(
                ZoneName.of(field, zone),
                10,
                new Zone.Planting("corn", LocalDate.of(2026, 5, 1), Hybrid.ofMaturity(108), 8, .76, unknown),
                new Zone.Land(soil, Drainage.TILED, unknown),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
    }

    private static final Farm FARM = new Farm(
            "Test",
            new Site(40, -88, 220),
            ZoneId.of("America/Chicago"),
            new Farm.Ground(List.of(zone("Home", "east"), zone("Home", "west"), zone("Hill", "")), List.of()),
            Farm.Work.NONE,
            Farm.Shelf.EMPTY,
            new WeatherBook(new WeatherSeries(List.of()), List.of(), List.of(), List.of(), List.of(), List.of()),
            Farm.Rules.usual(new Prices(4, .5, 1, Map.of())),
            List.of());

    private static Reading read(
            String field, String zone, String kind, String value, String top, String bottom, String position) {
        return entered(Draft.of(
                "field",
                field,
                "zone",
                zone,
                "kind",
                kind,
                "value",
                value,
                "top",
                top,
                "bottom",
                bottom,
                "position",
                position));
    }

    private static Reading entered(Draft draft) {
        return ReadingEntry.of(draft, Plots.of(FARM), Optional.of(DAY)).orThrow();
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
        assertThat(read("Hill", "", "nitrate", "43 lb N/ac", "0 in", "12 in", "")
                        .value())
                .isCloseTo(11.29, within(.01));
    }

    @Test
    void stages_heights_and_rain_are_read_in_the_words_of_the_field() {
        assertThat(read("Hill", "", "stage", "V9", "", "", "").value()).isEqualTo(9);
        assertThat(read("Hill", "", "stage", "vt", "", "", "").value()).isEqualTo(30);
        assertThat(read("Hill", "", "height", "40 in", "", "", "").value()).isCloseTo(101.6, within(1e-9));
        assertThat(read("Hill", "", "rain", ".5 in", "", "", "").value()).isCloseTo(12.7, within(1e-9));
    }

    private static Reading counted(String kind, String value, String... parts) {
        Draft draft = Draft.of("field", "Hill", "kind", kind, "value", value, "note", "low corner");
        return entered(Draft.of(parts).or(draft));
    }

    @Test
    void plants_with_lesions_are_a_reading_of_their_own_and_stay_out_of_the_note() {
        Reading r = counted("lesions", "", "found", "NLB", "positive", "58", "plants", "100", "leaf", "+1");
        assertThat(r.value()).isEqualTo(.58);
        assertThat(r.entered()).isEqualTo("58/100");
        assertThat(r.note()).isEqualTo("low corner");
        assertThat(r.scouted().disease()).contains(Disease.NORTHERN_LEAF_BLIGHT);
        assertThat(r.scouted().leaf()).hasValue(1);
        Scouted aphids = counted(
                        "insects", "60", "found", "aphids", "positive", "40", "plants", "100", "lady_beetles", "0,3")
                .scouted();
        assertThat(aphids.isAphids()).isTrue();
        assertThat(aphids.enemies().ladyBeetles()).isEqualTo(.3);
    }

    private static void refuses(String code, org.assertj.core.api.ThrowableAssert.ThrowingCallable entry) {
        assertThatThrownBy(entry).isInstanceOfSatisfying(EarleafException.class, e -> assertThat(e.problems())
                .extracting(Problem::code)
                .containsExactly(code));
    }

    @Test
    void a_count_that_cannot_be_is_refused_by_its_code() {
        refuses("count.more-than-looked-at", () -> counted("lesions", "", "positive", "120", "plants", "100"));
        refuses("count.not-whole", () -> counted("lesions", "", "positive", "12"));
        refuses("disease.unknown", () -> counted("lesions", "", "found", "mildew", "positive", "12", "plants", "50"));
        refuses("leaf.unknown", () -> counted("lesions", "", "positive", "12", "plants", "50", "leaf", "V8"));
        refuses(
                "reading.value-missing",
                () -> counted("insects", "", "found", "aphids", "positive", "40", "plants", "100"));
        refuses("count.not-of-this-kind", () -> counted("height", "40 in", "positive", "40", "plants", "100"));
    }

    @Test
    void a_note_says_nothing_to_the_program() {
        Reading r = entered(Draft.of(
                "field", "Hill", "kind", "lesions", "value", "2", "note", "tar spot on 60 of 50 plants, ear leaf -3"));
        assertThat(r.scouted()).isEqualTo(Scouted.NOTHING);
    }

    @Test
    void depths_beyond_any_core_and_days_beyond_any_record_are_refused() {
        refuses("number.out-of-range", () -> read("Hill", "", "nitrate", "12 ppm", "0 in", "400 in", ""));
        refuses("quantity.unreadable", () -> read("Hill", "", "nitrate", "12 ppm", "NaN mm", "12 in", ""));
        Draft rain = Draft.of("field", "Hill", "kind", "rain", "value", "1 in");
        refuses("date.out-of-range", () -> entered(rain.with("date", "0001-01-01")));
        refuses("date.out-of-range", () -> entered(rain.with("date", "1989-12-31")));
        refuses(
                "date.in-future",
                () -> entered(rain.with("date", DAY.plusDays(1).toString())));
        refuses("date.unreadable", () -> entered(rain.with("date", "06/10/2026")));
    }

    @Test
    void more_nitrate_than_the_model_holds_for_is_taken_down_and_said() {
        Draft rich = Draft.of("field", "Hill", "kind", "nitrate", "value", "88 ppm", "top", "0 in", "bottom", "12 in");
        Entered<Reading> entered = ReadingEntry.of(rich, Plots.of(FARM), Optional.of(DAY));
        assertThat(entered.orThrow().value()).isEqualTo(60);
        assertThat(entered.orThrow().entered()).isEqualTo("88 ppm");
        assertThat(entered.remarks()).extracting(r -> r.said().code()).containsExactly("reading.beyond-the-model");
    }

    @Test
    void every_problem_is_told_at_once_with_what_was_expected() {
        assertThatThrownBy(() -> read("Holm", "", "nitrat", "12", "6 in", "", "left"))
                .isInstanceOfSatisfying(
                        EarleafException.class, e -> assertThat(e.problems()).hasSize(4))
                .hasMessageContaining("field.unknown")
                .hasMessageContaining("reading.kind-unknown")
                .hasMessageContaining("reading.position-unknown")
                .hasMessageContaining("reading.one-depth");
    }

    @Test
    void wrong_units_values_and_depths_are_refused() {
        refuses("reading.unit-unknown", () -> read("Hill", "", "nitrate", "12", "", "", ""));
        refuses("reading.depth-missing", () -> read("Hill", "", "nitrate", "43 lb N/ac", "", "", ""));
        refuses("number.unreadable", () -> read("Hill", "", "nitrate", "twelve ppm", "", "", ""));
        refuses("number.comma-unclear", () -> read("Hill", "", "stand", "32,000 plants/ac", "", "", ""));
        refuses("reading.impossible", () -> read("Hill", "", "rain", "-1 in", "", "", ""));
        refuses("reading.depths-turned", () -> read("Hill", "", "nitrate", "12 ppm", "12 in", "6 in", ""));
        refuses("zone.unknown", () -> read("Home", "north", "rain", "1 in", "", "", ""));
        refuses("zone.none-here", () -> read("Hill", "north", "rain", "1 in", "", "", ""));
    }
}
