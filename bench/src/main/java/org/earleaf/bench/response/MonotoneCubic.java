// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

/**
 * Piecewise cubic through equally spaced points that rises and falls only where they do.
 *
 * <pre>
 * inner slope  2 a b/(a + b) of the secants a, b on both sides, 0 where they differ in sign
 * first slope  (3 a - b)/2, 0 where it differs in sign from a, at most 3 a where a and b differ in sign
 * last slope   the last secant
 *
 * Source Fritsch & Butland 1984, SIAM J. Sci. Stat. Comput. 5:300, from memory; the end slopes: common practice
 * Check  MonotoneCubicTest
 * </pre>
 */
public final class MonotoneCubic {
    private final double step;
    private final double[] values;
    private final double[] slopes;

    public MonotoneCubic(double step, double[] values) {
        this.step = step;
        this.values = values.clone();
        int last = values.length - 1;
        slopes = new double[values.length];
        for (int k = 1; k < last; k++) {
            double a = secant(k - 1);
            double b = secant(k);
            slopes[k] = a * b > 0 ? 2 * a * b / (a + b) : 0;
        }
        slopes[0] = first(secant(0), secant(1));
        slopes[last] = secant(last - 1);
    }

    private double secant(int k) {
        return (values[k + 1] - values[k]) / step;
    }

    private static double first(double a, double b) {
        double slope = (3 * a - b) / 2;
        if (slope * a <= 0) {
            return 0;
        }
        return a * b < 0 && Math.abs(slope) > 3 * Math.abs(a) ? 3 * a : slope;
    }

    public double at(double x) {
        int k = Math.max(0, Math.min(values.length - 2, (int) (x / step)));
        double t = x / step - k;
        double rise = (1 - t) * (1 - t);
        double stay = t * t;
        return (1 + 2 * t) * rise * values[k]
                + t * rise * step * slopes[k]
                + stay * (3 - 2 * t) * values[k + 1]
                + stay * (t - 1) * step * slopes[k + 1];
    }
}
