// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import org.earleaf.units.Units;

/**
 * What kernels on the ear come to on a field.
 *
 * <pre>
 * Y = rows x kernels a row x ears x kernel weight;  kernel weight = 56 lb/kernels a bushel
 * row length of a thousandth acre = (1/1000 ac)/row spacing
 *
 * Y      grain at 15.5 % moisture   [kg/ha]
 * Range  75,000 to 110,000 kernels a bushel, usually 90,000
 * Source yield-component method of extension services
 * Check  KernelWorthTest
 * </pre>
 */
public final class KernelWorth {
    private KernelWorth() {}

    /** Weight of one kernel [kg] at 15.5 % moisture. */
    public static double kernel_kg(double kernelsPerBushel) {
        return Units.LB_PER_BU_CORN * Units.KG_PER_LB / kernelsPerBushel;
    }

    /** Grain at 15.5 % moisture [kg/ha]; with one kernel a row it is what one more kernel of ear length is worth. */
    public static double grain_kgHa(double kernelRows, double kernelsPerRow, double ears_m2, double kernel_kg) {
        return kernelRows * kernelsPerRow * ears_m2 * kernel_kg * 10_000;
    }

    /** Length of row [m] that is a thousandth of an acre. */
    public static double thousandthAcre_m(double rowSpacing_m) {
        return Units.M2_PER_AC / 1000 / rowSpacing_m;
    }
}
