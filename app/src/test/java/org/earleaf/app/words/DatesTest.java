// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import org.earleaf.outlook.DateSpread;
import org.junit.jupiter.api.Test;

/** Dates as growers of the corn belt write them: the month before the day, a comma behind the weekday. */
class DatesTest {
    private static final LocalDate JUNE_30 = LocalDate.of(2026, 6, 30);
    private static final LocalDateTime EVENING = JUNE_30.atTime(20, 0);

    @Test
    void the_month_stands_before_the_day_and_a_comma_behind_the_weekday() {
        assertThat(Dates.day(JUNE_30)).isEqualTo("June 30");
        assertThat(Dates.weekday(JUNE_30)).isEqualTo("Tuesday, June 30");
        assertThat(Dates.brief(JUNE_30)).isEqualTo("Tue, June 30");
        assertThat(Dates.tight(JUNE_30)).isEqualTo("Jun 30");
        assertThat(Dates.year(JUNE_30)).isEqualTo("June 30, 2026");
        assertThat(Dates.full(JUNE_30)).isEqualTo("Tuesday, June 30, 2026");
        assertThat(Dates.month(JUNE_30)).isEqualTo("June");
        assertThat(Dates.weekdayTight(JUNE_30)).isEqualTo("Tue");
        assertThat(Dates.clock(LocalTime.NOON)).isEqualTo("12:00 pm");
        assertThat(Dates.stamp(Instant.parse("2026-06-30T13:05:00Z"), ZoneId.of("America/Chicago")))
                .isEqualTo("Tue, June 30, 2026, 8:05 am");
    }

    @Test
    void days_near_today_are_called_by_name() {
        assertThat(Dates.soon(JUNE_30, JUNE_30)).isEqualTo("today");
        assertThat(Dates.soon(JUNE_30.plusDays(1), JUNE_30)).isEqualTo("tomorrow");
        assertThat(Dates.soon(JUNE_30.plusDays(5), JUNE_30)).isEqualTo("on Sunday");
        assertThat(Dates.soon(JUNE_30.plusDays(7), JUNE_30)).isEqualTo("on Tue, July 7");
    }

    @Test
    void a_spread_of_days_names_its_month_once_where_it_can() {
        Optional<LocalDate> second = Optional.of(LocalDate.of(2026, 7, 2));
        Optional<LocalDate> ninth = Optional.of(LocalDate.of(2026, 7, 9));
        assertThat(Dates.range(new DateSpread(second, second, ninth, 1))).isEqualTo("July 2 to 9");
        assertThat(Dates.range(new DateSpread(Optional.of(JUNE_30), second, ninth, 1)))
                .isEqualTo("June 30 to July 9");
        assertThat(Dates.range(new DateSpread(second, ninth, Optional.empty(), .6)))
                .isEqualTo("July 2 to never");
        assertThat(Dates.range(new DateSpread(Optional.empty(), Optional.empty(), Optional.empty(), 0)))
                .isEqualTo("never");
    }

    @Test
    void hours_name_a_day_once_and_midnight_by_its_word() {
        assertThat(Dates.span(EVENING, EVENING.plusHours(2))).isEqualTo("Tue 8:00 pm to 10:00 pm");
        assertThat(Dates.span(EVENING, EVENING.plusHours(4))).isEqualTo("Tue 8:00 pm to midnight");
        assertThat(Dates.span(EVENING, EVENING.plusHours(13))).isEqualTo("Tue 8:00 pm to Wed 9:00 am");
    }
}
