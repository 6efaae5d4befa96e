// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;

/**
 * What falls due after an application.
 *
 * <p>Hours run on the clock of the world, days on the calendar of the field, so that a change of clocks neither
 * shortens an interval nor moves a date.
 *
 * @param reentryEnds end of the restricted-entry interval
 * @param postBy central posting
 * @param fileBy record written
 * @param copyBy copy to the customer, commercial work only
 * @param unpostAfter posting may come down
 * @param keepUntil record may be destroyed from this day
 */
public record Deadlines(
        ZonedDateTime reentryEnds,
        ZonedDateTime postBy,
        LocalDate fileBy,
        LocalDate copyBy,
        LocalDate unpostAfter,
        LocalDate keepUntil) {
    public static Deadlines of(ZonedDateTime end, int reentry_h, RecordRule rule) {
        ZonedDateTime reentry = end.plusHours(reentry_h);
        LocalDate done = end.toLocalDate();
        return new Deadlines(
                reentry,
                end.plusHours(rule.post_h()),
                done.plusDays(rule.file_d()),
                done.plusDays(rule.copy_d()),
                reentry.toLocalDate().plusDays(rule.unpost_d()),
                reentry.toLocalDate().plusYears(rule.keep_y()));
    }

    /** Of a record; when its end is not known the whole day counts, so that no interval is cut short. */
    public static Deadlines of(FiledRecord record, ZoneId zone, RecordRule rule) {
        ZonedDateTime end = record.end().orElse(ZonedDateTime.of(record.date(), LocalTime.of(23, 59), zone));
        return of(end, record.reentry_h().orElse(0), rule);
    }

    /** Whether the record was filed after its day; it is then flagged, never refused. */
    public static boolean isLate(FiledRecord record, ZoneId zone, RecordRule rule) {
        LocalDate filed = record.filed().atZone(zone).toLocalDate();
        return filed.isAfter(of(record, zone, rule).fileBy());
    }
}
