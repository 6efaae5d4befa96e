// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.earleaf.app.words.Words.tell;

import java.time.DayOfWeek;
import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import org.earleaf.outlook.DateSpread;

/** Dates and times as the program speaks them, for texts that are put together outside of a message. */
public final class Dates {
    private static final int DAYS_OF_WEEK = DayOfWeek.values().length;

    private Dates() {}

    /** "June 30". */
    public static String day(LocalDate date) {
        return form(date, "");
    }

    /** "Tuesday, June 30". */
    public static String weekday(LocalDate date) {
        return form(date, "weekday");
    }

    /** "Tue, June 30". */
    public static String brief(LocalDate date) {
        return form(date, "short");
    }

    /** "Jun 30", where there is little room. */
    public static String tight(LocalDate date) {
        return form(date, "tight");
    }

    /** "June 30, 2026". */
    public static String year(LocalDate date) {
        return form(date, "year");
    }

    /** "Tuesday, June 30, 2026". */
    public static String full(LocalDate date) {
        return form(date, "full");
    }

    /** "June". */
    public static String month(LocalDate date) {
        return form(date, "month");
    }

    /** "Tue". */
    public static String weekdayTight(LocalDate date) {
        return form(date, "short_name");
    }

    /** "6:30 am". */
    public static String clock(LocalTime time) {
        return Words.here().dates().clock(time);
    }

    /** "Tue, June 30, 2026, 6:30 am". */
    public static String stamp(Instant at, ZoneId home) {
        return tell("dates.stamp", "at", LocalDateTime.ofInstant(at, home));
    }

    /** "on Sunday" within six days, else "on Sun, July 5". */
    public static String soon(LocalDate date, LocalDate today) {
        long days = ChronoUnit.DAYS.between(today, date);
        if (days == 0) {
            return tell("dates.today");
        }
        if (days == 1) {
            return tell("dates.tomorrow");
        }
        return days > 1 && days < DAYS_OF_WEEK
                ? tell("dates.on-name", "date", date)
                : tell("dates.on-day", "date", date);
    }

    /** The spread of a date, "July 2 to 9", "June 28 to July 3", "July 2 to never"; one day when it has none. */
    public static String range(DateSpread dates) {
        if (dates.p10().isEmpty()) {
            return tell("dates.never");
        }
        LocalDate from = dates.p10().get();
        if (dates.p90().isEmpty()) {
            return tell("dates.to-never", "from", from);
        }
        LocalDate to = dates.p90().get();
        if (to.equals(from)) {
            return day(from);
        }
        return from.getMonth() == to.getMonth()
                ? tell("dates.in-month", "from", from, "day", String.valueOf(to.getDayOfMonth()))
                : tell("dates.to", "from", from, "to", to);
    }

    /** "6:50 to 10:10 am", "11:00 am to 1:50 pm". */
    public static String hours(LocalTime from, LocalTime to) {
        String first = clock(from);
        String last = clock(to);
        int half = first.indexOf(' ');
        boolean same = half > 0 && last.endsWith(first.substring(half));
        return tell("page.plan.to", "clock", same ? first.substring(0, half) : first, "clock2", last);
    }

    /** "Tue 6:00 am to 10:00 am", "Tue 8:00 pm to Wed 9:00 am", "Tue 8:00 pm to midnight". */
    public static String span(LocalDateTime from, LocalDateTime to) {
        if (to.equals(from.toLocalDate().plusDays(1).atStartOfDay())) {
            return tell("dates.to-midnight", "from", from);
        }
        return to.toLocalDate().equals(from.toLocalDate())
                ? tell("dates.hours", "from", from, "to", to)
                : tell("dates.hours-over-night", "from", from, "to", to);
    }

    private static String form(LocalDate date, String form) {
        return Words.here().form(date, form);
    }
}
