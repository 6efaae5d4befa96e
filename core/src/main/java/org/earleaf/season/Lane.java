// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/**
 * Whole-array steps of the day loop. Each is one small method with one loop on purpose: the compiler gives a method a
 * budget for improving its loops, and many loops in one method leave some of them without vector code (see
 * docs/decisions on speed and legibility).
 */
final class Lane {
    private Lane() {}

    static void add(double[] to, double[] amounts) {
        for (int n = 0; n < amounts.length; n++) {
            to[n] += amounts[n];
        }
    }

    static void subtract(double[] from, double[] amounts) {
        for (int n = 0; n < amounts.length; n++) {
            from[n] -= amounts[n];
        }
    }

    /** The same on the part of an array that begins at {@code at}. */
    static void add(double[] to, int at, double[] amounts) {
        for (int n = 0; n < amounts.length; n++) {
            to[at + n] += amounts[n];
        }
    }

    static void subtract(double[] from, int at, double[] amounts) {
        for (int n = 0; n < amounts.length; n++) {
            from[at + n] -= amounts[n];
        }
    }

    static void addScaled(double[] to, double factor, double[] amounts) {
        for (int n = 0; n < amounts.length; n++) {
            to[n] += factor * amounts[n];
        }
    }

    /** Share-weighted sum of two columns, added to a sum by member. */
    static void addColumns(double[] sum, double[] columns, int at, double[] share) {
        double fR = share[0];
        double fM = share[1];
        int n = sum.length;
        for (int m = 0; m < n; m++) {
            sum[m] += fR * columns[at + m] + fM * columns[at + n + m];
        }
    }

    /** What a pool loses in a day: amount (1 - exp(-rate)). */
    static void lost(double[] amount, double[] rate, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = amount[n] * Lanes.lost(rate[n]);
        }
    }

    static void lost(double[] rate, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = Lanes.lost(rate[n]);
        }
    }

    static void times(double[] a, double[] b, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = a[n] * b[n];
        }
    }

    /** What lies above a floor. */
    static void above(double[] amount, double[] floor, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = Math.max(0, amount[n] - floor[n]);
        }
    }
}
