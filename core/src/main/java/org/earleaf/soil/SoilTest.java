// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

/**
 * From what a laboratory prints to what lies in a layer, and back.
 *
 * <pre>
 * m = c BD z / 100
 *
 * m      nutrient in the layer           [kg/ha]
 * c      concentration in dry soil       [mg/kg, the same as ppm]
 * BD     dry bulk density                [g/cm3]
 * z      thickness of the layer          [mm]
 * Range  c 0 to 60, BD 0.9 to 1.9
 * Source mass balance: 1 mm of soil at 1 g/cm3 is 10 000 kg/ha.
 * Check  SoilTestTest: the trade's 3.6 lb/ac a foot for 1 ppm at 1.33 g/cm3.
 * </pre>
 */
public final class SoilTest {
    private SoilTest() {}

    /** Nutrient in a layer [kg/ha]. */
    public static double kgHa(double mgKg, double bulkDensity_gcm3, double thickness_mm) {
        return mgKg * bulkDensity_gcm3 * thickness_mm / 100;
    }

    /** Concentration [mg/kg] of a nutrient that lies in a layer. */
    public static double mgKg(double kgHa, double bulkDensity_gcm3, double thickness_mm) {
        return kgHa * 100 / bulkDensity_gcm3 / thickness_mm;
    }
}
