// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;

/**
 * What a pass asks of a rig.
 *
 * @param liquid what flows
 * @param rate_m3m2 on the whole field
 * @param row_m row spacing
 * @param nozzle_m spacing of broadcast nozzles
 * @param speed_ms speed to set for, NaN: the usual one for placement and rig
 * @param height_m crop height to clear, NaN: not asked
 */
public record PassNeed(
        Rig rig,
        Liquid liquid,
        double rate_m3m2,
        double row_m,
        Placement placement,
        double nozzle_m,
        double speed_ms,
        double height_m) {
    /** Spacing of nozzles on a boom that says nothing else: 20 in (assumption). */
    public static final double USUAL_NOZZLE_M = 20 * 0.0254;

    /** A nitrogen pass at the usual speed. */
    public static PassNeed nitrogen(
            Rig rig,
            NitrogenProduct product,
            double nitrogen_kgHa,
            double row_m,
            Placement placement,
            double height_m) {
        Liquid liquid = Liquid.of(product);
        double rate_m3m2 = FlowMath.rateOfNutrient_m3m2(nitrogen_kgHa, product.nitrogen_kgL());
        return new PassNeed(rig, liquid, rate_m3m2, row_m, placement, USUAL_NOZZLE_M, Double.NaN, height_m);
    }

    /** Whether the liquid goes on in rows and not over the whole width. */
    public boolean isByRow() {
        return switch (placement) {
            case ROW_BASE, MID_DRIBBLE, MID_INJECT, ROW_INJECT -> true;
            default -> false;
        };
    }

    /** Outlets that serve one row: hoses at the base as the rig has them, one in a middle. */
    public int outletsPerRow() {
        boolean atRow = placement == Placement.ROW_BASE || placement == Placement.ROW_INJECT;
        return atRow ? Math.max(1, rig.boom().outletsPerRow()) : 1;
    }

    /** Width that one outlet serves. */
    public double width_m() {
        return isByRow() ? row_m / outletsPerRow() : nozzle_m;
    }
}
