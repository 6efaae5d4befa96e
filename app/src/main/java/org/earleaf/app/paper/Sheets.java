// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.paper;

import java.time.LocalDate;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.words.Dates;
import org.earleaf.record.Chain;

/** Words that the sheets share. */
final class Sheets {
    private Sheets() {}

    static String time(ZonedDateTime time, ZoneId home) {
        return whole(Dates.stamp(time.toInstant(), home));
    }

    static String clock(Optional<ZonedDateTime> time, ZoneId home) {
        return time.map(t -> whole(Dates.clock(t.withZoneSameInstant(home).toLocalTime())))
                .orElse("");
    }

    /** No break between the hour and its am or pm. */
    private static String whole(String time) {
        return time.replaceFirst(" (?=\\S+$)", "\u00a0");
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
