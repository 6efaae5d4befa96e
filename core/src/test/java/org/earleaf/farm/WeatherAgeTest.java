// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.stream.IntStream;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class WeatherAgeTest {
    private static final LocalDate LAST = LocalDate.of(2026, 6, 20);

    private static WeatherBook book(LocalDate forecastFrom) {
        return new WeatherBook(
                new WeatherSeries(days(LAST.minusDays(9), 10)),
                days(forecastFrom, 7),
                List.of(),
                List.of(),
                List.of(),
                List.of());
    }

    private static List<WeatherDay> days(LocalDate from, int n) {
        return IntStream.range(0, n)
                .mapToObj(k -> WeatherDay.of(from.plusDays(k), 28, 15, 0))
                .toList();
    }

    private static WeatherAge age(LocalDate forecastFrom, int later) {
        return WeatherAge.of(book(forecastFrom), LAST.plusDays(later)).orElseThrow();
    }

    @Test
    void a_record_up_to_yesterday_raises_no_alarm_and_its_last_day_is_told() {
        WeatherAge fresh = age(LAST.plusDays(1), 1);
        assertThat(fresh.alarm()).isEmpty();
        assertThat(fresh.said().code()).isEqualTo("brief.weather-to");
        assertThat(fresh.said().values()).containsEntry("last", LAST);
    }

    @Test
    void days_after_the_day_asked_for_are_not_known_on_it() {
        assertThat(age(LAST.plusDays(1), -3).observed()).isEqualTo(LAST.minusDays(3));
        assertThat(age(LAST.plusDays(1), -3).alarm()).isEmpty();
    }

    @Test
    void a_gap_is_told_with_both_dates_and_with_what_stands_in_for_it() {
        WeatherAge byForecast = age(LAST.plusDays(1), 4);
        assertThat(byForecast.alarm().orElseThrow().values())
                .containsEntry("last", LAST)
                .containsEntry("on", LAST.plusDays(4))
                .containsEntry("n", 3);
        assertThat(byForecast.said().toString()).contains("weather.filled-by-forecast");
        // The forecast begins too late to fill any day of the gap, or is too short to fill all of it.
        assertThat(age(LAST.plusDays(4), 4).said().toString()).contains("weather.filled-by-years");
        WeatherAge both = age(LAST.plusDays(1), 10);
        assertThat(both.filled()).isEqualTo(9);
        assertThat(both.forecast()).isEqualTo(7);
        assertThat(both.said().toString()).contains("weather.filled-by-both");
    }

    @Test
    void a_forecast_of_later_days_alone_fills_none() {
        assertThat(age(LAST.plusDays(8), 4).forecast()).isZero();
    }
}
