// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;

/**
 * The dates of a zone's season that work is planned by.
 *
 * @param nitrogenTo last day on which nitrogen still pays; empty: the run ends before
 */
public record FieldCalendar(
        LocalDate planted,
        Optional<LocalDate> nitrogenTo,
        DateSpread emergence,
        DateSpread silk,
        DateSpread maturity,
        WorkableDays workable) {
    /** From milk on, nitrogen comes too late (common practice, no source). */
    public static final double TOO_LATE_REP = .33;

    public static FieldCalendar of(ZoneEnsemble futures, Baseline base) {
        Zone zone = futures.zone();
        return new FieldCalendar(
                zone.planted(),
                lastForNitrogen(base.trace()),
                base.spread(base.end()::emergenceDay),
                base.spread(base.end()::silkDay),
                base.spread(base.end()::blackLayerDay),
                futures.workable());
    }

    private static Optional<LocalDate> lastForNitrogen(SeasonTrace trace) {
        for (int day = 0; day < trace.days(); day++) {
            if (isTooLate(trace, day)) {
                return Optional.of(trace.date(day).minusDays(1));
            }
        }
        return Optional.empty();
    }

    private static boolean isTooLate(SeasonTrace trace, int day) {
        return trace.at(day, Daily.REP) >= TOO_LATE_REP;
    }

    /** Whether the crop of a day can still use nitrogen: planted, and not yet in milk. */
    public static boolean usesNitrogen(Zone zone, SeasonTrace trace, LocalDate day) {
        return !day.isBefore(zone.planted()) && !isTooLate(trace, trace.day(day));
    }
}
