// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.pressure.SeverityOutlook;

/**
 * What scouting a zone before deciding would be worth: with the answer, the pass is made only where it nets something.
 *
 * <pre>
 * V = p max(0, E[net | much]) + (1 - p) max(0, E[net | little]) - max(0, E[net])
 *
 * p      chance of a season that ends with much disease
 * V      an upper bound: scouting tells the class, if at all, with error   [$/ha]
 * Range  a zone that nobody has scouted
 * Source expected value of perfect information (Raiffa & Schlaifer 1961, from memory)
 * Check  ScoutingValueTest
 * </pre>
 */
public final class ScoutingValue {
    private ScoutingValue() {}

    /** Dollars a hectare at most; 0 where a disease was scouted already or no fungicide is in question. */
    public static double most_usdHa(ProtectionCase c, ProtectionOption o) {
        SeverityOutlook now = new SeverityOutlook(c);
        if (now.isScouted() || o.fungicide().isEmpty()) {
            return 0;
        }
        double p = now.score().chanceSevere(c.settings());
        double much = net_usdHa(c, o, 1);
        double little = net_usdHa(c, o, 0);
        double unknown = p * much + (1 - p) * little;
        return p * Math.max(0, much) + (1 - p) * Math.max(0, little) - Math.max(0, unknown);
    }

    /**
     * The same where nothing is sprayed without a look: then doing nothing is what it is held against, and the last term
     * falls away. Dollars a hectare at most.
     */
    public static double beforeSpraying_usdHa(ProtectionCase c, ProtectionOption o) {
        SeverityOutlook now = new SeverityOutlook(c);
        if (now.isScouted() || o.fungicide().isEmpty()) {
            return 0;
        }
        double p = now.score().chanceSevere(c.settings());
        return p * Math.max(0, net_usdHa(c, o, 1)) + (1 - p) * Math.max(0, net_usdHa(c, o, 0));
    }

    private static double net_usdHa(ProtectionCase c, ProtectionOption o, double chanceSevere) {
        ProtectionSettings known = c.settings()
                .with(ProtectionAssumption.SEVERE_LOW, chanceSevere)
                .with(ProtectionAssumption.SEVERE_MODERATE, chanceSevere)
                .with(ProtectionAssumption.SEVERE_HIGH, chanceSevere);
        ProtectionCase told = new ProtectionCase(
                c.zone(),
                c.on(),
                c.futures(),
                c.site(),
                c.relativeMaturity_d(),
                c.soFar(),
                c.prices(),
                c.strips(),
                known);
        return PassWorth.of(ProtectionWorth.gained_kgHa(told, o), o.cost_usdHa(), c.prices())
                .mean_usdHa();
    }
}
