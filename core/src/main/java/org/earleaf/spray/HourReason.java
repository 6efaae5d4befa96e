// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import org.earleaf.units.Said;

/**
 * What speaks against an hour.
 *
 * @param factor what was looked at
 * @param fit how much it weighs
 * @param found value found, in the inside unit of the factor; NaN where it is no number
 * @param limit value it should not pass; NaN likewise
 * @param said for people
 */
public record HourReason(Factor factor, SprayFit fit, double found, double limit, Said said) {
    /** What is looked at: wind and gusts in m/s, temperatures in °C, humidity in %, rain in mm or as a chance. */
    public enum Factor {
        LABEL,
        WIND,
        GUSTS,
        DELTA_T,
        TEMPERATURE,
        HUMIDITY,
        LEAVES,
        RAIN,
        INVERSION,
        GROUND
    }
}
