// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.junit.jupiter.api.Test;

/** Rinses worked by hand from the dilution of a well-mixed volume. */
class CleanoutTest {
    @Test
    void three_rinses_of_a_tenth_of_the_tank_are_the_least() {
        Cleanout clean = Cleanout.of(5, 1000, Set.of("sc", "frac 11"));
        assertThat(clean.rinses()).isEqualTo(3);
        assertThat(clean.rinse_m3()).isCloseTo(100, within(1e-9));
        assertThat(clean.left()).isCloseTo(1.080e-4, within(5e-8));
        assertThat(clean.aim()).isEqualTo(1e-3);
        assertThat(clean.isEnough()).isTrue();
        assertThat(clean.steps()).containsExactly(Cleanout.Step.values());
    }

    @Test
    void what_hurts_other_crops_in_traces_asks_for_more() {
        Cleanout strong = Cleanout.of(5, 1000, Set.of("hrac 1"));
        assertThat(strong.aim()).isEqualTo(1e-4);
        assertThat(strong.rinses()).isEqualTo(4);
        assertThat(strong.left()).isCloseTo(Math.pow(5 / 105.0, 4), within(1e-12));
    }

    @Test
    void a_tank_that_hardly_drains_is_said_not_to_come_clean() {
        Cleanout poor = Cleanout.of(100, 1000, Set.of("hrac 2"));
        assertThat(poor.rinses()).isEqualTo(12);
        assertThat(poor.left()).isCloseTo(Math.pow(.5, 12), within(1e-15));
        assertThat(poor.isEnough()).isFalse();
        assertThat(Cleanout.of(0, 1000, Set.of("hrac 4")).left()).isZero();
    }
}
