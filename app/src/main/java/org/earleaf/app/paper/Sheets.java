// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.paper;

import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.record.Chain;

/** Words that the sheets share. */
final class Sheets {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM yyyy", Locale.US);
    // No break between the hour and its am or pm.
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("EEE d MMMM yyyy, h:mm\u00a0a", Locale.US);
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("h:mm\u00a0a", Locale.US);

    private Sheets() {}

    static String day(LocalDate date) {
        return DAY.format(date);
    }

    static String time(ZonedDateTime time, ZoneId home) {
        return TIME.format(time.withZoneSameInstant(home)).replace("AM", "am").replace("PM", "pm");
    }

    static String time(Instant at, ZoneId home) {
        return time(at.atZone(home), home);
    }

    static String clock(Optional<ZonedDateTime> time, ZoneId home) {
        return time.map(t -> CLOCK.format(t.withZoneSameInstant(home)).toLowerCase(Locale.US))
                .orElse("");
    }

    static String place(String field, String zone) {
        return zone.isEmpty() ? field : field + ", " + zone;
    }

    /** Sixteen digits in fours, enough to find an entry by eye. */
    static String code(String hash) {
        return hash.substring(0, 4) + " " + hash.substring(4, 8) + " " + hash.substring(8, 12) + " "
                + hash.substring(12, 16);
    }

    /** Fingerprint of the last entry filed up to the end of a day: what is printed as that day's head. */
    static String head(List<Chain.Entry> book, LocalDate day, ZoneId home) {
        return book.stream()
                .filter(e -> !e.record().filed().atZone(home).toLocalDate().isAfter(day))
                .reduce((before, after) -> after)
                .map(Chain.Entry::hash)
                .orElse(Chain.START);
    }
}
