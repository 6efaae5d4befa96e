// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

/**
 * Soil between two depths as surveyed or tested. {@code NaN} means not given.
 *
 * @param top_mm upper depth
 * @param bottom_mm lower depth
 * @param sand_pct mass share of the fine earth, 0 to 95
 * @param clay_pct mass share of the fine earth, 3 to 60
 * @param om_pct organic matter by mass, 0.1 to 8
 * @param ph in water, 4.5 to 8.5
 * @param cec_cmolKg cation exchange capacity
 * @param measured what is otherwise taken from texture
 */
public record Horizon(
        double top_mm,
        double bottom_mm,
        double sand_pct,
        double clay_pct,
        double om_pct,
        double ph,
        double cec_cmolKg,
        Measured measured) {
    /**
     * How it lies and holds water.
     *
     * @param bulkDensity_gcm3 dry bulk density
     * @param wiltingPoint_share water at 1500 kPa by volume
     * @param fieldCapacity_share water at 33 kPa by volume
     */
    public record Measured(double bulkDensity_gcm3, double wiltingPoint_share, double fieldCapacity_share) {
        public static final Measured NOT_GIVEN = new Measured(Double.NaN, Double.NaN, Double.NaN);
    }
}
