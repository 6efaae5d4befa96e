// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Drainage;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Said;

/**
 * Water that stood on a poorly drained field while the crop was small: its plants are to be counted.
 *
 * <pre>
 * stood = 1 in or more in two days that the ground did not take
 *
 * Range  planting to V8, the last 14 days, no count since
 * Source corn to V6 lives 2 to 4 days under water, plants to be looked at 3 to 5 days after: extension, from memory;
 *        the inch, the days asked for: own construct
 * Check  StandDueTest
 * </pre>
 *
 * @param from the first of the days on which more fell than the ground took
 * @param to the last
 */
public record StandDue(LocalDate from, LocalDate to) {
    private static final int ASKED_FOR_D = 14;
    private static final int DAYS = 2;
    private static final double STANDS_MM = 25.4;
    private static final double SMALL_COLLARS = 8;

    public static Optional<StandDue> find(Farm farm, Outlook outlook) {
        Zone zone = outlook.zone();
        LocalDate on = outlook.on();
        if (zone.land().drainage() != Drainage.POOR || on.isBefore(zone.planted())) {
            return Optional.empty();
        }
        return stood(zone, outlook.trace(), on).filter(due -> farm.readings().stream()
                .noneMatch(r -> r.kind() == Reading.Kind.STAND
                        && r.isOn(zone)
                        && r.date().isAfter(due.to())
                        && !r.date().isAfter(on)));
    }

    /** The last time that it stood before a day. */
    private static Optional<StandDue> stood(Zone zone, SeasonTrace trace, LocalDate on) {
        LocalDate earliest = on.minusDays(ASKED_FOR_D);
        LocalDate to = on.minusDays(1);
        while (!to.isBefore(earliest) && !stands(zone, trace, to)) {
            to = to.minusDays(1);
        }
        LocalDate from = to;
        while (stands(zone, trace, from)) {
            from = from.minusDays(1);
        }
        return from.equals(to) ? Optional.empty() : Optional.of(new StandDue(from, to));
    }

    /** Whether the water of a day and the one before stands on small corn. */
    private static boolean stands(Zone zone, SeasonTrace trace, LocalDate date) {
        int day = trace.day(date);
        return !date.isBefore(zone.planted())
                && day >= DAYS
                && day < trace.days()
                && trace.at(day, Daily.COLLARS) <= SMALL_COLLARS
                && trace.at(day, Daily.RUNOFF) - trace.at(day - DAYS, Daily.RUNOFF) >= STANDS_MM;
    }

    public Said said() {
        return Said.of("stand.water-stood", "from", from, "to", to);
    }
}
