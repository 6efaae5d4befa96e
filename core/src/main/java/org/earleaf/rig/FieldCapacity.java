// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * Ground covered in an hour.
 *
 * <pre>
 * capacity = speed x width x efficiency
 * efficiency of a field = (L/v) / (L/v + turn) (1 - overlap),  turn = pi R / v_turn + t_align
 *
 * L      length of a pass                        [m]
 * turn   time lost at an end                     [s]
 * R      turning radius                          [m]
 * Range  efficiency 0.5 to 0.95
 * Source arithmetic. Default efficiencies: sprayer 0.65 from memory of a machinery data standard, drop hoses an
 *        assumption; replace by the farm's own log. Turning speed 4 mph, 10 s to align, 2 to 5 % overlap: assumption.
 * Check  FieldCapacityTest
 * </pre>
 */
public final class FieldCapacity {
    /** From memory of a machinery data standard, range 0.50 to 0.80. */
    public static final double SPRAYER_EFFICIENCY = 0.65;
    /** Assumption, range 0.60 to 0.70. */
    public static final double DROP_HOSE_EFFICIENCY = 0.65;

    private static final double TURN_MS = 4 * 0.44704;
    private static final double ALIGN_S = 10;

    private FieldCapacity() {}

    public static double capacity_m2s(double speed_ms, double width_m, double efficiency) {
        return speed_ms * width_m * efficiency;
    }

    public static double efficiency(double passLength_m, double speed_ms, double turn_s, double overlap) {
        double run_s = passLength_m / speed_ms;
        return run_s / (run_s + turn_s) * (1 - overlap);
    }

    public static double turn_s(double turnRadius_m) {
        return Math.PI * turnRadius_m / TURN_MS + ALIGN_S;
    }
}
