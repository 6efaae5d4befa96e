// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

/**
 * What is known of a setting; NaN stands for what is left out.
 *
 * @param rate_m3m2 of the liquid, on the ground the outlet serves
 * @param speed_ms over the ground
 * @param width_m served by one outlet
 * @param flow_m3s of the liquid itself, through one outlet
 * @param pressure_Pa at the outlet
 * @param rated_m3s the outlet's size: flow of water at 40 psi
 * @param densityFactor of the liquid, 1 for water
 */
public record FlowQuestion(
        double rate_m3m2,
        double speed_ms,
        double width_m,
        double flow_m3s,
        double pressure_Pa,
        double rated_m3s,
        double densityFactor) {
    /** The value of a part, NaN when left out. */
    public double of(FlowPart part) {
        return switch (part) {
            case RATE -> rate_m3m2;
            case SPEED -> speed_ms;
            case WIDTH -> width_m;
            case FLOW -> flow_m3s;
            case PRESSURE -> pressure_Pa;
            case SIZE -> rated_m3s;
        };
    }

    public boolean has(FlowPart part) {
        return !Double.isNaN(of(part));
    }
}
