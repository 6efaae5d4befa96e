// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class SunTimesTest {
    private static final Site CHICAGO = new Site(41.88, -87.63, 180);
    private static final ZoneId CENTRAL = ZoneId.of("America/Chicago");

    /** Almanac times of Chicago, from memory; they count refraction, which the formula leaves out (about 5 min). */
    @ParameterizedTest
    @CsvSource({
        "2023-06-21, 05:16, 20:30",
        "2023-12-21, 07:15, 16:23",
        "2023-03-20, 06:54, 19:03",
        "2023-09-22, 06:39, 18:49"
    })
    void sunrise_and_sunset_of_the_almanac(LocalDate date, String rise, String set) {
        SunTimes sun = SunTimes.of(date, CHICAGO, CENTRAL);
        assertThat(minutes(LocalDateTime.parse(date + "T" + rise), sun.rise())).isBetween(-1L, 9L);
        assertThat(minutes(LocalDateTime.parse(date + "T" + set), sun.set())).isBetween(-9L, 1L);
    }

    @Test
    void summer_time_moves_the_clock_and_not_the_sun() {
        Duration before = Duration.between(
                LocalDate.parse("2023-03-11").atStartOfDay(),
                SunTimes.of(LocalDate.parse("2023-03-11"), CHICAGO, CENTRAL).rise());
        Duration after = Duration.between(
                LocalDate.parse("2023-03-12").atStartOfDay(),
                SunTimes.of(LocalDate.parse("2023-03-12"), CHICAGO, CENTRAL).rise());
        assertThat(after.minus(before).toMinutes()).isBetween(56L, 60L);
    }

    private static long minutes(LocalDateTime from, LocalDateTime to) {
        return Duration.between(from, to).toMinutes();
    }
}
