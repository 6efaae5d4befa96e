// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Properties that Fritsch & Butland 1984 ask of the interpolant, and one value by hand. */
class MonotoneCubicTest {
    private static final double[] YIELDS = {120, 150, 172, 188, 197, 200, 201, 200.5};

    @Test
    void it_passes_through_its_points() {
        MonotoneCubic c = new MonotoneCubic(40, YIELDS);
        for (int k = 0; k < YIELDS.length; k++) {
            assertThat(c.at(40 * k)).isCloseTo(YIELDS[k], within(1e-9));
        }
    }

    @Test
    void it_rises_and_falls_only_where_the_points_do() {
        MonotoneCubic c = new MonotoneCubic(40, YIELDS);
        for (double x = 0; x < 240; x += .25) {
            assertThat(c.at(x + .25)).isGreaterThanOrEqualTo(c.at(x) - 1e-9);
        }
        for (double x = 240; x < 279.5; x += .25) {
            assertThat(c.at(x + .25)).isLessThanOrEqualTo(c.at(x) + 1e-9);
        }
    }

    /** Points 0, 1, 3 a unit apart: slopes (3 - 2)/2 = 1/2, 2 x 1 x 2/(1 + 2) = 4/3, 2; half way the mean and an eighth of the slopes' difference. */
    @Test
    void half_way_values_by_hand() {
        MonotoneCubic c = new MonotoneCubic(1, new double[] {0, 1, 3});
        assertThat(c.at(.5)).isCloseTo(.5 + (.5 - 4.0 / 3) / 8, within(1e-12));
        assertThat(c.at(1.5)).isCloseTo(2 + (4.0 / 3 - 2) / 8, within(1e-12));
    }

    @Test
    void a_straight_line_stays_straight() {
        MonotoneCubic c = new MonotoneCubic(2, new double[] {1, 2, 3, 4});
        assertThat(c.at(3.7)).isCloseTo(1 + 3.7 / 2, within(1e-12));
    }
}
