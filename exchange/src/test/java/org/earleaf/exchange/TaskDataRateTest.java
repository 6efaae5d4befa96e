// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Whole numbers of ISO 11783-10 task data, worked by hand: 1 gal/ac is 9.353956 L/ha or 93,539.56 units. */
class TaskDataRateTest {
    @Test
    void volumes_on_ground_are_hundredths_of_a_cubic_millimetre_on_a_square_metre() {
        assertThat(TaskDataRate.ofVolume(Units.M3M2_PER_GALAC)).isEqualTo(93_540);
        assertThat(TaskDataRate.ofVolume(15 * Units.M3M2_PER_GALAC)).isEqualTo(1_403_093);
        assertThat(TaskDataRate.ofVolume(20 * Units.M3M2_PER_GALAC)).isBetween(1_870_790L, 1_870_792L);
        assertThat(TaskDataRate.ofVolume(187.0791e-7)).isEqualTo(1_870_791);
    }

    @Test
    void masses_on_ground_are_milligrams_on_a_square_metre() {
        assertThat(TaskDataRate.ofMass(Units.kgHa(40))).isEqualTo(4_483);
        assertThat(Units.kgHa(40) * 100).isCloseTo(4_483.4, within(.05));
    }

    @Test
    void a_rate_comes_back_within_half_a_step() {
        SplittableRandom random = new SplittableRandom(3);
        for (int k = 0; k < 1000; k++) {
            double rate = random.nextDouble() * 2e-4;
            assertThat(TaskDataRate.volume_m3m2(TaskDataRate.ofVolume(rate))).isCloseTo(rate, within(.5e-11 * 1.001));
            double mass = random.nextDouble() * 2000;
            assertThat(TaskDataRate.mass_kgHa(TaskDataRate.ofMass(mass))).isCloseTo(mass, within(.005 * 1.001));
        }
    }
}
