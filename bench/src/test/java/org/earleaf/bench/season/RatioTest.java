// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/** Medians by hand; the interval by how often it holds the ratio that the rounds were drawn from. */
class RatioTest {
    @Test
    void medians_are_the_middle_or_between_the_two_middle_ones() {
        assertThat(Ratio.median(new double[] {9, 1, 4})).isEqualTo(4);
        assertThat(Ratio.median(new double[] {9, 1, 4, 6})).isEqualTo(5);
    }

    @Test
    void two_contenders_that_are_always_twice_apart_have_a_ratio_without_width() {
        double[] slow = {3, 5, 4, 8, 2, 7, 6, 9, 1, 10, 11};
        double[] fast = slow.clone();
        for (int r = 0; r < fast.length; r++) {
            fast[r] *= 2;
        }
        Ratio ratio = Ratio.of(fast, slow);
        assertThat(new double[] {ratio.low(), ratio.median(), ratio.high()})
                .containsExactly(new double[] {2, 2, 2}, within(1e-12));
    }

    /** A bootstrap of eleven rounds holds the truth less often than it says; far less would be a fault. */
    @Test
    void nine_of_ten_intervals_hold_the_truth() {
        SplittableRandom random = new SplittableRandom(7);
        int held = 0;
        for (int trial = 0; trial < 200; trial++) {
            double[] a = new double[11];
            double[] b = new double[11];
            for (int r = 0; r < a.length; r++) {
                a[r] = 3 * random.nextDouble(.9, 1.1);
                b[r] = 2 * random.nextDouble(.9, 1.1);
            }
            Ratio ratio = Ratio.of(a, b);
            held += ratio.low() <= 1.5 && ratio.high() >= 1.5 ? 1 : 0;
        }
        assertThat(held).isBetween(180, 200);
    }
}
