// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;
import org.earleaf.units.Ranks;

/**
 * Choosing among options over the same futures, doing nothing among them.
 *
 * <pre>
 * a* = argmax_a (1 - k) mean R_a + k B_a                    nothing when no option is above 0
 * knowing the season = mean over m of max(0, max_a R_a,m)  -  max(0, max_a mean R_a)
 * regret of a = max over m of (max(0, max_b R_b,m) - R_a,m)
 *
 * R      gain of an option in a future                     [$/ha]
 * B      mean of its worst fifth                           [$/ha]
 * k      weight of the bad case, 0: the mean alone counts
 * Range  k 0 to 1
 * Source expected value of perfect information: Raiffa & Schlaifer 1961, from memory; minimax regret: Savage 1951, from
 *        memory; mean of the worst share: Rockafellar & Uryasev 2000, J. Risk 2:21, from memory
 * Check  InSeasonRateTest
 * </pre>
 */
final class Choice {
    static final int NOTHING = -1;

    private Choice() {}

    /** Which option is best, {@link #NOTHING} when none is better than nothing. */
    static int best(double[][] gains, double badCaseWeight) {
        int best = NOTHING;
        double most = 0;
        for (int a = 0; a < gains.length; a++) {
            double value = Worth.objective(gains[a], badCaseWeight);
            if (value > most) {
                most = value;
                best = a;
            }
        }
        return best;
    }

    /** The best gain of each future for somebody who knows it. */
    static double[] known(double[][] gains, int members) {
        double[] most = new double[members];
        for (double[] ofOption : gains) {
            Arrays.setAll(most, m -> Math.max(most[m], ofOption[m]));
        }
        return most;
    }

    /** What knowing the season would be worth: no reading and no forecast can be worth more. */
    static double knowing_usdHa(double[][] gains) {
        if (gains.length == 0) {
            return 0;
        }
        double best = Arrays.stream(gains).mapToDouble(Ranks::mean).reduce(0, Math::max);
        return Ranks.mean(known(gains, gains[0].length)) - best;
    }

    /** The most that an option may leave on the table. */
    static double regret_usdHa(double[] gains, double[] known) {
        double most = 0;
        for (int m = 0; m < gains.length; m++) {
            most = Math.max(most, known[m] - gains[m]);
        }
        return most;
    }
}
