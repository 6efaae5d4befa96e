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
 *
 * Range  lostSlowly: k 0 to 2; lost: k from 0 (more than 40 is taken as 40); exp: x from -2.5 to 2.5
 * Error  lostSlowly: relative 3e-10, below k = 1 2e-13; lost: absolute 1e-12; exp: relative 3e-10, from -2 to 2 1e-11;
 *        all against java.lang.StrictMath
 * Source Lambert's continued fraction of the tangent (1768), cut after 6, 4 and 7 terms
 * Check  LanesTest
 * </pre>
 */
final class Lanes {
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
        return Math.min(1, Math.max(0, x * 1e300));
    }

    static double clamp(double x, double low, double high) {
        return Math.max(low, Math.min(high, x));
    }
}
