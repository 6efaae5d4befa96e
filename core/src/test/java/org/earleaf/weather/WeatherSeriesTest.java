// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;

/** Properties of a run of days; no outside source needed. */
class WeatherSeriesTest {
    private static final LocalDate FIRST = LocalDate.of(2024, 2, 25);
    private static final WeatherSeries TEN = new WeatherSeries(days());

    private static List<WeatherDay> days() {
        return FIRST.datesUntil(FIRST.plusDays(10))
                .map(d -> WeatherDay.of(d, 10, 0, d.getDayOfMonth()))
                .toList();
    }

    @Test
    void a_missing_day_is_named() {
        List<WeatherDay> gap = new ArrayList<>(days());
        gap.remove(4);
        assertThatThrownBy(() -> new WeatherSeries(gap))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("weather.not-contiguous at where.weather-of{day=2024-02-29}");
    }

    @Test
    void a_day_is_found_and_one_outside_is_refused() {
        assertThat(TEN.at(LocalDate.of(2024, 2, 29)).rain_mm()).isEqualTo(29);
        assertThatThrownBy(() -> TEN.at(FIRST.minusDays(1)))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("found.weather-from{first=2024-02-25, last=2024-03-05}");
        assertThatThrownBy(() -> new WeatherSeries(List.of()).at(FIRST))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("found.no-weather");
    }

    @Test
    void a_part_has_both_its_ends() {
        WeatherSeries part = TEN.between(FIRST.plusDays(2), FIRST.plusDays(4));
        assertThat(part.days()).hasSize(3);
        assertThat(part.first()).isEqualTo(FIRST.plusDays(2));
        assertThat(part.last()).isEqualTo(FIRST.plusDays(4));
        assertThat(TEN.covers(FIRST, FIRST.plusDays(9))).isTrue();
        assertThat(TEN.covers(FIRST, FIRST.plusDays(10))).isFalse();
    }
}
