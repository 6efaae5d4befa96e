// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.field.Drainage;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Said;

/**
 * Water that stood on a poorly drained field while the crop was small: its plants are to be counted.
 *
 * <pre>
 * stood = two evenings in a row with the top foot at 90 % of saturation or more
 *
 * Range  planting to V8, the last 14 days, no count since the water went
 * Source corn to V6 lives 2 to 4 days under water, plants to be looked at 3 to 5 days after: extension, from memory;
 *        90 %, the days asked for: own construct
 * Check  StandDueTest
 * </pre>
 *
 * @param from the first day on which water stood
 * @param to the last
 */
public record StandDue(LocalDate from, LocalDate to) {
    private static final int ASKED_FOR_D = 14;
    private static final int DAYS = 2;
    private static final double FULL = .9;
    private static final double SMALL_COLLARS = 8;
    private static final int TOP_FOOT = 3;

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
        while (to.isAfter(earliest)) {
            LocalDate from = to;
            while (!from.isBefore(zone.planted()) && isFull(zone, trace, from)) {
                from = from.minusDays(1);
            }
            if (!from.isAfter(to.minusDays(DAYS))) {
                return Optional.of(new StandDue(from.plusDays(1), to));
            }
            to = from.isBefore(to) ? from : to.minusDays(1);
        }
        return Optional.empty();
    }

    private static boolean isFull(Zone zone, SeasonTrace trace, LocalDate date) {
        int day = trace.day(date);
        if (day < 0 || day >= trace.days() || trace.at(day, Daily.COLLARS) > SMALL_COLLARS) {
            return false;
        }
        double held = 0;
        double room = 0;
        for (int i = 0; i < TOP_FOOT; i++) {
            held += trace.field(day, Cell.WATER, SeasonTrace.ROW, i)
                    + trace.field(day, Cell.WATER, SeasonTrace.MIDDLE, i);
            room += zone.soil().water().get(i).sat() * SoilProfile.thickness_mm(i);
        }
        return held >= FULL * room;
    }

    public Said said() {
        return Said.of("stand.water-stood", "from", from, "to", to);
    }
}
