// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.season;

import java.util.Arrays;
import java.util.Locale;
import java.util.SplittableRandom;

/**
 * Ratio of the medians of two contenders that were measured in turns, with the 95 % interval of 2000 draws of rounds
 * with replacement.
 */
public record Ratio(double median, double low, double high) {
    private static final int DRAWS = 2000;

    public static Ratio of(double[] ours, double[] theirs) {
        SplittableRandom random = new SplittableRandom(1);
        int n = ours.length;
        double[] draws = new double[DRAWS];
        for (int d = 0; d < DRAWS; d++) {
            double[] a = new double[n];
            double[] b = new double[n];
            for (int r = 0; r < n; r++) {
                int pick = random.nextInt(n);
                a[r] = ours[pick];
                b[r] = theirs[pick];
            }
            draws[d] = median(a) / median(b);
        }
        Arrays.sort(draws);
        return new Ratio(median(ours) / median(theirs), draws[DRAWS / 40 - 1], draws[DRAWS - DRAWS / 40 - 1]);
    }

    public static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int half = sorted.length / 2;
        return sorted.length % 2 == 1 ? sorted[half] : .5 * (sorted[half - 1] + sorted[half]);
    }

    public String json() {
        return String.format(Locale.ROOT, "{\"median\":%.4f,\"low\":%.4f,\"high\":%.4f}", median, low, high);
    }

    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%6.3f (%.3f to %.3f)", median, low, high);
    }
}
