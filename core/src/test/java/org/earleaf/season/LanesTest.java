// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Lane exponentials against java.lang.StrictMath, the reference library. */
class LanesTest {

    @Test
    void share_lost_agrees_with_the_reference_exponential() {
        for (double k = 0; k <= 45; k += 0.0137) {
            assertThat(Lanes.lost(k)).isCloseTo(1 - StrictMath.exp(-Math.min(k, 40)), within(5e-14));
        }
        assertThat(Lanes.lost(0)).isEqualTo(0);
    }

    @Test
    void exponential_agrees_with_the_reference_exponential() {
        for (double x = -4; x <= 4; x += 0.0013) {
            assertThat(Lanes.exp(x) / StrictMath.exp(x)).isCloseTo(1, within(5e-14));
        }
    }

    @Test
    void step_is_one_above_zero_only() {
        assertThat(Lanes.isPositive(1e-12)).isEqualTo(1);
        assertThat(Lanes.isPositive(0)).isEqualTo(0);
        assertThat(Lanes.isPositive(-3)).isEqualTo(0);
    }
}
