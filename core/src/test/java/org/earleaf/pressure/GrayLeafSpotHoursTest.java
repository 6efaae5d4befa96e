// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.stream.IntStream;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;

class GrayLeafSpotHoursTest {
    private static final LocalDate V4 = LocalDate.parse("2023-06-01");

    @Test
    void hours_are_counted_between_the_stages() {
        GrayLeafSpotHours sums = GrayLeafSpotHours.of(days(20, 26, 96), V4, V4.plusDays(10), V4.plusDays(15));
        assertThat(sums.warmHours()).isEqualTo(240);
        assertThat(sums.humidNightHours()).isEqualTo(100);
        assertThat(sums.infectionHours()).isEqualTo(360);
        assertThat(sums.night_C()).isEqualTo(26);
    }

    /** Ends of the ranges that Paul & Munkvold 2005 saw score 0 and 1. */
    @Test
    void ends_of_the_published_ranges_score_nought_and_one() {
        GrayLeafSpotHours least = new GrayLeafSpotHours(0, 85, 122, 18.5);
        GrayLeafSpotHours most = new GrayLeafSpotHours(300, 231, 330, 24.8);
        assertThat(least.score(0, 7)).isZero();
        assertThat(most.score(1, 2)).isEqualTo(1);
        assertThat(new GrayLeafSpotHours(0, 158, 226, 21.65).score(0.5, 4.5)).isCloseTo(0.5, within(1e-9));
    }

    @Test
    void what_is_not_known_is_left_out_of_the_mean() {
        GrayLeafSpotHours early = GrayLeafSpotHours.of(days(3, 26, 96), V4, V4.plusDays(10), V4.plusDays(30));
        assertThat(early.night_C()).isNaN();
        assertThat(early.score(1, Double.NaN)).isCloseTo(1.0 / 3, within(1e-9));
    }

    private static List<WeatherHour> days(int count, double t, double rh) {
        double nan = Double.NaN;
        return IntStream.range(0, 24 * count)
                .mapToObj(h -> new WeatherHour(
                        LocalDateTime.of(2023, 6, 1, 0, 0).plusHours(h), t, rh, 2, nan, nan, 0, nan, nan))
                .toList();
    }
}
