// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.junit.jupiter.api.Test;

/** What year, rotation and past nitrogen make of the usual numbers; sizes are those fitted in bench/trials. */
class FieldParametersTest {
    private static final SoilProfile SOIL = soil(25, 25, 4);

    static SoilProfile soil(double sand_pct, double clay_pct, double om_pct) {
        Horizon horizon = new Horizon(0, 1520, sand_pct, clay_pct, om_pct, 6.5, 18, Horizon.Measured.NOT_GIVEN);
        return SoilProfile.of(List.of(horizon), "North Forty", new ArrayList<>());
    }

    private static Zone zone(int year, PreviousCrop before, Drainage drainage) {
        return zone(year, before, drainage, SOIL);
    }

    static Zone zone(int year, PreviousCrop before, Drainage drainage, SoilProfile soil) {
        return new Zone(
                ZoneName.of("North Forty", ""),
                40,
                new Zone.Planting("corn", LocalDate.of(year, 5, 1), Hybrid.ofMaturity(108), 8, .762, Double.NaN),
                new Zone.Land(soil, drainage, Double.NaN),
                new Zone.Seedbed(before, Tillage.REDUCED, Double.NaN),
                DiseaseFacts.NOT_GIVEN);
    }

    private static ParameterSet of(int year, PreviousCrop before, PastYear... past) {
        return FieldParameters.of(zone(year, before, Drainage.TILED), List.of(past));
    }

    private static PastYear[] corn(double nitrogen_kgHa) {
        return IntStream.rangeClosed(1, 5)
                .mapToObj(k -> new PastYear(
                        new FieldPart("North Forty", ""), 2026 - k, PreviousCrop.CORN, Double.NaN, nitrogen_kgHa))
                .toArray(PastYear[]::new);
    }

    @Test
    void hybrids_of_today_have_the_usual_numbers_and_older_ones_grow_less_and_fade_sooner() {
        assertThat(of(2026, PreviousCrop.SOYBEAN).of(Parameter.RUE)).isEqualTo(Parameter.RUE.usual());
        ParameterSet older = of(2005, PreviousCrop.SOYBEAN);
        assertThat(older.of(Parameter.RUE)).isLessThan(Parameter.RUE.usual());
        assertThat(older.of(Parameter.RUE_DECLINE))
                .isCloseTo(Parameter.RUE_DECLINE.usual() + 11 * Parameter.ERA_GREEN.usual(), within(1e-9));
        assertThat(of(1950, PreviousCrop.SOYBEAN).of(Parameter.RUE))
                .isEqualTo(of(1985, PreviousCrop.SOYBEAN).of(Parameter.RUE));
    }

    /** Iowa and Urbana at full nitrogen: .89 and .83 of corn after soybean, the calibration takes part of it. */
    @Test
    void corn_after_corn_pays_its_drag() {
        double corn = of(2026, PreviousCrop.CORN).of(Parameter.RUE);
        assertThat(corn / of(2026, PreviousCrop.SOYBEAN).of(Parameter.RUE)).isBetween(.85, .99);
    }

    @Test
    void ground_long_without_nitrogen_gives_less_and_the_usual_is_what_is_taken_when_nothing_is_known() {
        ParameterSet unknown = of(2026, PreviousCrop.CORN);
        ParameterSet none = of(2026, PreviousCrop.CORN, corn(0));
        ParameterSet usual = of(2026, PreviousCrop.CORN, corn(187));
        ParameterSet much = of(2026, PreviousCrop.CORN, corn(280));
        assertThat(unknown.of(Parameter.MINERALISATION)).isEqualTo(Parameter.MINERALISATION.usual());
        assertThat(none.of(Parameter.MINERALISATION) / unknown.of(Parameter.MINERALISATION))
                .isCloseTo(1 - Parameter.DEPLETION.usual(), within(1e-9));
        assertThat(usual.of(Parameter.START_NITRATE)).isCloseTo(unknown.of(Parameter.START_NITRATE), within(1e-9));
        assertThat(none.of(Parameter.START_NITRATE)).isLessThan(usual.of(Parameter.START_NITRATE));
        assertThat(much.of(Parameter.START_NITRATE)).isGreaterThan(usual.of(Parameter.START_NITRATE));
    }

    @Test
    void a_tiled_field_has_the_numbers_of_its_rotation_year_and_past() {
        for (PreviousCrop last : PreviousCrop.values()) {
            ParameterSet plot = FieldParameters.of(last, 2005, List.of(corn(60)));
            ParameterSet field = of(2005, last, corn(60));
            for (Parameter p : Parameter.values()) {
                assertThat(plot.of(p)).as("%s after %s", p, last).isEqualTo(field.of(p));
            }
        }
    }

    @Test
    void soybean_leaves_more_and_poor_drainage_stops_roots() {
        assertThat(of(2026, PreviousCrop.SOYBEAN).of(Parameter.START_NITRATE))
                .isGreaterThan(of(2026, PreviousCrop.CORN).of(Parameter.START_NITRATE));
        ParameterSet wet = FieldParameters.of(zone(2026, PreviousCrop.CORN, Drainage.POOR), List.of());
        assertThat(wet.of(Parameter.ROOT_DEPTH_MAX)).isEqualTo(900);
    }
}
