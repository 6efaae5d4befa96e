// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import org.earleaf.units.EarleafException;

/**
 * How many of the plants looked at show it.
 *
 * <pre>
 * (p + z^2/2n -+ z sqrt(p (1 - p)/n + z^2/4n^2))/(1 + z^2/n),  z = 1.6449 (90 %)
 *
 * n      plants looked at
 * p      share of them that show it
 * Range  n at least 1
 * Source Wilson 1927, J. Am. Stat. Assoc. 22:209-212, from memory.
 * Check  IncidenceTest
 * </pre>
 */
public record Incidence(int shows, int plants) {
    private static final double Z90 = 1.6448536269514722;

    public Incidence {
        if (plants < 1 || shows < 0 || shows > plants) {
            throw EarleafException.coded("count.impossible", "plants", shows + "/" + plants);
        }
    }

    /** What a count says about a threshold. */
    public enum Verdict {
        ABOVE,
        BELOW,
        UNDECIDED
    }

    public double share() {
        return (double) shows / plants;
    }

    /** Lower end of the 90 % interval. */
    public double low() {
        return middle() - halfWidth();
    }

    /** Upper end of the 90 % interval. */
    public double high() {
        return middle() + halfWidth();
    }

    private double middle() {
        return (share() + Z90 * Z90 / (2 * plants)) / (1 + Z90 * Z90 / plants);
    }

    private double halfWidth() {
        double p = share();
        double n = plants;
        return Z90 * Math.sqrt(p * (1 - p) / n + Z90 * Z90 / (4 * n * n)) / (1 + Z90 * Z90 / n);
    }

    /** Above when the whole interval lies above the threshold, below likewise; else fifty more plants are wanted. */
    public Verdict against(double threshold) {
        if (low() > threshold) {
            return Verdict.ABOVE;
        }
        return high() < threshold ? Verdict.BELOW : Verdict.UNDECIDED;
    }
}
