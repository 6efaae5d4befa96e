// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Cleaning, water and tender; figures worked by hand from the formulas of dilution, state weed guides and arithmetic. */
class RinseTest {
    @Test
    void three_small_rinses_leave_less_than_one_big_one() {
        assertThat(Rinse.inTurns(5, 100, 100, 100)).isCloseTo(1.080e-4, within(5e-8));
        assertThat(Rinse.inTurns(5, 300)).isCloseTo(1.639e-2, within(5e-6));
        assertThat(Rinse.inTurns(12, 60, 60, 60)).isCloseTo(1.0 / 216, within(1e-12));
        assertThat(Rinse.runningThrough(5, 300)).isCloseTo(Math.exp(-60), within(1e-30));
        double before = 1;
        for (int n = 1; n < 20; n++) {
            double[] equal = new double[n];
            java.util.Arrays.fill(equal, 300.0 / n);
            double left = Rinse.inTurns(5, equal);
            assertThat(left).isLessThan(before);
            before = left;
        }
    }

    @Test
    void hard_water_asks_for_ammonium_sulfate() {
        WaterQuality well = new WaterQuality(120, 40, 30, 5, .5);
        double lb100gal = well.ammoniumSulfate_kgM3() / Units.KG_PER_LB * 100 * Units.M3_PER_GAL;
        assertThat(lb100gal).isCloseTo(1.821, within(.0005));
        assertThat(well.hardness()).isCloseTo(464.36, within(.01));
        assertThat(well.isHard()).isTrue();
        assertThat(new WaterQuality(60, 12, 10, 2, .1).isHard()).isFalse();
        assertThat(new WaterQuality(200 / 2.497, 0, 0, 0, 0).isHard()).isTrue();
    }

    @Test
    void a_water_test_is_read_as_it_is_written() {
        assertThat(WaterQuality.parse("Ca 120, Mg 40 ppm,na 30, K 5 mg/L, Fe 0.5", Said.text("--water")))
                .isEqualTo(new WaterQuality(120, 40, 30, 5, .5));
        assertThat(WaterQuality.parse("mg 12", Said.text("--water"))).isEqualTo(new WaterQuality(0, 12, 0, 0, 0));
        for (String bad : new String[] {"Ca", "Ca x", "Pb 3", "Ca 1, Ca 2", "", "Ca -1"}) {
            assertThatThrownBy(() -> WaterQuality.parse(bad, Said.text("--water")))
                    .isInstanceOf(EarleafException.class)
                    .hasMessageContaining("--water")
                    .hasMessageContaining("water.unreadable");
        }
    }

    private static final double GAL = Units.M3_PER_GAL;

    @Test
    void a_tender_that_lasts_longer_than_its_round_lets_no_rig_wait() {
        TenderTrips trip = TenderTrips.of(
                1000 * GAL,
                15 * Units.M3M2_PER_GALAC,
                10 * Units.MS_PER_MPH * (90 * Units.M_PER_FT) * .75,
                12 * 60,
                8 * 60);
        assertThat(trip.area_m2() / Units.M2_PER_AC).isCloseTo(66.67, within(.005));
        assertThat(trip.cycle_s() / 60).isCloseTo(68.9, within(.05));
        assertThat(trip.rate_m2s() * 3600 / Units.M2_PER_AC).isCloseTo(58.06, within(.05));
        assertThat(trip.lasts_s(4000 * GAL, 1) / 60).isCloseTo(275.6, within(.1));
        assertThat(trip.lasts_s(4000 * GAL, 3) / 60).isCloseTo(91.9, within(.05));
        assertThat(trip.wait_s(4000 * GAL, 1, 5400)).isZero();
        assertThat(trip.wait_s(4000 * GAL, 3, 5400)).isZero();
        assertThat(trip.wait_s(4000 * GAL, 4, 5400) / 60).isCloseTo(21.1, within(.05));
    }
}
