// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Published: FAO-56 (Allen et al. 1998) examples 18 and 20, reached through a day of weather. */
class ForcingTest {
    private static Forcing of(WeatherDay day, double latitude, double elevation_m) {
        return Forcing.of(new WeatherSeries(List.of(day)), new Site(latitude, 0, elevation_m));
    }

    @Test
    void a_day_with_everything_known_gives_example_18() {
        LocalDate july6 = LocalDate.of(2015, 7, 6);
        WeatherDay day = new WeatherDay(july6, 21.5, 12.3, 0, 22.07, 2.078, 84, 63, Double.NaN);
        assertThat(of(day, 50.80, 100).et0_mm()[0]).isCloseTo(3.88, within(0.02));
    }

    @Test
    void a_day_with_temperatures_alone_gives_example_20() {
        Forcing f = of(WeatherDay.of(LocalDate.of(2015, 7, 15), 26.6, 14.8, 0), 45.72, 200);
        assertThat(f.solar_MJm2()[0]).isCloseTo(22.29, within(0.02));
        assertThat(f.et0_mm()[0]).isCloseTo(4.56, within(0.02));
    }

    @Test
    void estimated_radiation_never_exceeds_the_clear_sky() {
        Forcing f = of(WeatherDay.of(LocalDate.of(2015, 4, 15), 35, 2, 0), 41, 300);
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(41, 105);
        assertThat(f.solar_MJm2()[0]).isEqualTo(ReferenceEvapotranspiration.clearSky_MJm2(ra, 300));
    }

    @Test
    void dew_follows_from_the_dew_point_where_it_is_known() {
        double nan = Double.NaN;
        LocalDate d = LocalDate.of(2015, 7, 15);
        assertThat(of(new WeatherDay(d, 30, 18, 0, nan, nan, nan, nan, 20), 41, 300)
                        .dew_mm()[0])
                .isCloseTo(0.16, within(1e-12));
        assertThat(of(new WeatherDay(d, 30, 18, 0, nan, nan, nan, nan, 10), 41, 300)
                        .dew_mm()[0])
                .isZero();
        assertThat(of(WeatherDay.of(d, 30, 18, 0), 41, 300).dew_mm()[0]).isEqualTo(0.15);
    }

    @Test
    void days_are_found_by_date() {
        LocalDate first = LocalDate.of(2015, 3, 1);
        Forcing f = Forcing.of(
                new WeatherSeries(first.datesUntil(first.plusDays(40))
                        .map(d -> WeatherDay.of(d, 10, 0, d.getDayOfMonth()))
                        .toList()),
                new Site(41, -93, 300));
        assertThat(f.days()).isEqualTo(40);
        assertThat(f.rain_mm()[f.index(LocalDate.of(2015, 4, 7))]).isEqualTo(7);
        assertThat(f.date(f.index(LocalDate.of(2015, 4, 7)))).isEqualTo("2015-04-07");
    }
}
