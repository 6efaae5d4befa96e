// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.util.random.RandomGenerator;

/**
 * Draws from distributions, the same on every Java: only uniform numbers are taken from the generator handed in, and
 * only {@link StrictMath} is used, since the library's own normal draws changed between Java versions.
 *
 * <pre>
 * normal  polar method
 * gamma   x = d (1 + z / sqrt(9 d))^3, d = a - 1/3, kept by comparison; below a = 1 that of a + 1 times U^(1/a)
 *
 * a      shape of the gamma distribution, its mean at scale 1
 * z, U   normal, uniform draw
 * Range  a above 0
 * Source Marsaglia & Bray 1964, SIAM Review 6:260; Marsaglia & Tsang 2000, ACM Trans. Math. Softw. 26:363 (from memory)
 * Check  DrawsTest: mean, variance and tail shares of both distributions.
 * </pre>
 */
public final class Draws {
    private Draws() {}

    public static double normal(RandomGenerator random) {
        while (true) {
            double u = 2 * random.nextDouble() - 1;
            double v = 2 * random.nextDouble() - 1;
            double s = u * u + v * v;
            if (s > 0 && s < 1) {
                return u * StrictMath.sqrt(-2 * StrictMath.log(s) / s);
            }
        }
    }

    /** Gamma with scale 1. */
    static double gamma(double shape, RandomGenerator random) {
        if (shape < 1) {
            return gamma(shape + 1, random) * StrictMath.pow(random.nextDouble(), 1 / shape);
        }
        double d = shape - 1.0 / 3;
        while (true) {
            double z = normal(random);
            double root = 1 + z / StrictMath.sqrt(9 * d);
            double v = root * root * root;
            double u = random.nextDouble();
            if (v > 0 && StrictMath.log(u) < z * z / 2 + d - d * v + d * StrictMath.log(v)) {
                return d * v;
            }
        }
    }

    /** Lognormal with mean 1 and a coefficient of variation. */
    public static double factor(double cv, RandomGenerator random) {
        return factor(cv, normal(random));
    }

    /** The same from a normal draw. */
    public static double factor(double cv, double normal) {
        double variance = StrictMath.log(1 + cv * cv);
        return StrictMath.exp(normal * StrictMath.sqrt(variance) - variance / 2);
    }
}
