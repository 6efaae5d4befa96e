// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;

/**
 * What one future holds for the crop without the pass and without disease.
 *
 * @param yield_kgHa dry grain
 * @param v8 first day with eight collars; the others first day of their stage, all in order
 */
public record CropAhead(
        double yield_kgHa,
        LocalDate v8,
        LocalDate vt,
        LocalDate r1,
        LocalDate r2,
        LocalDate r3,
        LocalDate r4,
        LocalDate r5) {
    /** Weight of an aphid-day on a date: full to R1, less to R3, none from R4 on. */
    double aphidWeight(LocalDate date, ProtectionSettings settings) {
        if (!date.isBefore(r4)) {
            return 0;
        }
        if (date.isBefore(r2)) {
            return 1;
        }
        return settings.of(
                date.isBefore(r3) ? ProtectionAssumption.APHID_STAGE_R2 : ProtectionAssumption.APHID_STAGE_R3);
    }

    /**
     * Whether a day lies from tassel to silk (VT to R1), where a pass against leaf disease usually goes.
     *
     * <pre>
     * VT <= day < R2
     *
     * Source a pass from tassel to brown silk (R2) is best, at tassel to silk it gained most and most often: Ohio State
     *        extension and the network of state extension services (read).
     * Check  ProtectionPassesTest
     * </pre>
     */
    public boolean isTasselToSilk(LocalDate day) {
        return !day.isBefore(vt) && day.isBefore(r2);
    }

    /**
     * How much of the gain seen in trials a pass on a date can still bring.
     *
     * <pre>
     * 1 to R3, falling in a line to 0 at R4
     *
     * Source assumption; trials and extension put the pass between tassel and R3, none from R4 on
     * Check  ProtectionWorthTest
     * </pre>
     */
    public double timing(LocalDate pass) {
        if (!pass.isAfter(r3)) {
            return 1;
        }
        double left = java.time.temporal.ChronoUnit.DAYS.between(pass, r4);
        return Math.max(0, left / Math.max(1, java.time.temporal.ChronoUnit.DAYS.between(r3, r4)));
    }
}
