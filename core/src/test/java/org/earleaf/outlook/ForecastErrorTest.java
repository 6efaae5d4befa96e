// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.farm.WeatherBook;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** Mean and spread of the forecast's error as stated. */
class ForecastErrorTest {
    private static final LocalDate ON = LocalDate.of(2025, 6, 20);

    private static List<WeatherDay> days(LocalDate from, int n, double rain) {
        List<WeatherDay> all = new ArrayList<>();
        for (int k = 0; k < n; k++) {
            all.add(WeatherDay.of(from.plusDays(k), 28, 16, rain));
        }
        return all;
    }

    @Test
    void rain_falls_by_its_chance_and_warmth_strays_further_with_time() {
        WeatherBook book = new WeatherBook(
                new WeatherSeries(days(ON.minusDays(9), 10, 0)),
                days(ON.plusDays(1), 7, 10),
                List.of(.3, .3, .3, .3, .3, .3, .3),
                List.of(),
                List.of(),
                List.of());
        WeatherSeries course = new WeatherSeries(days(ON.minusDays(9), 40, 10));
        ForecastError error = new ForecastError(book, ON);
        int wet = 0;
        double amount = 0;
        double[] square = new double[8];
        int n = 4000;
        for (int k = 0; k < n; k++) {
            WeatherSeries moved = error.perturbed(course, new SplittableRandom(k));
            assertThat(moved.at(ON)).isEqualTo(course.at(ON));
            assertThat(moved.at(ON.plusDays(8))).isEqualTo(course.at(ON.plusDays(8)));
            for (int d = 1; d <= 7; d++) {
                WeatherDay day = moved.at(ON.plusDays(d));
                wet += day.rain_mm() > 0 ? 1 : 0;
                amount += day.rain_mm();
                square[d] += (day.tmax_C() - 28) * (day.tmax_C() - 28) / n;
            }
        }
        assertThat((double) wet / (7 * n)).isCloseTo(.3, within(.01));
        assertThat(amount / wet).isCloseTo(10, within(.2));
        assertThat(Math.sqrt(square[1])).isCloseTo(1.3, within(.05));
        assertThat(Math.sqrt(square[7])).isCloseTo(3.1, within(.1));
    }
}
