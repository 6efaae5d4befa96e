// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Backward recursion against cases worked by hand. */
class WaitingTest {
    @Test
    void a_sure_better_day_is_waited_for() {
        Waiting w = new Waiting(new double[] {10, 30, 5}, new double[] {1, 1, 1});
        assertThat(w.day()).isEqualTo(1);
        assertThat(w.cost(0)).isCloseTo(-20, within(1e-12));
        assertThat(w.cost(1)).isCloseTo(25, within(1e-12));
    }

    /** Tomorrow 30 with one chance in four, after that nothing: waiting is worth 7.50 and today's 10 is taken. */
    @Test
    void a_better_day_that_rain_may_take_is_not() {
        Waiting w = new Waiting(new double[] {10, 30, 0}, new double[] {.9, .25, .9});
        assertThat(w.cost(0)).isCloseTo(2.5, within(1e-12));
        assertThat(w.day()).isZero();
    }

    @Test
    void losing_reach_costs_what_the_pass_is_worth() {
        Waiting w = new Waiting(new double[] {40, 0, 0}, new double[] {.9, .9, .9});
        assertThat(w.cost(0)).isCloseTo(40, within(1e-12));
    }

    @Test
    void nothing_worth_doing_is_left() {
        assertThat(new Waiting(new double[] {0, -3, -1}, new double[] {1, 1, 1}).day())
                .isEqualTo(-1);
    }

    @Test
    void days_between_those_looked_at_lie_on_a_straight_line() {
        double[] value = {10, 0, 0, 4, 0};
        NitrogenOptions.fillBetween(value, new boolean[] {true, false, false, true, false});
        assertThat(value).containsExactly(new double[] {10, 8, 6, 4, 4}, within(1e-12));
    }

    @Test
    void only_days_that_were_looked_at_are_proposed() {
        Waiting w = new Waiting(new double[] {10, 12, 9}, new double[] {.5, .5, .5});
        assertThat(w.day(new boolean[] {false, false, true})).isEqualTo(2);
    }
}
