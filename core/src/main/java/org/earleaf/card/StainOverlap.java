// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * Stains that fall on one another: discs thrown at random.
 *
 * <pre>
 * psi = -ln(1 - C)
 * N   = k exp(2 psi)   psi up to 0.3
 * N   = psi/a0         above
 *
 * C   cover                                            [1]
 * psi area of all stains if none lay on another, over the area of the card [1]
 * k   patches counted                                  [1/area]
 * N   stains                                           [1/area]
 * a0  mean area of a single stain                      [area]
 * Range  C below 0.4; beyond it only the cover is told
 * Source coverage of a Boolean model; patches after Armitage 1949, Biometrika 36:257, from memory
 * Check  CardReaderTest (discs thrown by a seeded generator)
 * </pre>
 */
public final class StainOverlap {
    private static final double ENTWINED = 0.3;

    private StainOverlap() {}

    public static double psi(double cover) {
        return -Math.log1p(-cover);
    }

    /** Stains for an area, of patches for it and the mean area of a single one; any unit, the same for all. */
    public static double density(double patches, double cover, double single) {
        double psi = psi(cover);
        if (psi <= ENTWINED) {
            return patches * Math.exp(2 * psi);
        }
        return Math.max(patches, psi / single);
    }

    /**
     * Drops that would fall on flat ground [1/m2] if all were of one size.
     *
     * @param rate_m3m2 spray volume over area
     * @param drop_m their diameter
     */
    public static double ceiling_m2(double rate_m3m2, double drop_m) {
        return rate_m3m2 / (Math.PI / 6 * drop_m * drop_m * drop_m);
    }
}
