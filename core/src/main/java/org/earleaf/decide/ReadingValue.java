// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * What a reading would be worth before it is taken: how much better a choice would be, on average, with its answer in
 * hand.
 *
 * <pre>
 * VOI = mean over outcomes y of max_a E[R_a | y]  -  max_a E[R_a],   doing nothing among the a
 * E[R_a | y] = sum w_m R_a,m,  w_m ~ exp(-((y - h_m)/s)^2/2);  y = h_j + s z_k, j over members, z_k five points
 *
 * R      gain of option a in member m       [$/ha]
 * h      what the reading would show in a member, s its error; for a soil test both on the logarithm
 * Range  at least 0
 * Source preposterior analysis: Raiffa & Schlaifer 1961, from memory; five-point Gauss-Hermite rule: Abramowitz & Stegun
 *        table 25.10
 * Check  ReadingValueTest
 * </pre>
 */
final class ReadingValue {
    /** Points and weights for the standard normal. */
    private static final double[] Z = {-2.856970013872806, -1.355626179974266, 0, 1.355626179974266, 2.856970013872806};

    private static final double[] WEIGHT = {
        .011257411327721, .222075922005613, .533333333333333, .222075922005613, .011257411327721
    };

    private final double[][] gains;
    private final double[] shown;
    private final double s;

    /**
     * @param gains by option and member [$/ha]; doing nothing is added
     * @param shown what the reading would show, by member; for a soil test its logarithm
     * @param s its error, on the same scale
     */
    ReadingValue(double[][] gains, double[] shown, double s) {
        this.gains = gains;
        this.shown = shown.clone();
        this.s = s;
    }

    /** Of a soil test, whose errors are of the logarithm. */
    static ReadingValue ofTest(double[][] gains, double[] ppm, double s) {
        return new ReadingValue(gains, Arrays.stream(ppm).map(ReadingValue::log).toArray(), s);
    }

    private static double log(double ppm) {
        return Math.log(Math.max(.1, ppm));
    }

    private double[] means(double y) {
        double[] mean = new double[gains.length];
        double total = 0;
        for (int m = 0; m < shown.length; m++) {
            double z = (y - shown[m]) / s;
            double w = Math.exp(-.5 * z * z);
            total += w;
            for (int a = 0; a < mean.length; a++) {
                mean[a] += w * gains[a][m];
            }
        }
        for (int a = 0; a < mean.length; a++) {
            mean[a] /= Math.max(1e-300, total);
        }
        return mean;
    }

    /** Which option is best at the result of a test; -1 is doing nothing. */
    int choice(double ppm) {
        double[] mean = means(log(ppm));
        int best = -1;
        for (int a = 0; a < mean.length; a++) {
            if (mean[a] > (best < 0 ? 0 : mean[best])) {
                best = a;
            }
        }
        return best;
    }

    /**
     * Worth of the reading [$/ha]. The choice without it is valued over the same outcomes, so that a reading that cannot
     * change the choice is worth exactly nothing.
     */
    double worth() {
        double with = 0;
        double[] without = new double[gains.length];
        for (double h : shown) {
            for (int k = 0; k < Z.length; k++) {
                double share = WEIGHT[k] / shown.length;
                double[] mean = means(h + s * Z[k]);
                with += share * best(mean);
                for (int a = 0; a < mean.length; a++) {
                    without[a] += share * mean[a];
                }
            }
        }
        return Math.max(0, with - best(without));
    }

    private static double best(double[] means) {
        double best = 0;
        for (double g : means) {
            best = Math.max(best, g);
        }
        return best;
    }

    /** Readings at which the best choice changes between acting and not, lowest first; whole ppm, 1 to 60. */
    List<Integer> turningPoints() {
        List<Integer> points = new ArrayList<>();
        boolean acting = choice(.5) >= 0;
        for (int ppm = 1; ppm <= 60; ppm++) {
            boolean now = choice(ppm) >= 0;
            if (now != acting) {
                points.add(ppm);
                acting = now;
            }
        }
        return points;
    }

    /** The reading above which leaving the field alone is best; empty when the choice never turns so. */
    Optional<Integer> leaveAbove() {
        List<Integer> points = turningPoints();
        return choice(.5) >= 0 && points.size() == 1 ? Optional.of(points.get(0)) : Optional.empty();
    }
}
