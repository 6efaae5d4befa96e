// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

/**
 * What a rinse leaves of what was in a tank, as a share of its strength.
 *
 * <pre>
 * in turns  C/C0 = product of h / (h + V_i);   running through a tank kept mixed  C/C0 = exp(-V/h)
 *
 * h      volume that does not drain: heel, lines, hoses   [m3]
 * V      clean water                                      [m3]
 * Range  h above 0, V 0 or more; a plausibility beside the label's own cleaning, never instead of it: residues cling to
 *        plastic and come off in later, oily mixes
 * Source dilution of a well-mixed volume, any textbook
 * Check  RinseTest
 * </pre>
 */
public final class Rinse {
    private Rinse() {}

    public static double inTurns(double heel_m3, double... water_m3) {
        double left = 1;
        for (double water : water_m3) {
            left *= heel_m3 / (heel_m3 + water);
        }
        return left;
    }

    public static double runningThrough(double heel_m3, double water_m3) {
        return Math.exp(-water_m3 / heel_m3);
    }
}
