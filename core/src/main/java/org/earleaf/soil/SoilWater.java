// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

/**
 * Water held by a soil, from texture and organic matter.
 *
 * <pre>
 * WP   = a + (0.14 a - 0.02)                     a = water at 1500 kPa, first estimate
 * FC   = b + (1.283 b^2 - 0.374 b - 0.015)       b = water at 33 kPa, first estimate
 * SAT  = FC + s - 0.097 S + 0.043                s = water between 33 kPa and saturation
 * Ksat = 1930 (SAT - FC)^(3 - lambda),  lambda = ln(FC / WP) / ln(1500 / 33)
 *
 * S, C   sand, clay                              [share of mass, 0 to 1]
 * OM     organic matter                          [% of mass]
 * WP, FC, SAT  wilting point, field capacity, saturation   [share of volume]
 * Ksat   saturated conductivity                  [mm/h]
 * Range  OM to 8 %, clay to 60 %
 * Source Saxton & Rawls 2006, Soil Sci. Soc. Am. J. 70:1569, table 1. Public copies of the code carry 1.238 for 1.283.
 * Check  SoilWaterTest
 * </pre>
 *
 * @param wp wilting point [share of volume]
 * @param fc field capacity [share of volume]
 * @param sat saturation [share of volume]
 * @param ksat_mmh saturated conductivity
 */
public record SoilWater(double wp, double fc, double sat, double ksat_mmh) {
    public static SoilWater ofTexture(double sand_pct, double clay_pct, double om_pct) {
        double s = sand_pct / 100;
        double c = clay_pct / 100;
        double a = -0.024 * s
                + 0.487 * c
                + 0.006 * om_pct
                + 0.005 * s * om_pct
                - 0.013 * c * om_pct
                + 0.068 * s * c
                + 0.031;
        double b = -0.251 * s
                + 0.195 * c
                + 0.011 * om_pct
                + 0.006 * s * om_pct
                - 0.027 * c * om_pct
                + 0.452 * s * c
                + 0.299;
        double d = 0.278 * s
                + 0.034 * c
                + 0.022 * om_pct
                - 0.018 * s * om_pct
                - 0.027 * c * om_pct
                - 0.584 * s * c
                + 0.078;
        double wp = a + (0.14 * a - 0.02);
        double fc = b + (1.283 * b * b - 0.374 * b - 0.015);
        double sat = fc + (d + (0.636 * d - 0.107)) - 0.097 * s + 0.043;
        return of(wp, fc, sat);
    }

    /** With conductivity from the three water contents. */
    public static SoilWater of(double wp, double fc, double sat) {
        double lambda = Math.log(fc / wp) / Math.log(1500.0 / 33);
        return new SoilWater(wp, fc, sat, 1930 * Math.pow(sat - fc, 3 - lambda));
    }

    /** Dry bulk density [g/cm3] of mineral soil with this pore space. */
    public double bulkDensity_gcm3() {
        return 2.65 * (1 - sat);
    }

    public boolean isOrdered() {
        return wp > 0 && wp < fc && fc < sat && sat < 1;
    }
}
