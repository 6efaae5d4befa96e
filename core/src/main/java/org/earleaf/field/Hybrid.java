// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

/**
 * What was planted. {@code NaN} means not given.
 *
 * @param name as on the bag, empty: not given
 * @param relativeMaturity_d days, 80 to 120 (75 to 79 with the far-north leaf rate)
 * @param gddSilk its own rating from planting [°F d], NaN: by maturity
 * @param gddBlackLayer likewise
 */
public record Hybrid(String name, double relativeMaturity_d, double gddSilk, double gddBlackLayer) {
    /** One of which the days to maturity are all that is given. */
    public static Hybrid ofMaturity(double relativeMaturity_d) {
        return new Hybrid("", relativeMaturity_d, Double.NaN, Double.NaN);
    }
}
