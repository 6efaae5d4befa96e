// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.util.Optional;
import org.earleaf.units.Said;

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

    /** Way covered in each cycle while shut; neighbours fire half a cycle apart and must overlap it in full. */
    public static double off_m(double duty, double speed_ms, double pulses_hz) {
        return (1 - duty) * speed_ms / pulses_hz;
    }

    /**
     * How a nozzle holds a rate.
     *
     * @param shut_m way covered while shut in each cycle
     */
    public record Held(double duty, double slowest_ms, double fastest_ms, double shut_m) {
        /** What is to be known of the duty, if anything. */
        public Optional<Said> remark() {
            if (duty < SKIPS_BELOW) {
                return Optional.of(Said.of("rig.pulses.skips"));
            }
            return duty < CRUISE_LOW || duty > CRUISE_HIGH
                    ? Optional.of(Said.of("rig.pulses.cruise"))
                    : Optional.empty();
        }
    }

    /** What a size of nozzle at a pressure does with the flow that a setting wants. */
    public static Held held(FlowSetting wanted, double rated_m3s, double pressure_Pa, double pulses_hz) {
        double most_m3s = FlowMath.flowAt_m3s(rated_m3s, pressure_Pa, wanted.densityFactor());
        double duty = duty(wanted.flow_m3s(), rated_m3s, pressure_Pa, wanted.densityFactor());
        return new Held(
                duty,
                FlowMath.speed_ms(LEAST_DUTY * most_m3s, wanted.rate_m3m2(), wanted.width_m()),
                FlowMath.speed_ms(most_m3s, wanted.rate_m3m2(), wanted.width_m()),
                off_m(duty, wanted.speed_ms(), pulses_hz));
    }
}
