// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.Arrays;

/** Mean, spread, quantile (linear between ranks) and correlation of a handful of numbers. */
final class Numbers {
    private Numbers() {}

    static double mean(double[] x) {
        return Arrays.stream(x).average().orElse(Double.NaN);
    }

    /** Standard deviation of a sample. */
    static double sd(double[] x) {
        double mean = mean(x);
        double sum = Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum();
        return Math.sqrt(sum / (x.length - 1));
    }

    /** The value at rank floor(share n) of the sorted values, counted from 0; not interpolated. */
    static double quantile(double[] x, double share) {
        double[] sorted = x.clone();
        Arrays.sort(sorted);
        return sorted[Math.min(sorted.length - 1, (int) (share * sorted.length))];
    }

    static double low(double[] x) {
        return Arrays.stream(x).min().orElse(Double.NaN);
    }

    static double high(double[] x) {
        return Arrays.stream(x).max().orElse(Double.NaN);
    }

    /** Sum of products of deviations from the means. */
    private static double cross(double[] x, double[] y) {
        double mx = mean(x);
        double my = mean(y);
        double sum = 0;
        for (int k = 0; k < x.length; k++) {
            sum += (x[k] - mx) * (y[k] - my);
        }
        return sum;
    }

    static double correlation(double[] x, double[] y) {
        return cross(x, y) / Math.sqrt(cross(x, x) * cross(y, y));
    }

    static double slope(double[] x, double[] y) {
        return cross(x, y) / cross(x, x);
    }

    /** Each less the mean of all. */
    static double[] lessMean(double[] x) {
        double mean = mean(x);
        return Arrays.stream(x).map(v -> v - mean).toArray();
    }

    static double[] difference(double[] x, double[] y) {
        double[] d = new double[x.length];
        Arrays.setAll(d, k -> x[k] - y[k]);
        return d;
    }

    /** Means of y over equal groups of rising x. */
    static double[] byGroup(double[] x, double[] y, int groups) {
        Integer[] order = new Integer[x.length];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, java.util.Comparator.comparingDouble(k -> x[k]));
        double[] means = new double[groups];
        for (int g = 0; g < groups; g++) {
            int from = g * x.length / groups;
            int to = (g + 1) * x.length / groups;
            for (int k = from; k < to; k++) {
                means[g] += y[order[k]] / (to - from);
            }
        }
        return means;
    }
}
