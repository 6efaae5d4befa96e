// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.earleaf.units.Said;
import org.earleaf.week.PlanFeed;

/**
 * Writes dates as iCalendar (RFC 5545): times in UTC, lines folded at 75 octets, each pass under its own UID with a
 * SEQUENCE that grows from one plan to the next.
 */
public final class CalendarFeed {
    private static final int MOST_OCTETS = 75;
    private static final DateTimeFormatter TIME =
            DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss'Z'", Locale.ROOT).withZone(ZoneOffset.UTC);

    private final StringBuilder text = new StringBuilder();

    private final Function<Said, String> words;

    private CalendarFeed(Function<Said, String> words) {
        this.words = words;
    }

    /**
     * @param name of the calendar
     * @param made when the plan was made
     * @param sequence larger for a later plan
     * @param words makes the sentences
     */
    public static String write(
            String name, List<PlanFeed.Entry> entries, Instant made, long sequence, Function<Said, String> words) {
        CalendarFeed feed = new CalendarFeed(words);
        feed.line("BEGIN:VCALENDAR");
        feed.line("VERSION:2.0");
        feed.line("PRODID:-//Earleaf//Plan//EN");
        feed.line("CALSCALE:GREGORIAN");
        feed.line("X-WR-CALNAME:" + escaped(name));
        entries.forEach(e -> feed.event(e, made, sequence));
        feed.line("END:VCALENDAR");
        return feed.text.toString();
    }

    private void event(PlanFeed.Entry e, Instant made, long sequence) {
        line("BEGIN:VEVENT");
        line("UID:" + escaped(e.uid()));
        line("DTSTAMP:" + TIME.format(made));
        line("SEQUENCE:" + sequence);
        line("DTSTART:" + TIME.format(e.from()));
        line("DTEND:" + TIME.format(e.to()));
        line("SUMMARY:" + escaped(words.apply(e.title())));
        line("LOCATION:" + escaped(e.where()));
        line("DESCRIPTION:" + escaped(words.apply(e.text())));
        line("END:VEVENT");
    }

    private static String escaped(String plain) {
        return plain.replace("\\", "\\\\")
                .replace(";", "\\;")
                .replace(",", "\\,")
                .replace("\r", "")
                .replace("\n", "\\n");
    }

    /** Folds between characters, never within one: a line and the blank before its next part hold 75 octets at most. */
    private void line(String whole) {
        int octets = 0;
        for (int k = 0; k < whole.length(); ) {
            int point = whole.codePointAt(k);
            String sign = Character.toString(point);
            int size = sign.getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > MOST_OCTETS) {
                text.append("\r\n ");
                octets = 1;
            }
            text.append(sign);
            octets += size;
            k += Character.charCount(point);
        }
        text.append("\r\n");
    }
}
