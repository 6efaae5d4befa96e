// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.Optional;
import java.util.OptionalInt;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;

/**
 * One disease as scouted on a day.
 *
 * @param disease empty: not named
 * @param leaf highest leaf with lesions, counted from the ear leaf (0), -3 the third below it; empty: not noted
 * @param incidence plants that show it; empty: severity only
 * @param severity share of the leaf diseased; NaN: not judged
 */
public record LesionSighting(
        LocalDate date, Optional<Disease> disease, OptionalInt leaf, Optional<Incidence> incidence, double severity) {
    /** Whether any lesion was seen. */
    public boolean isFound() {
        return severity > 0 || incidence.filter(i -> i.shows() > 0).isPresent();
    }

    /**
     * Severity now, at the lower end, the middle and the upper end of what was seen.
     *
     * <pre>
     * x = a (-ln(1 - p))     where only the plants that show it were counted
     *
     * p      share of plants that show it, at most 0.99
     * a      ear leaf covered for each mean lesion on a plant, those lower down included
     * Range  early disease
     * Source lesions fall on plants as by chance (Poisson): own construct; a is an assumption, set so that on a
     *        susceptible hybrid in favourable weather the threshold of half of the plants saves about 9.5 bu/ac, the mean of
     *        the more diseased fields of Illinois (extension 2015).
     * Check  SightingsTest
     * </pre>
     */
    double[] severities(ProtectionSettings settings) {
        if (!Double.isNaN(severity)) {
            return new double[] {severity, severity, severity};
        }
        if (incidence.isEmpty()) {
            return new double[] {0, 0, 0};
        }
        Incidence seen = incidence.get();
        double a = settings.of(ProtectionAssumption.LESION_SHARE);
        if (seen.shows() == 0) {
            return new double[] {0, 0, a * lesions(seen.high())};
        }
        return new double[] {a * lesions(seen.low()), a * lesions(seen.share()), a * lesions(seen.high())};
    }

    private static double lesions(double share) {
        return -Math.log(1 - Math.min(.99, Math.max(0, share)));
    }
}
