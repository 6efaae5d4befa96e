// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;
import org.earleaf.units.EarleafException;

/**
 * Days as people write them, 2026-06-30, between {@link #FIRST} and {@link #LAST}: earlier is before any record of a farm
 * that is kept here, later is a slip.
 */
public final class Days {
    public static final LocalDate FIRST = LocalDate.of(1990, 1, 1);
    public static final LocalDate LAST = LocalDate.of(2099, 12, 31);

    /** The oldest stations began about then. */
    public static final LocalDate FIRST_WEATHER = LocalDate.of(1850, 1, 1);

    private static final int LONGEST = 10;

    private Days() {}

    /** The day; refused where it is none. */
    public static LocalDate read(String text, String where) {
        return read(text, where, FIRST);
    }

    /** The day of weather. */
    public static LocalDate ofWeather(String text, String where) {
        return read(text, where, FIRST_WEATHER);
    }

    private static LocalDate read(String text, String where, LocalDate first) {
        String said = text.strip();
        try {
            LocalDate day = LocalDate.parse(said.length() > LONGEST ? "" : said);
            return checked(day, where, first);
        } catch (DateTimeParseException unreadable) {
            throw new EarleafException(Gathered.problem("date.unreadable", where, said));
        }
    }

    private static LocalDate checked(LocalDate day, String where, LocalDate first) {
        if (day.isBefore(first) || day.isAfter(LAST)) {
            throw new EarleafException(
                    Gathered.problem("date.out-of-range", where, day.toString(), "first", first, "last", LAST));
        }
        return day;
    }

    /** A day of something that has happened; refused where it is still to come. */
    public static LocalDate past(LocalDate day, LocalDate today, String where) {
        if (day.isAfter(today)) {
            throw new EarleafException(Gathered.problem("date.in-future", where, day.toString(), "today", today));
        }
        return day;
    }

    /** The day of a draft's part; empty where it was not given, or is refused with its problem noted. */
    static Optional<LocalDate> of(Draft draft, String part, Gathered gathered) {
        return draft.has(part) ? gathered.read(() -> read(draft.text(part), part)) : Optional.empty();
    }
}
