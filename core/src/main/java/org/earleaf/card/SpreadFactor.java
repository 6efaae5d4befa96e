// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/**
 * Drop from its stain.
 *
 * <pre>
 * d = a A^b
 *
 * d  diameter of the drop          [um]
 * A  area of the stain             [um2]
 * a, b  of the paper and the mix
 * Range  stains of 50 to 2000 um, water; other mixes spread more
 * Source Zhu, Salyani and Fox 2011, Comput. Electron. Agric. 76:38, a 1.06 and b 0.455 from memory, not found anew
 * Check  SpreadFactorTest
 * </pre>
 *
 * @param measured fitted on drops of known size on this paper; until then sizes and deposits are not to be relied on
 */
public record SpreadFactor(double a, double b, boolean measured) {
    private static final SpreadFactor RECALLED = new SpreadFactor(1.06, 0.455, false);

    /** Recalled figures for water; an assumption until a dropper was used. */
    public static SpreadFactor recalled() {
        return RECALLED;
    }

    /** Diameter of the drop [um]. */
    public double drop_um(double stain_um2) {
        return a * Math.pow(stain_um2, b);
    }

    /** Volume of the drop [um3]. */
    public double drop_um3(double stain_um2) {
        double d = drop_um(stain_um2);
        return Math.PI / 6 * d * d * d;
    }

    /** Fitted on one size of drop: the exponent stays, the factor gives this drop for this stain. */
    public SpreadFactor fitted(double drop_um, double stain_um2) {
        return new SpreadFactor(drop_um / Math.pow(stain_um2, b), b, true);
    }
}
