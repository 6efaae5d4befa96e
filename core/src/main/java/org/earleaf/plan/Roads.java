// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/**
 * Time from one place to the next.
 *
 * <pre>
 * travel = fixed + slowness (|dx| + |dy|)
 *
 * fixed    fold, hitch, unfold; also between two jobs in one field   [s]
 * slowness of the road                                               [s/m]
 * dx, dy   along section roads                                       [m]
 * Range    0 or more
 * Source   own construct; roads of surveyed land run along section lines
 * Check    FleetInstanceTest
 * </pre>
 *
 * @param countsWayHome whether the way home after the last job costs, and must lie within the shift
 */
public record Roads(double fixed_s, double slowness_sM, boolean countsWayHome) {
    /** The way home after the last job is not counted. */
    public Roads(double fixed_s, double slowness_sM) {
        this(fixed_s, slowness_sM, false);
    }

    public double travel_s(Spot from, Spot to) {
        return fixed_s + slowness_sM * (Math.abs(from.x_m() - to.x_m()) + Math.abs(from.y_m() - to.y_m()));
    }
}
