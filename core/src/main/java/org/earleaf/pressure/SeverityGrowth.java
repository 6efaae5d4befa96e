// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

/**
 * How a disease grows over leaves, and how a fungicide holds it up.
 *
 * <pre>
 * x(t) = 1/(1 + (1 - x0)/x0 exp(-r t))
 * under a fungicide r (1 - e w(u)), u days after the pass; w = 1 to 14 d, then falling in a line to 0 at 28 d
 *
 * x      share of the leaf diseased, x0 at the start
 * r      growth                                       [1/d]
 * t      days                                         [d]
 * e      efficacy
 * Range  x0 from 0 to below 1
 * Source logistic growth: van der Plank 1963, from memory; r and e: assumptions; 14 and 28 d: common practice, no source.
 * Check  SeverityTest
 * </pre>
 */
public final class SeverityGrowth {
    private SeverityGrowth() {}

    /** Severity after so many days; those protected count for nothing. */
    public static double after(double x0, double r_perDay, double days) {
        if (x0 <= 0) {
            return 0;
        }
        return 1 / (1 + (1 - x0) / x0 * Math.exp(-r_perDay * days));
    }

    /** Weight of a fungicide's effect so many days after the pass, 1 to 0. */
    public static double effect(double days, ProtectionSettings settings) {
        double full = settings.of(ProtectionAssumption.FULL_EFFECT);
        double none = Math.max(full, settings.of(ProtectionAssumption.NO_EFFECT));
        if (days < 0 || days >= none) {
            return 0;
        }
        return days <= full ? 1 : (none - days) / (none - full);
    }

    /** Days of growth that a pass takes away until so many days after it: its weight summed, times its efficacy. */
    public static double daysHeldUp(double days, ProtectionSettings settings) {
        if (days <= 0) {
            return 0;
        }
        double full = settings.of(ProtectionAssumption.FULL_EFFECT);
        double none = Math.max(full, settings.of(ProtectionAssumption.NO_EFFECT));
        double fading = Math.max(0, Math.min(days, none) - full);
        double sum = Math.min(days, full) + (none > full ? fading - fading * fading / (2 * (none - full)) : 0);
        return settings.of(ProtectionAssumption.EFFICACY) * sum;
    }
}
