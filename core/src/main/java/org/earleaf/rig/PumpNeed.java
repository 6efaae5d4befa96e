// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * What the pump must deliver: all outlets and the agitation, and a fifth in reserve.
 *
 * <pre>
 * pump = 1.2 (outlets + a V)
 *
 * a      share of the tank turned over a minute: 0.03 for solutions and emulsions, 0.05 for suspensions
 * V      tank   [m3]
 * Range  a 0.02 to 0.12
 * Source reserve: applicator study guides; agitation 2 to 3 % of the tank a minute: a national spray manual; 5 % for
 *        suspensions: common practice, no source
 * Check  PumpNeedTest
 * </pre>
 */
public final class PumpNeed {
    public static final double SOLUTIONS_PER_MIN = 0.03;
    public static final double SUSPENSIONS_PER_MIN = 0.05;
    private static final double RESERVE = 1.2;

    private PumpNeed() {}

    public static double pump_m3s(double outlets_m3s, double tank_m3, double turnoverPerMin) {
        return RESERVE * (outlets_m3s + agitation_m3s(tank_m3, turnoverPerMin));
    }

    public static double agitation_m3s(double tank_m3, double turnoverPerMin) {
        return tank_m3 * turnoverPerMin / 60;
    }

    /** Outlet flow that a pump can feed. */
    public static double outlets_m3s(double pump_m3s, double tank_m3, double turnoverPerMin) {
        return pump_m3s / RESERVE - agitation_m3s(tank_m3, turnoverPerMin);
    }
}
