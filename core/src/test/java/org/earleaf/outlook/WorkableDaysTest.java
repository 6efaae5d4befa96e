// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** Against cases worked by hand. */
class WorkableDaysTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 6, 28);

    private static Forcing rain(double... mm) {
        List<WeatherDay> days = new ArrayList<>();
        for (double each : mm) {
            days.add(WeatherDay.of(FIRST.plusDays(days.size()), 28, 15, each));
        }
        return Forcing.of(new WeatherSeries(days), new Site(41.8, -93.4, 300));
    }

    @Test
    void rain_of_the_day_and_of_the_two_days_before_closes_a_field() {
        double[] showers = {2.5, 0, 2.6, 0, 12.8, 0, 0};
        boolean[] open = {true, true, false, true, false, false, true};
        double[] soaking = {12.6, 12.8, 0, 0, 0};
        for (int k = 0; k < showers.length; k++) {
            assertThat(WorkableDays.isDry(showers, k)).as("day %d", k).isEqualTo(open[k]);
        }
        assertThat(WorkableDays.isDry(soaking, 2)).as("12.8 mm yesterday").isFalse();
        assertThat(WorkableDays.isDry(soaking, 3)).as("nothing yesterday").isTrue();
        assertThat(WorkableDays.isDry(new double[] {20, 6, 0}, 2))
                .as("26 mm in two days")
                .isFalse();
    }

    @Test
    void what_has_passed_is_sure_and_what_comes_is_never_quite() {
        List<Forcing> weather =
                List.of(rain(0, 5, 0, 0, 0), rain(0, 5, 0, 9, 0), rain(0, 5, 0, 9, 0), rain(0, 5, 0, 0, 0));
        WorkableDays days = WorkableDays.of(weather, FIRST.plusDays(2), FIRST, FIRST.plusDays(4));
        assertThat(days.chance()).containsExactly(1.0, 0.0, .9, .5, .9);
        assertThat(days.on(FIRST.plusDays(3))).isCloseTo(.5, within(1e-12));
        assertThat(days.on(FIRST.plusDays(5))).isNaN();
        assertThat(days.from(FIRST.plusDays(3), 3)).containsExactly(.5, .9, 0);
    }
}
