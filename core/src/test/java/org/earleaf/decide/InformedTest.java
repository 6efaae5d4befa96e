// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.earleaf.units.Ranks;
import org.junit.jupiter.api.Test;

/** Choices that may not look ahead: a case worked by hand, and what must hold of pure chance. */
class InformedTest {
    private static final double[] RAIN = {0, 1, 2, 10, 11, 12, 30, 31, 32};
    private static final int[] COURSE = {0, 1, 2, 3, 4, 5, 6, 7, 8};

    @Test
    void members_that_saw_the_same_rain_choose_alike_and_the_wet_ones_otherwise_than_the_dry() {
        double[][] gains = {{-5, -6, -7, -3, -2, -1, 8, 9, 7}, {1, 2, 3, 4, 5, 6, 2, 2, 2}};
        Informed informed = new Informed(RAIN, COURSE);
        assertThat(informed.choices(gains)).containsExactly(1, 1, 1, 1, 1, 1, 0, 0, 0);
        assertThat(informed.rule(gains)).containsExactly(1, 1, 0);
        assertThat(Ranks.mean(Informed.realised(gains, informed.choices(gains))))
                .isCloseTo(45.0 / 9, within(1e-12));
    }

    /** The member with the 30 would choose the pass by its own gain; the other two of its group say no. */
    @Test
    void a_member_has_no_vote_in_its_own_choice() {
        double[][] gains = {{0, 0, 0, 0, 0, 0, 30, -2, -2}};
        int[] chosen = new Informed(RAIN, COURSE).choices(gains);
        assertThat(chosen[6]).isEqualTo(Informed.NONE);
        assertThat(chosen[7]).isZero();
    }

    @Test
    void pure_chance_brings_nothing() {
        double sum = 0;
        double byHindsight = 0;
        int cases = 400;
        for (int k = 0; k < cases; k++) {
            SplittableRandom random = new SplittableRandom(k);
            double[] rain = random.doubles(100).toArray();
            int[] course = new int[100];
            Arrays.setAll(course, m -> m / 3);
            double[] ofCourse = random.doubles(34, -10, 10).toArray();
            double[] gains = new double[100];
            Arrays.setAll(gains, m -> ofCourse[m / 3]);
            double[][] one = {gains};
            Informed informed = new Informed(rain, course);
            sum += Ranks.mean(Informed.realised(one, informed.choices(one)));
            byHindsight += Math.max(0, Ranks.mean(gains));
        }
        // Standard error of the mean of 400 cases about .03; choosing and valuing on the same draws would show .4.
        assertThat(byHindsight / cases).isGreaterThan(.3);
        assertThat(sum / cases).isLessThan(.1);
    }

    @Test
    void a_season_that_is_known_is_no_longer_chance() {
        double[][] gains = {{1, 2, 3}, {2, 3, 4}};
        assertThat(new Informed(new double[] {5, 5, 5}, new int[3]).choices(gains))
                .containsExactly(1, 1, 1);
    }
}
