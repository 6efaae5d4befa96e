// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.SplittableRandom;
import org.hipparchus.random.SobolSequenceGenerator;
import org.hipparchus.special.Erf;

/**
 * Standard normal draws spread evenly: member after member fills the gaps of those before, number by number, so that a
 * hundred members say what many more would by chance. The same seed gives the same draws, and more members never change
 * the first ones.
 *
 * <pre>
 * u = frac(x + shift),  z = sqrt(2) erfinv(2 u - 1)
 *
 * x      point of a Sobol sequence, one coordinate a number       [0 to 1)
 * shift  uniform, one a coordinate, from the seed                 [0 to 1)
 * Source Sobol 1967, USSR Comput. Math. Math. Phys. 7:86; shifts: Cranley & Patterson 1976, SIAM J. Numer. Anal. 13:904
 *        (both from memory); points: Hipparchus
 * Check  ParameterDrawsTest
 * </pre>
 */
final class EvenDraws {
    /** Neither end of the scale, where a normal draw has no bound. */
    private static final double LEAST = 1e-9;

    private final SobolSequenceGenerator points;
    private final double[] shift;

    EvenDraws(int numbers, long seed) {
        points = new SobolSequenceGenerator(numbers);
        shift = new SplittableRandom(seed).doubles(numbers).toArray();
    }

    /** Of the next member, one a number. */
    double[] next() {
        double[] x = points.nextVector();
        for (int k = 0; k < x.length; k++) {
            double u = (x[k] + shift[k]) % 1;
            x[k] = Math.sqrt(2) * Erf.erfInv(2 * Math.min(1 - LEAST, Math.max(LEAST, u)) - 1);
        }
        return x;
    }
}
