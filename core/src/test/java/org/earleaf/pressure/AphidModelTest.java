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
import org.earleaf.units.RecordCopy;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The numbers are assumptions; held here are the arithmetic, the directions and the rules of extension services. */
class AphidModelTest {
    private static final ProtectionSettings USUAL = ProtectionSettings.USUAL;
    private static final LocalDate DAY = Cases.VT.plusDays(3);
    private static final double LOSS_BUAC = USUAL.of(ProtectionAssumption.APHID_LOSS);
    private static final CropAhead CROP = Cases.ahead(Cases.VT, 190 * Cases.BU);

    @Test
    void enemies_slow_growth_and_a_pyrethroid_lets_it_go() {
        AphidModel alone = new AphidModel(50, 0, 0, true, USUAL);
        AphidModel watched = new AphidModel(50, 1, 0, true, USUAL);
        assertThat(alone.growth_perDay(false)).isEqualTo(0.20);
        assertThat(watched.growth_perDay(false)).isCloseTo(0.05, within(1e-12));
        assertThat(watched.growth_perDay(true)).isCloseTo(0.17, within(1e-12));
        assertThat(new AphidModel(50, 10, 0, true, USUAL).growth_perDay(false)).isEqualTo(-0.2);
    }

    /** By hand: aphids that neither grow nor fall, 100 a plant for 9 days to R2, 8 to R3 at half, 4 at a quarter. */
    @Test
    void aphid_days_are_weighted_by_stage() {
        ProtectionSettings still = USUAL.with(ProtectionAssumption.APHID_GROWTH, 0.1);
        AphidModel steady = new AphidModel(100, 0.1 / 0.15, 0, true, still);
        double days = 9 + 8 * 0.5 + 4 * 0.25;
        assertThat(steady.loss_kgHa(CROP, DAY, false, false, false) / Cases.BU)
                .isCloseTo(100 * days / 10_000 * LOSS_BUAC, within(1e-9));
    }

    /** By hand: fungi kill 5 % a day from the fifteenth day after a fungicide on, and every day without one. */
    @Test
    void a_fungicide_stops_the_fungi_that_kill_aphids_for_two_weeks() {
        ProtectionSettings still = USUAL.with(ProtectionAssumption.APHID_GROWTH, 0.1);
        AphidModel steady = new AphidModel(100, 0.1 / 0.15, 1, true, still);
        double after = 0;
        double without = 0;
        for (int d = 0; d < 21; d++) {
            double weight = d < 9 ? 1 : d < 17 ? 0.5 : 0.25;
            after += weight * Math.exp(-0.05 * Math.max(0, d - 14));
            without += weight * Math.exp(-0.05 * d);
        }
        assertThat(steady.loss_kgHa(CROP, DAY, true, false, false) / Cases.BU)
                .isCloseTo(100 * after / 10_000 * LOSS_BUAC, within(1e-9));
        assertThat(steady.loss_kgHa(CROP, DAY, false, false, false) / Cases.BU)
                .isCloseTo(100 * without / 10_000 * LOSS_BUAC, within(1e-9));
    }

    @Test
    void a_fungicide_costs_and_an_aphicide_saves_and_killing_enemies_costs() {
        AphidModel m = new AphidModel(30, 0.5, 0.5, true, USUAL);
        double nothing = m.loss_kgHa(CROP, DAY, false, false, false);
        assertThat(m.loss_kgHa(CROP, DAY, true, false, false)).isGreaterThan(nothing);
        assertThat(m.loss_kgHa(CROP, DAY, false, true, false)).isLessThan(nothing);
        assertThat(m.loss_kgHa(CROP, DAY, false, true, true)).isGreaterThan(m.loss_kgHa(CROP, DAY, false, true, false));
    }

    @Test
    void nothing_is_lost_to_aphids_from_r4_on() {
        AphidModel m = new AphidModel(500, 0, 0, true, USUAL);
        assertThat(m.loss_kgHa(CROP, CROP.r4(), true, false, false)).isZero();
    }

    @ParameterizedTest
    @CsvSource({
        "3, 60, 70, 0, true, ABOVE",
        "3, 60, 42, 0, true, UNDECIDED",
        "3, 60, 20, 0, true, BELOW",
        "3, 40, 90, 0, true, ABOVE",
        "3, 60, 70, 0, false, BELOW",
        "3, 450, 70, 0, false, ABOVE",
        "14, 120, 70, 0, true, ABOVE",
        "14, 120, 70, 0.2, true, UNDECIDED",
        "14, 120, 70, 0, false, BELOW",
        "14, 60, 60, 0, true, BELOW",
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
        ProtectionCase c = zone(60, 35, 0, true);
        assertThat(AphidFinding.of(c, DAY, false).orElseThrow().verdict()).isNotEqualTo(Verdict.ABOVE);
        AphidFinding with = AphidFinding.of(c, DAY, true).orElseThrow();
        assertThat(with.verdict()).isEqualTo(Verdict.ABOVE);
        assertThat(with.beforeFungicide()).isTrue();
        assertThat(AphidFinding.of(zone(60, 35, 0, false), DAY, true)
                        .orElseThrow()
                        .verdict())
                .isEqualTo(Verdict.BELOW);
    }

    @Test
    void few_aphids_are_few_on_however_many_plants_and_many_ask_for_a_count_of_plants() {
        assertThat(uncounted(5).verdict()).isEqualTo(Verdict.BELOW);
        assertThat(uncounted(60).verdict()).isEqualTo(Verdict.UNDECIDED);
    }

    private static AphidFinding uncounted(double perPlant) {
        ProtectionCase c = zone(perPlant, 100, 0, true);
        AphidSighting seen = new AphidSighting(Cases.VT, perPlant, Optional.empty(), 0, 0, 0);
        ProtectionCase without = RecordCopy.with(
                c, "soFar", new ProtectionCase.SoFar(c.lesions(), Optional.of(seen), c.fungicidesMade()));
        return AphidFinding.of(without, DAY, false).orElseThrow();
    }

    /**
     * Published, on plants that have them: up to 400 aphids took at most 8.3 % in drought and nothing to speak of where there
     * was water; many hundreds at most 34.8 and 11.8 % (Foott & Timmins 1973).
     */
    @Test
    void aphids_take_what_was_measured_and_far_more_in_a_dry_crop() {
        assertThat(share(50, true)).isBetween(.02, .083);
        assertThat(share(50, false)).isBetween(0.0, .01);
        assertThat(share(500, true)).isBetween(.083, .348);
        assertThat(share(500, false)).isBetween(.01, .118);
    }

    private static double share(double perPlant, boolean dry) {
        double lost_kgHa = new AphidModel(perPlant, 0, .3, dry, USUAL).loss_kgHa(CROP, DAY, false, false, false);
        return lost_kgHa / CROP.yield_kgHa();
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
