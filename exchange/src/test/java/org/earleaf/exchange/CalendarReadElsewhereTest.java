// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.temporal.ChronoUnit;
import java.time.temporal.Temporal;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.validate.ValidationResult;
import org.earleaf.units.Said;
import org.earleaf.week.PlanFeed;
import org.junit.jupiter.api.Test;

/** Dates for a calendar as iCal4j, a reader and validator of RFC 5545 by others, understands them. */
class CalendarReadElsewhereTest {
    private static final ZoneId CHICAGO = ZoneId.of("America/Chicago");
    private static final Instant MADE = Instant.parse("2026-06-30T10:28:00Z");
    /** Signs that have to be escaped, or are more than one octet, or more than one char. */
    private static final String SIGNS = "abc XYZ,;\\:\"'=\nñø—½🌽";

    private static Calendar read(String feed) throws Exception {
        return new CalendarBuilder().build(new StringReader(feed));
    }

    private static String value(VEvent event, String name) {
        return event.getProperty(name).map(Property::getValue).orElse("");
    }

    private static Instant instant(Temporal time) {
        return Instant.from(time);
    }

    private static List<PlanFeed.Entry> drawn(int n) {
        SplittableRandom random = new SplittableRandom(5);
        List<PlanFeed.Entry> all = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            // Half a year on each side of both changes of the clock.
            Instant from =
                    Instant.parse("2026-01-10T00:00:00Z").plus(random.nextInt(330 * 24 * 60), ChronoUnit.MINUTES);
            Instant to = from.plus(1 + random.nextInt(700), ChronoUnit.MINUTES);
            all.add(new PlanFeed.Entry(
                    "pass-" + k + "@earleaf",
                    from,
                    to,
                    Said.text(words(random)),
                    words(random),
                    Said.text(words(random))));
        }
        return all;
    }

    private static String words(SplittableRandom random) {
        int[] points = SIGNS.codePoints().toArray();
        StringBuilder text = new StringBuilder("W");
        for (int k = random.nextInt(160); k > 0; k--) {
            text.appendCodePoint(points[random.nextInt(points.length)]);
        }
        // That reader takes a backslash before a sign that is escaped itself for the beginning of an escape.
        return text.append("w").toString().replace("\\", "\\ ");
    }

    @Test
    void two_hundred_drawn_dates_are_valid_and_come_back_as_they_were_put_in() throws Exception {
        List<PlanFeed.Entry> put = drawn(200);
        Calendar calendar = read(CalendarFeed.write("Farm, the week", put, MADE, 20634, Said::toString));
        ValidationResult result = calendar.validate(true);
        assertThat(result.getEntries()).isEmpty();
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        assertThat(events).hasSameSizeAs(put);
        for (int k = 0; k < put.size(); k++) {
            VEvent event = events.get(k);
            PlanFeed.Entry entry = put.get(k);
            assertThat(value(event, Property.UID)).isEqualTo(entry.uid());
            assertThat(value(event, Property.SUMMARY)).isEqualTo(entry.title().toString());
            assertThat(value(event, Property.LOCATION)).isEqualTo(entry.where());
            assertThat(value(event, Property.DESCRIPTION))
                    .isEqualTo(entry.text().toString());
            assertThat(instant(event.getDateTimeStart().getDate())).isEqualTo(entry.from());
            assertThat(instant(event.getDateTimeEnd().getDate())).isEqualTo(entry.to());
            assertThat(value(event, Property.SEQUENCE)).isEqualTo("20634");
        }
    }

    @Test
    void a_pass_at_six_on_the_farms_clock_is_at_six_there_in_summer_and_in_winter() throws Exception {
        for (String day : List.of("2026-06-30", "2026-12-01")) {
            LocalDateTime six = LocalDateTime.parse(day + "T06:00");
            Instant from = six.atZone(CHICAGO).toInstant();
            PlanFeed.Entry entry =
                    new PlanFeed.Entry("a@earleaf", from, from.plusSeconds(3600), Said.text("a"), "b", Said.text("c"));
            VEvent event = read(CalendarFeed.write("Farm", List.of(entry), MADE, 1, Said::toString))
                    .<VEvent>getComponents(Component.VEVENT)
                    .get(0);
            Instant read = instant(event.getDateTimeStart().getDate());
            assertThat(read.atZone(CHICAGO).toLocalDateTime()).isEqualTo(six);
        }
    }

    @Test
    void that_reader_does_refuse_what_is_wrong() {
        String good = CalendarFeed.write("Farm", drawn(1), MADE, 1, Said::toString);
        assertThatThrownBy(() -> read(good.replace("END:VEVENT", "END:VTODO"))).isInstanceOf(Exception.class);
        assertThatThrownBy(() -> read(good.replace("DTSTART:2026", "DTSTART:20xx")))
                .isInstanceOf(Exception.class);
    }
}
