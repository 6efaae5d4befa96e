// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * Nozzles that open and close many times a second: the rate is held by the share of time open, the pressure stays.
 *
 * <pre>
 * Q F = D N sqrt(p / p0)
 *
 * D      duty, share of time open; 0.25 to 1 permitted, 0.6 to 0.8 aimed at when cruising, below 0.4 skips
 * Q F N p as in FlowMath
 * Range  10 to 15 pulses a second, where flow is linear in the duty
 * Source square-root law as in FlowMath; limits of the duty from a national spray manual and a nozzle sizing guide.
 * Check  PulseWidthTest
 * </pre>
 */
public final class PulseWidth {
    public static final double LEAST_DUTY = 0.25;
    public static final double SKIPS_BELOW = 0.40;
    public static final double CRUISE_LOW = 0.60;
    public static final double CRUISE_HIGH = 0.80;

    private PulseWidth() {}

    public static double duty(double flow_m3s, double rated_m3s, double pressure_Pa, double densityFactor) {
        return flow_m3s / FlowMath.flowAt_m3s(rated_m3s, pressure_Pa, densityFactor);
    }

    public static double flow_m3s(double duty, double rated_m3s, double pressure_Pa, double densityFactor) {
        return duty * FlowMath.flowAt_m3s(rated_m3s, pressure_Pa, densityFactor);
    }

    /** Speed at which a setting needs this duty. */
    public static double speed_ms(double duty, FlowSetting setting) {
        double flow_m3s = flow_m3s(duty, setting.rated_m3s(), setting.pressure_Pa(), setting.densityFactor());
        return FlowMath.speed_ms(flow_m3s, setting.rate_m3m2(), setting.width_m());
    }

    /** Way covered in each cycle while open. */
    public static double on_m(double duty, double speed_ms, double pulses_hz) {
        return duty * speed_ms / pulses_hz;
    }

    /** Way covered in each cycle while shut; neighbours fire half a cycle apart and must overlap it in full. */
    public static double off_m(double duty, double speed_ms, double pulses_hz) {
        return (1 - duty) * speed_ms / pulses_hz;
    }

    /** Duty of one outlet in a turn, and whether it met a limit so that its strip gets too much or too little. */
    public record InTurn(double duty, boolean clamped) {}

    /** Duty of an outlet that moves at its own speed while the middle of the boom keeps {@code dutyMiddle}. */
    public static InTurn inTurn(double dutyMiddle, double speedOutlet_ms, double speedMiddle_ms) {
        double wanted = dutyMiddle * speedOutlet_ms / speedMiddle_ms;
        double possible = Math.max(LEAST_DUTY, Math.min(1, wanted));
        return new InTurn(possible, possible != wanted);
    }
}
