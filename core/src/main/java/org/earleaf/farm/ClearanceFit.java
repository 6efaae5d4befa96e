// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Optional;
import org.earleaf.field.Placement;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Whether a machine may enter a crop of a height: its lowest member over a row, its wheels between the rows, its boom
 * above the crop, its hoses at the base. Stages are on the scale of readings: V by collars, VT 30, R1 31 to R6 36.
 */
public final class ClearanceFit {
    /** Height is uncertain: this much is added to it before it is held against the clearance. */
    public static final double MARGIN_M = 0.05;

    /** Free space between tyre and row, up to V10 and after it (assumption: 3 in and 5 in). */
    private static final double FREE_M = 3 * 0.0254;

    private static final double FREE_LATE_M = 5 * 0.0254;

    /** A hose that ends higher than this above the ground does not dribble at the base (assumption: 8 in). */
    private static final double HOSE_END_M = 8 * 0.0254;

    private static final double EPS = 1e-9;

    private ClearanceFit() {}

    /** Whether the crop, with the margin on it, passes under the machine. A hired aircraft has no clearance to keep. */
    public static boolean clears(Rig rig, Placement placement, double height_m) {
        return placement == Placement.BY_AIR || height_m + MARGIN_M <= rig.clearance_m(placement) + EPS;
    }

    /** Why the machine may not enter; empty when it clears the crop. */
    public static Optional<Said> tooTall(Rig rig, Placement placement, double height_m) {
        if (clears(rig, placement, height_m)) {
            return Optional.empty();
        }
        double clearance_m = rig.clearance_m(placement);
        return Optional.of(Said.of(
                "reach.too-tall",
                "rig",
                rig.name(),
                "crop",
                Measure.SPAN.of(height_m),
                "margin",
                Measure.SPAN.of(MARGIN_M),
                "over",
                Measure.SPAN.of(height_m + MARGIN_M - clearance_m),
                "clearance",
                Measure.SPAN.of(clearance_m)));
    }

    /**
     * Distance of a wheel from the middle between two rows.
     *
     * <pre>
     * e = |T/2 - row round(T/2/row)| with the machine centred on a row middle; on a row, against (k + 1/2) row
     *
     * T      tread, wheel centre to wheel centre   [m]
     * Range  tread and row spacing above 0
     * Source geometry
     * Check  ClearanceFitTest
     * </pre>
     */
    public static double wheelOffset_m(double tread_m, double row_m, boolean centredOnRow) {
        double half_m = tread_m / 2;
        double shift_m = centredOnRow ? row_m / 2 : 0;
        return Math.abs(half_m - shift_m - row_m * Math.round((half_m - shift_m) / row_m));
    }

    /** Room between tyre and row on the tighter side. */
    public static double wheelRoom_m(double tread_m, double row_m, double tyre_m, boolean centredOnRow) {
        return row_m / 2 - tyre_m / 2 - wheelOffset_m(tread_m, row_m, centredOnRow);
    }

    public static boolean wheelsFit(double room_m, double stage) {
        return room_m >= (stage > 10 ? FREE_LATE_M : FREE_M) - EPS;
    }

    /** Height at which the boom must hang above ground: crop and the outlets' height above it. */
    public static boolean boomFits(double height_m, double aboveCrop_m, double boomLow_m, double boomHigh_m) {
        double needed_m = height_m + aboveCrop_m;
        return needed_m >= boomLow_m - EPS && needed_m <= boomHigh_m + EPS;
    }

    /** Whether hoses that hang from this height reach the base of the row. */
    public static boolean hosesReach(double pivot_m, double hose_m) {
        return pivot_m - hose_m <= HOSE_END_M + EPS;
    }
}
