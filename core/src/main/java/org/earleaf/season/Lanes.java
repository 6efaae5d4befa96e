// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/**
 * Exponentials and limits that the compiler can turn into vector code: no calls, no branches, few operations, so a loop
 * over cells and members stays a loop over lanes.
 *
 * <pre>
 * tanh(k/2) ~ the continued fraction k/2/(1 + (k/2)^2/(3 + (k/2)^2/(5 + ...)));  exp(-k) = (1 - tanh)/(1 + tanh)
 * lostSlowly(k) = 1 - exp(-k) = 2 tanh/(1 + tanh)    share lost in a day of a pool with first-order rate k
 * lost(k)       = 1 - exp(-k/32)^32                  the same at any rate
 * exp(x)        = (1 + tanh)/(1 - tanh)
 * ln(x)         = ln of the power of two + ln of one of 128 steps + the power series of the rest, r - r^2/2 + ... r^5/5
 *
 * Range  lostSlowly: k 0 to 2; lost: k from 0 (more than 40 is taken as 40); exp: x from -2.5 to 2.5; ln: x above 0
 * Error  lostSlowly: relative 3e-10, below k = 1 2e-13; lost: absolute 1e-12; exp: relative 3e-10, from -2 to 2 1e-11;
 *        ln: absolute 1e-14 from 1e-9 to 1e5; all against java.lang.StrictMath
 * Source Lambert's continued fraction of the tangent (1768), cut after 6, 4 and 7 terms; ln: own construct
 * Check  LanesTest
 * </pre>
 */
final class Lanes {
    private static final int FRACTION_BITS = 52;
    private static final int BIAS = 1023;
    private static final long ONE = Double.doubleToRawLongBits(1);
    private static final int STEP_BITS = 7;
    private static final int STEPS = 1 << STEP_BITS;
    private static final double LN_2 = Math.log(2);
    private static final double[] PER_STEP = new double[STEPS];
    private static final double[] LN_STEP = new double[STEPS];

    static {
        for (int i = 0; i < STEPS; i++) {
            PER_STEP[i] = 1 / (1 + (i + 0.5) / STEPS);
            LN_STEP[i] = -Math.log(PER_STEP[i]);
        }
    }

    private Lanes() {}

    static double lostSlowly(double k) {
        double y = 0.5 * k;
        double q = y * y;
        double n = y * (10395 + q * (1260 + q * 21));
        double d = 10395 + q * (4725 + q * (210 + q));
        return 2 * n / (n + d);
    }

    static double lost(double k) {
        double y = Math.min(k, 40) * (1.0 / 64);
        double q = y * y;
        double n = y * (105 + q * 10);
        double d = 105 + q * (45 + q);
        double e = (d - n) / (d + n);
        e *= e;
        e *= e;
        e *= e;
        e *= e;
        return 1 - e * e;
    }

    static double exp(double x) {
        double y = 0.5 * x;
        double q = y * y;
        double n = y * (135135 + q * (17325 + q * (378 + q)));
        double d = 135135 + q * (62370 + q * (3150 + q * 28));
        return (d + n) / (d - n);
    }

    static double ln(double x) {
        long bits = Double.doubleToRawLongBits(x);
        int step = (int) (bits >>> FRACTION_BITS - STEP_BITS) & STEPS - 1;
        double fraction = Double.longBitsToDouble(bits & (1L << FRACTION_BITS) - 1 | ONE);
        double r = fraction * PER_STEP[step] - 1;
        double rest = r * (1 - r * (1.0 / 2 - r * (1.0 / 3 - r * (1.0 / 4 - r * (1.0 / 5)))));
        return ((bits >> FRACTION_BITS) - BIAS) * LN_2 + LN_STEP[step] + rest;
    }

    /** x where it is above zero, else 0. */
    static double positive(double x) {
        return 0.5 * (x + Math.abs(x));
    }

    /** x kept between 0 and 1. */
    static double share(double x) {
        return 1 - positive(1 - positive(x));
    }

    /** 1 where x is above zero, else 0, without a branch. */
    static double isPositive(double x) {
        return positive(x) / (Math.abs(x) + 1e-300);
    }

    /** 1 where x has come to the limit, else 0, without a branch. */
    static double isAtLeast(double x, double limit) {
        return 1 - isPositive(limit - x);
    }

    static double clamp(double x, double low, double high) {
        return Math.max(low, Math.min(high, x));
    }
}
