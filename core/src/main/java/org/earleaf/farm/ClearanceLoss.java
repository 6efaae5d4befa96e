// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

/**
 * What a pass through tall corn costs: plants bent under the machine, rows run down, headlands crossed.
 *
 * <pre>
 * x = max(0, (H - C)/H);  p = 0 for x = 0, else 1/(1 + exp(-(x - x50)/0.05))
 * field loss = p L rows under the belly / rows a swath
 *
 * H C    crop height and clearance                    [m]
 * p      share of plants hurt in the rows under the belly
 * x50    0.35 to V11, 0.30 to V17, 0.20 at VT, 0.15 after; 0.05 less on a cool wet morning or in rapid growth
 * L      yield lost with each plant hurt, 0.6: leaned 0.15, broken above the ear 0.4, snapped below it 0.9
 * Range  H above 0
 * Source assumption: no published response was found. Calibrate with the farm's own stand counts after the first load.
 * Check  ClearanceLossTest
 * </pre>
 */
public final class ClearanceLoss {
    /** Yield lost with each plant hurt, assumption. */
    public static final double LOST_PER_HURT = 0.6;

    private static final double SLOPE = 0.05;
    private static final double BRITTLE = 0.05;
    private static final double VT = 30;

    private ClearanceLoss() {}

    /** Share of plants hurt in the rows under the machine. */
    public static double hurt(double height_m, double clearance_m, double stage, boolean brittle) {
        double x = Math.max(0, (height_m - clearance_m) / height_m);
        if (x == 0) {
            return 0;
        }
        boolean snapsEasily = brittle && stage >= 8 && stage <= VT;
        double x50 = x50(stage) - (snapsEasily ? BRITTLE : 0);
        return 1 / (1 + Math.exp(-(x - x50) / SLOPE));
    }

    private static double x50(double stage) {
        if (stage < 12) {
            return 0.35;
        }
        if (stage < VT) {
            return 0.30;
        }
        return stage < VT + 1 ? 0.20 : 0.15;
    }

    /** Share of the field's yield lost. */
    public static double fieldLoss(double hurt, double lostPerHurt, int rowsUnder, int rowsASwath) {
        return hurt * lostPerHurt * rowsUnder / rowsASwath;
    }

    /** Rows that pass under the belly. */
    public static int rowsUnder(double belly_m, double row_m) {
        return (int) Math.floor(belly_m / row_m + 1e-9);
    }

    /**
     * Ground crushed on the headlands.
     *
     * <pre>
     * A = passes x 2 ends x 2 tracks x tyre x headland, by 1.6 when rear wheels do not follow the front ones
     *
     * Range  after V8, when crushed plants no longer come back
     * Source geometry; 1.6 is an assumption
     * Check  ClearanceLossTest
     * </pre>
     */
    public static double crushed_m2(int passes, double tyre_m, double headland_m, boolean wheelsFollow) {
        return passes * 2 * 2 * tyre_m * headland_m * (wheelsFollow ? 1 : 1.6);
    }
}
