// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.stat.descriptive.rank.Percentile;
import org.hipparchus.stat.descriptive.rank.Percentile.EstimationType;
import org.junit.jupiter.api.Test;

/** Quantiles beside those of the statistics library Hipparchus, type 7; the worst share beside a plain sort. */
class RanksTest {
    private static double[] drawn(SplittableRandom random, int n) {
        // Many equal values, as where a pass saves nothing in most futures.
        return random.doubles(n).map(u -> u < .4 ? 0 : 100 * (u - .6)).toArray();
    }

    @Test
    void quantiles_agree_with_the_statistics_library_in_whatever_order_they_are_asked() {
        SplittableRandom random = new SplittableRandom(7);
        for (int n : new int[] {1, 2, 3, 10, 100, 999, 40_000}) {
            double[] values = drawn(random, n);
            Ranks ranks = Ranks.of(values);
            Percentile peer = new Percentile().withEstimationType(EstimationType.R_7);
            for (double p : new double[] {.9, .1, .5, .2, .001, 1}) {
                assertThat(ranks.quantile(p))
                        .as("%d values, %s", n, p)
                        .isCloseTo(peer.evaluate(values, 100 * p), within(1e-9));
            }
        }
    }

    @Test
    void the_worst_share_is_that_of_the_sorted_values_also_after_other_questions() {
        SplittableRandom random = new SplittableRandom(8);
        for (int n : new int[] {1, 4, 7, 100, 1234}) {
            double[] values = drawn(random, n);
            double[] sorted = values.clone();
            Arrays.sort(sorted);
            Ranks ranks = Ranks.of(values);
            ranks.quantile(.9);
            for (double share : new double[] {.2, .25, .5, 1}) {
                assertThat(ranks.worst(share))
                        .as("%d values, %s", n, share)
                        .isCloseTo(byHand(sorted, share), within(1e-9));
            }
        }
    }

    private static double byHand(double[] sorted, double share) {
        double left = share * sorted.length;
        double sum = 0;
        for (double v : sorted) {
            double part = Math.min(1, left);
            sum += part * v;
            left -= part;
            if (left <= 0) {
                break;
            }
        }
        return sum / (share * sorted.length);
    }

    @Test
    void the_values_given_stay_as_they_are_and_never_stays_never() {
        double never = Double.POSITIVE_INFINITY;
        double[] values = {never, 3, never, 1};
        assertThat(Ranks.of(values).quantile(1)).isEqualTo(never);
        assertThat(values).containsExactly(never, 3, never, 1);
        assertThat(Ranks.of(new double[] {never, never, 5}).quantile(.9)).isEqualTo(never);
    }
}
