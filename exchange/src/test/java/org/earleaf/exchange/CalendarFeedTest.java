// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import org.earleaf.units.Said;
import org.earleaf.week.PlanFeed;
import org.junit.jupiter.api.Test;

/** RFC 5545, sections 3.1 (lines of at most 75 octets, CRLF, folding), 3.3.11 (escapes), 3.6.1 (UID, DTSTAMP). */
class CalendarFeedTest {
    private static final Instant MADE = Instant.parse("2026-06-30T10:28:00Z");
    private static final PlanFeed.Entry ENTRY = new PlanFeed.Entry(
            "pennacrow-oxbow-nitrogen-2026@earleaf",
            Instant.parse("2026-07-02T12:28:00Z"),
            Instant.parse("2026-07-02T13:42:30Z"),
            Said.text("Oxbow; north, \\ and Señor Núñez's corner — 80 lb N/ac, row-base dribble, with the Highboy ÆØÅ"),
            "Oxbow",
            Said.text("First line\nsecond line"));

    private static String feed() {
        return CalendarFeed.write("Farm, week", List.of(ENTRY), MADE, 20634, Said::toString);
    }

    @Test
    void no_line_is_longer_than_75_octets_and_every_one_ends_in_crlf() {
        String feed = feed();
        assertThat(feed.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        for (String line : feed.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8)).as(line).hasSizeLessThanOrEqualTo(75);
        }
        assertThat(feed.split("\r\n")).anyMatch(l -> l.startsWith(" "));
    }

    @Test
    void unfolded_and_unescaped_it_says_what_was_put_in() {
        String whole = feed().replace("\r\n ", "");
        assertThat(whole)
                .contains("\r\nUID:pennacrow-oxbow-nitrogen-2026@earleaf\r\n")
                .contains("\r\nDTSTAMP:20260630T102800Z\r\n")
                .contains("\r\nSEQUENCE:20634\r\n")
                .contains("\r\nDTSTART:20260702T122800Z\r\nDTEND:20260702T134230Z\r\n")
                .contains("DESCRIPTION:First line\\nsecond line")
                .startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:")
                .endsWith("END:VCALENDAR\r\n");
        String summary = whole.substring(whole.indexOf("SUMMARY:") + 8);
        String said = summary.substring(0, summary.indexOf("\r\n"))
                .replace("\\;", ";")
                .replace("\\,", ",")
                .replace("\\\\", "\\");
        assertThat(said).isEqualTo(ENTRY.title().toString());
    }
}
