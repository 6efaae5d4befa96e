// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import org.earleaf.units.Units;

/**
 * What the pre-sidedress nitrate test recommends: nitrate of the top foot when corn stands 6 to 12 in tall.
 *
 * <pre>
 * A = max(0, (c - n) 8 lb/ac)
 *
 * A      nitrogen to put on                       [kg/ha]
 * n      nitrate nitrogen in the top foot         [mg/kg]
 * c      critical value                           [mg/kg]
 *        25; 21 when the spring brought over a fifth more rain than usual, 15 then on manured ground
 * Range  n 0 to 60, c 10 to 30
 * Source late-spring nitrate test of Iowa State extension; the factor 8 lb/ac for 1 ppm is the rule's own
 * Check  SoilTestRuleTest
 * </pre>
 *
 * Take it as a reading of the soil's state rather than as the recommendation: at 7 mg/kg recent Iowa trials needed 149
 * lb/ac in the mean, but 13 to 193 from field to field.
 */
public final class SoilTestRule {
    private static final double USUAL_MGKG = 25;
    private static final double WET_SPRING_MGKG = 21;
    private static final double WET_SPRING_MANURED_MGKG = 15;
    private static final double WET_SPRING = 1.20;
    private static final double LBAC_PER_MGKG = 8;

    private SoilTestRule() {}

    /**
     * Critical nitrate of the top foot [mg/kg].
     *
     * @param springRain rain of this spring over that of a usual one
     */
    public static double critical_mgKg(double springRain, boolean manured) {
        if (springRain <= WET_SPRING) {
            return USUAL_MGKG;
        }
        return manured ? WET_SPRING_MANURED_MGKG : WET_SPRING_MGKG;
    }

    /** Nitrogen to put on [kg/ha]. */
    public static double rate_kgHa(double nitrate_mgKg, double critical_mgKg) {
        return Units.kgHa(Math.max(0, (critical_mgKg - nitrate_mgKg) * LBAC_PER_MGKG));
    }
}
