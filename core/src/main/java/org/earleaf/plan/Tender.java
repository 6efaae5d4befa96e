// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/**
 * A trailer or truck that brings water and product to the rigs.
 *
 * @param holds_m3 when full; it leaves the yard full
 * @param roundTrip_s to the yard and back
 * @param reload_s at the yard
 */
public record Tender(String name, double holds_m3, double roundTrip_s, double reload_s) {
    /** From leaving the field to being back, full. */
    public double away_s() {
        return roundTrip_s + reload_s;
    }

    /**
     * What it can bring in a day.
     *
     * <pre>
     * most = holds (1 + floor(day / (round trip + reload)))
     *
     * Range  0 or more [m3]
     * Source own construct: it begins full and is away once for each further load of its own
     * Check  TenderDayTest
     * </pre>
     */
    public double most_m3(double day_s) {
        return holds_m3 * (1 + Math.floor(day_s / away_s()));
    }
}
