// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import org.earleaf.farm.ClearanceLoss;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionSettings;

/**
 * What a rig takes from tall corn, as shares of the field's yield.
 *
 * <pre>
 * tracks = passes x 2 ends x 2 wheels x tyre x headland/area,  passes = side/boom,  side = sqrt(area)
 * injury = mean over the futures of plants hurt under the belly x 0.6 x rows under it/rows of a swath
 *
 * Range  rigs on the ground after V8; a field taken as a square
 * Source geometry and ClearanceLoss; tyre, headland, belly and yield lost are assumptions. Wheels run between the rows: no
 *        row is lost there.
 * Check  RigLossTest
 * </pre>
 *
 * @param tracks rows crushed on the headlands
 * @param injury plants bent or broken under the machine
 */
public record RigLoss(double tracks, double injury) {
    private static final RigLoss NONE = new RigLoss(0, 0);
    private static final double M2_PER_HA = 10_000;

    /**
     * @param heights_cm of the crop by future
     * @param stages by future, collars, VT 30, R1 31 and on
     */
    public static RigLoss of(
            Zone zone,
            Rig rig,
            Placement placement,
            double[] heights_cm,
            double[] stages,
            ProtectionSettings settings) {
        if (placement == Placement.BY_AIR) {
            return NONE;
        }
        double area_m2 = zone.area_ha() * M2_PER_HA;
        double side_m = Math.sqrt(area_m2);
        double headland_m = Math.min(side_m / 2, settings.of(ProtectionAssumption.HEADLAND_SWATHS) * rig.width_m());
        int passes = (int) Math.ceil(side_m / rig.width_m());
        double crushed_m2 =
                ClearanceLoss.crushed_m2(passes, settings.of(ProtectionAssumption.TYRE_WIDTH), headland_m, true);
        int under = ClearanceLoss.rowsUnder(settings.of(ProtectionAssumption.BELLY_WIDTH), zone.rowSpacing_m());
        int swath = Math.max(under, (int) Math.round(rig.width_m() / zone.rowSpacing_m()));
        double injury = 0;
        for (int m = 0; m < heights_cm.length; m++) {
            double hurt = ClearanceLoss.hurt(heights_cm[m] / 100, rig.clearance_m(), stages[m], false);
            injury += ClearanceLoss.fieldLoss(hurt, settings.of(ProtectionAssumption.LOST_PER_HURT), under, swath);
        }
        return new RigLoss(crushed_m2 / area_m2, injury / heights_cm.length);
    }
}
