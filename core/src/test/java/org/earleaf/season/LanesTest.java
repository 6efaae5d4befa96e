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
            assertThat(Lanes.lost(k)).isCloseTo(1 - StrictMath.exp(-Math.min(k, 40)), within(1e-12));
        }
        assertThat(Lanes.lost(0)).isEqualTo(0);
    }

    @Test
    void share_lost_slowly_agrees_relative_to_the_share() {
        for (double k = 1e-12; k <= 2; k = k * 1.0137) {
            double error = Lanes.lostSlowly(k) / -StrictMath.expm1(-k) - 1;
            assertThat(error).as("rate %s", k).isCloseTo(0, within(k < 1 ? 2e-13 : 3e-10));
        }
        assertThat(Lanes.lostSlowly(0)).isEqualTo(0);
    }

    @Test
    void exponential_agrees_with_the_reference_exponential() {
        for (double x = -2.5; x <= 2.5; x += 0.0013) {
            double error = Lanes.exp(x) / StrictMath.exp(x) - 1;
            assertThat(error).as("at %s", x).isCloseTo(0, within(Math.abs(x) <= 2 ? 1e-11 : 3e-10));
        }
    }

    @Test
    void logarithm_agrees_with_the_reference_logarithm() {
        for (double x = 1e-9; x <= 1e5; x *= 1.00137) {
            assertThat(Lanes.ln(x)).as("at %s", x).isCloseTo(StrictMath.log(x), within(1e-14));
        }
        for (double x = .9; x <= 1.1; x += .000137) {
            assertThat(Lanes.ln(x)).as("at %s", x).isCloseTo(StrictMath.log(x), within(2e-15));
        }
    }

    @Test
    void a_limit_is_reached_at_the_limit() {
        assertThat(Lanes.isAtLeast(115, 115)).isEqualTo(1);
        assertThat(Lanes.isAtLeast(Math.nextDown(115.0), 115)).isEqualTo(0);
        assertThat(Lanes.isAtLeast(Math.nextUp(115.0), 115)).isEqualTo(1);
    }

    @Test
    void limits_are_exact_where_they_bind() {
        for (double x = -3; x <= 3; x += 0.0137) {
            assertThat(Lanes.positive(x)).isEqualTo(Math.max(0, x));
            assertThat(Lanes.share(x)).isCloseTo(Math.max(0, Math.min(1, x)), within(2e-16));
        }
        assertThat(Lanes.share(-1e-300)).isEqualTo(0);
        assertThat(Lanes.share(1 + 1e-15)).isEqualTo(1);
    }

    @Test
    void step_is_one_above_zero_only() {
        assertThat(Lanes.isPositive(1e-12)).isEqualTo(1);
        assertThat(Lanes.isPositive(0)).isEqualTo(0);
        assertThat(Lanes.isPositive(-3)).isEqualTo(0);
    }
}
