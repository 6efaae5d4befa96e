// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class OverTheTopTest {
    // Source: state extension summary of Minnesota trials, 90 lb N/ac at V3 to V4, 60 at V7, none beyond.
    @Test
    void the_fence_falls_from_v4_to_v7_and_is_shut_beyond() {
        double[][] leavesLb = {{2, 90}, {4, 90}, {5, 80}, {6, 70}, {7, 60}, {7.5, 0}, {12, 0}};
        for (double[] pair : leavesLb) {
            assertThat(Units.lbAc(OverTheTop.most_kgHa(pair[0], false))).isCloseTo(pair[1], within(1e-9));
        }
    }

    @Test
    void a_herbicide_in_it_lowers_the_fence_from_v3_on() {
        assertThat(Units.lbAc(OverTheTop.most_kgHa(3, true))).isCloseTo(60, within(1e-9));
        assertThat(Units.lbAc(OverTheTop.most_kgHa(2, true))).isCloseTo(90, within(1e-9));
    }

    @Test
    void heat_or_dry_air_burns_more() {
        assertThat(OverTheTop.burnsMore(30, 60)).isTrue();
        assertThat(OverTheTop.burnsMore(25, 35)).isTrue();
        assertThat(OverTheTop.burnsMore(25, 60)).isFalse();
    }
}
