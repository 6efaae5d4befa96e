// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.field.PreviousCrop;
import org.earleaf.protection.AphidFinding;
import org.earleaf.protection.Cases;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers are assumptions; held here are the arithmetic, the directions and the rules of extension services. */
class AphidModelTest {
    private static final ProtectionSettings USUAL = ProtectionSettings.USUAL;
    private static final LocalDate DAY = Cases.VT.plusDays(3);
    private static final CropAhead CROP = Cases.ahead(Cases.VT, 190 * Cases.BU);

    @Test
    void enemies_slow_growth_and_a_pyrethroid_lets_it_go() {
        AphidModel alone = new AphidModel(50, 0, 0, USUAL);
        AphidModel watched = new AphidModel(50, 1, 0, USUAL);
        assertThat(alone.growth_perDay(false)).isEqualTo(0.20);
        assertThat(watched.growth_perDay(false)).isCloseTo(0.05, within(1e-12));
        assertThat(watched.growth_perDay(true)).isCloseTo(0.17, within(1e-12));
        assertThat(new AphidModel(50, 10, 0, USUAL).growth_perDay(false)).isEqualTo(-0.2);
    }

    /** By hand: aphids that neither grow nor fall, 100 a plant for 9 days to R2, 8 to R3 at half, 4 at a quarter. */
    @Test
    void aphid_days_are_weighted_by_stage() {
        ProtectionSettings still = USUAL.with(ProtectionAssumption.APHID_GROWTH, 0.1);
        AphidModel steady = new AphidModel(100, 0.1 / 0.15, 0, still);
        double days = 9 + 8 * 0.5 + 4 * 0.25;
        assertThat(steady.loss_kgHa(CROP, DAY, false, false, false) / Cases.BU)
                .isCloseTo(100 * days / 10_000 * 5, within(1e-9));
    }

    /** By hand: fungi kill 5 % a day from the fifteenth day after a fungicide on, and every day without one. */
    @Test
    void a_fungicide_stops_the_fungi_that_kill_aphids_for_two_weeks() {
        ProtectionSettings still = USUAL.with(ProtectionAssumption.APHID_GROWTH, 0.1);
        AphidModel steady = new AphidModel(100, 0.1 / 0.15, 1, still);
        double after = 0;
        double without = 0;
        for (int d = 0; d < 21; d++) {
            double weight = d < 9 ? 1 : d < 17 ? 0.5 : 0.25;
            after += weight * Math.exp(-0.05 * Math.max(0, d - 14));
            without += weight * Math.exp(-0.05 * d);
        }
        assertThat(steady.loss_kgHa(CROP, DAY, true, false, false) / Cases.BU)
                .isCloseTo(100 * after / 10_000 * 5, within(1e-9));
        assertThat(steady.loss_kgHa(CROP, DAY, false, false, false) / Cases.BU)
                .isCloseTo(100 * without / 10_000 * 5, within(1e-9));
    }

    @Test
    void a_fungicide_costs_and_an_aphicide_saves_and_killing_enemies_costs() {
        AphidModel m = new AphidModel(30, 0.5, 0.5, USUAL);
        double nothing = m.loss_kgHa(CROP, DAY, false, false, false);
        assertThat(m.loss_kgHa(CROP, DAY, true, false, false)).isGreaterThan(nothing);
        assertThat(m.loss_kgHa(CROP, DAY, false, true, false)).isLessThan(nothing);
        assertThat(m.loss_kgHa(CROP, DAY, false, true, true)).isGreaterThan(m.loss_kgHa(CROP, DAY, false, true, false));
    }

    @Test
    void nothing_is_lost_to_aphids_from_r4_on() {
        AphidModel m = new AphidModel(500, 0, 0, USUAL);
        assertThat(m.loss_kgHa(CROP, CROP.r4(), true, false, false)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "3, 60, 70, 0, false, ABOVE",
        "3, 60, 50, 0, false, UNDECIDED",
        "3, 60, 20, 0, false, BELOW",
        "3, 40, 90, 0, false, BELOW",
        "14, 120, 70, 0, true, ABOVE",
        "14, 120, 70, 0.2, true, UNDECIDED",
        "14, 120, 70, 0, false, BELOW",
        "14, 90, 70, 0, true, BELOW",
        "25, 500, 90, 0, true, BELOW"
    })
    void thresholds_by_stage_drought_and_enemies(
            int daysAfterTassel, double perPlant, int plants, double beetles, boolean drought, Verdict verdict) {
        ProtectionCase c = zone(perPlant, plants, beetles, drought);
        AphidFinding finding =
                AphidFinding.of(c, Cases.VT.plusDays(daysAfterTassel), false).orElseThrow();
        assertThat(finding.verdict()).isEqualTo(verdict);
        assertThat(finding.said().code()).startsWith("aphids.");
    }

    @Test
    void before_a_fungicide_a_fifth_of_the_plants_is_enough() {
        ProtectionCase c = zone(60, 35, 0, false);
        assertThat(AphidFinding.of(c, DAY, false).orElseThrow().callsForInsecticide())
                .isFalse();
        AphidFinding with = AphidFinding.of(c, DAY, true).orElseThrow();
        assertThat(with.callsForInsecticide()).isTrue();
        assertThat(with.beforeFungicide()).isTrue();
    }

    @Test
    void nobody_counted_says_nothing() {
        assertThat(AphidFinding.of(Cases.zoneOnItsOwn().build(), DAY, true)).isEmpty();
    }

    private static ProtectionCase zone(double perPlant, int plants, double beetles, boolean drought) {
        SiteFacts site =
                Cases.facts(5, PreviousCrop.SOYBEAN, 0.2, false, false, false, Double.NaN, Optional.empty(), drought);
        return Cases.zoneOnItsOwn().aphids(perPlant, plants, beetles).site(site).build();
    }
}
