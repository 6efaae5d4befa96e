// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.Arrays;
import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;

/**
 * Standard normal draws spread evenly: member after member fills the gaps of those before, number by number, and each
 * hundred has mean 0 and variance 1 in every number and no correlation between the first ones. So a hundred members say
 * what many more would by chance. The same seed gives the same draws, and another hundred never changes the first.
 *
 * <pre>
 * u = frac(x + shift),  z = sqrt(2) erfinv(2 u - 1)
 *
 * x      point of a Sobol sequence, one coordinate a number       [0 to 1)
 * shift  uniform, one a coordinate, from the seed                 [0 to 1)
 * Source Sobol 1967, USSR Comput. Math. Math. Phys. 7:86; shifts: Cranley & Patterson 1976, SIAM J. Numer. Anal. 13:904;
 *        moments: second-order exact sampling, Pham 2001, Mon. Weather Rev. 129:1194 (all from memory); points:
 *        Hipparchus
 * Check  ParameterDrawsTest
 * </pre>
 */
final class EvenDraws {
    /** So many members have the moments exactly; fewer at the end are left as drawn. */
    static final int BLOCK = 100;
    /** Neither end of the scale, where a normal draw has no bound. */
    private static final double LEAST = 1e-9;

    private EvenDraws() {}

    /**
     * By member and number.
     *
     * @param apart so many of the first numbers are uncorrelated
     */
    static double[][] of(int members, int numbers, int apart, long seed) {
        SobolSequenceGenerator points = new SobolSequenceGenerator(numbers);
        double[] shift = new SplittableRandom(seed).doubles(numbers).toArray();
        double[][] z = new double[members][];
        for (int m = 0; m < members; m++) {
            z[m] = normal(points.nextVector(), shift);
        }
        for (int from = 0; from + BLOCK <= members; from += BLOCK) {
            even(Arrays.copyOfRange(z, from, from + BLOCK), apart);
        }
        return z;
    }

    private static double[] normal(double[] x, double[] shift) {
        for (int k = 0; k < x.length; k++) {
            double u = (x[k] + shift[k]) % 1;
            x[k] = Math.sqrt(2) * Erf.erfInv(2 * Math.min(1 - LEAST, Math.max(LEAST, u)) - 1);
        }
        return x;
    }

    /** Gram and Schmidt over the first numbers; of the others the mean and the spread. */
    private static void even(double[][] z, int apart) {
        for (int k = 0; k < z[0].length; k++) {
            int number = k;
            add(
                    z,
                    number,
                    -Arrays.stream(z).mapToDouble(of -> of[number]).average().orElse(0));
            for (int j = 0; j < Math.min(k, apart); j++) {
                double along = product(z, k, j);
                for (double[] of : z) {
                    of[k] -= along * of[j];
                }
            }
            double sd = Math.sqrt(product(z, k, k));
            for (double[] of : z) {
                of[k] /= sd;
            }
        }
    }

    private static void add(double[][] z, int k, double more) {
        for (double[] of : z) {
            of[k] += more;
        }
    }

    private static double product(double[][] z, int k, int j) {
        return Arrays.stream(z).mapToDouble(of -> of[k] * of[j]).average().orElse(0);
    }
}
