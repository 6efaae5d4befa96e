// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class WeatherFillTest {
    private static final double NO = Double.NaN;
    private static final Site SITE = new Site(40, -88, 220);
    private static final LocalDate MAY = LocalDate.of(1998, 5, 1);

    private static WeatherDay day(int after, double tmax, double tmin, double rain) {
        return WeatherDay.of(MAY.plusDays(after), tmax, tmin, rain);
    }

    private static WeatherFill.Filled fill(WeatherDay... days) {
        return WeatherFill.fill(List.of(days), SITE, "weather.csv");
    }

    private static List<Said> said(WeatherFill.Filled filled) {
        return filled.flags().stream().map(Flag::what).toList();
    }

    private static Said on(int after) {
        return Said.of("fill.day", "day", MAY.plusDays(after));
    }

    private static Said days(int first, int second) {
        return Said.of("fill.days", "n", 2, "days", List.of(MAY.plusDays(first), MAY.plusDays(second)));
    }

    @Test
    void a_whole_record_passes_unchanged_and_without_a_remark() {
        WeatherDay full = new WeatherDay(MAY, 20, 10, 3, 18, 2.5, 90, 50, 8);
        var filled = fill(full, day(1, 22, 11, 0));
        assertThat(filled.series().days()).containsExactly(full, day(1, 22, 11, 0));
        assertThat(filled.flags()).isEmpty();
        assertThat(filled.gaps()).isEmpty();
    }

    @Test
    void missing_temperatures_lie_on_a_line_between_the_neighbours() {
        var filled = fill(day(0, 20, 10, 0), day(1, NO, 11, 0), day(2, NO, 12, 0), day(3, 26, 13, 0));
        assertThat(filled.series().days().get(1).tmax_C()).isCloseTo(22, within(1e-12));
        assertThat(filled.series().days().get(2).tmax_C()).isCloseTo(24, within(1e-12));
        assertThat(filled.flags())
                .containsExactly(new Flag(
                        Said.of("flag.year", "where", "weather.csv", "year", "1998"),
                        Said.of("fill.no-highest", "on", days(1, 2))));
    }

    @Test
    void at_the_ends_the_nearest_temperature_is_taken() {
        var days = fill(day(0, NO, NO, 0), day(1, 20, 10, 0), day(2, NO, NO, 0))
                .series()
                .days();
        assertThat(days).extracting(WeatherDay::tmax_C).containsExactly(20.0, 20.0, 20.0);
        assertThat(days).extracting(WeatherDay::tmin_C).containsExactly(10.0, 10.0, 10.0);
    }

    @Test
    void missing_rain_is_none_and_each_year_says_so_once() {
        List<WeatherDay> raw = new ArrayList<>();
        for (int k = 0; k < 12; k++) {
            raw.add(day(k, 20, 10, NO));
        }
        raw.add(day(12, 20, 10, 5));
        var filled = WeatherFill.fill(raw, SITE, "weather.csv");
        assertThat(filled.series().days().get(3).rain_mm()).isZero();
        assertThat(said(filled))
                .containsExactly(Said.of("fill.no-rain", "on", Said.of("fill.days-first", "n", 12, "first", MAY)));
    }

    @Test
    void missing_days_are_made_and_rows_may_come_in_any_order() {
        var filled = fill(day(3, 26, 13, 2), day(0, 20, 10, 1));
        assertThat(filled.series().days()).hasSize(4);
        WeatherDay made = filled.series().at(MAY.plusDays(1));
        assertThat(made.tmax_C()).isCloseTo(22, within(1e-12));
        assertThat(made.tmin_C()).isCloseTo(11, within(1e-12));
        assertThat(made.rain_mm()).isZero();
        assertThat(made.solar_MJm2()).isNaN();
        assertThat(said(filled)).containsExactly(Said.of("fill.no-row", "on", days(1, 2)));
    }

    @Test
    void swapped_temperatures_are_swapped_back() {
        var filled = fill(day(0, 10, 20, 0));
        assertThat(filled.series().days()).containsExactly(day(0, 20, 10, 0));
        assertThat(said(filled)).containsExactly(Said.of("fill.swapped", "on", Said.of("fill.day", "day", MAY)));
    }

    @Test
    void equal_temperatures_are_set_half_a_degree_apart() {
        var filled = fill(day(0, 10, 10, 0));
        assertThat(filled.series().days()).containsExactly(day(0, 10.25, 9.75, 0));
        assertThat(said(filled)).extracting(Said::code).containsExactly("fill.apart");
    }

    @Test
    void a_filled_temperature_gives_way_to_an_observed_one() {
        var days = fill(day(0, 10, 5, 0), day(1, NO, 12, 0), day(2, 10, 5, 0))
                .series()
                .days();
        assertThat(days.get(1).tmin_C()).isEqualTo(12);
        assertThat(days.get(1).tmax_C()).isEqualTo(12.5);
    }

    @Test
    void values_that_no_corn_country_sees_are_taken_as_missing() {
        var filled = fill(day(0, 20, 10, 0), day(1, 56, 10, 401), day(2, 22, -56, 400));
        List<WeatherDay> days = filled.series().days();
        assertThat(days.get(1)).isEqualTo(day(1, 21, 10, 0));
        assertThat(days.get(2)).isEqualTo(day(2, 22, 10, 400));
        assertThat(said(filled))
                .contains(
                        Said.of("fill.highest-beyond", "on", on(1), "most", Measure.TEMPERATURE.of(55)),
                        Said.of("fill.rain-beyond", "on", on(1), "most", Measure.RAIN.of(400)),
                        Said.of("fill.lowest-beyond", "on", on(2), "most", Measure.TEMPERATURE.of(55)));
    }

    /** Radiation above the air at 20 degrees south on 3 September is 32.2 MJ/m2 (FAO-56, example 8). */
    @Test
    void radiation_a_tenth_above_a_clear_sky_is_not_believed() {
        double clear = 0.75 * 32.2;
        LocalDate day = LocalDate.of(2001, 9, 3);
        WeatherDay low = new WeatherDay(day, 25, 15, 0, 1.09 * clear, NO, NO, NO, NO);
        WeatherDay high = new WeatherDay(day.plusDays(1), 25, 15, 0, 1.12 * clear, NO, NO, NO, NO);
        var days = WeatherFill.fill(List.of(low, high), new Site(-20, 0, 0), "w")
                .series()
                .days();
        assertThat(days.get(0).solar_MJm2()).isEqualTo(1.09 * clear);
        assertThat(days.get(1).solar_MJm2()).isNaN();
    }

    @Test
    void thirty_days_are_filled_but_thirty_one_are_a_gap_said_aloud() {
        assertThat(fill(day(0, 20, 10, 0), day(31, 20, 10, 0)).gaps()).isEmpty();
        var filled = fill(day(0, 20, 10, 0), day(32, 20, 10, 0));
        WeatherGap gap = new WeatherGap(MAY.plusDays(1), MAY.plusDays(31));
        assertThat(filled.gaps()).containsExactly(gap);
        assertThat(said(filled)).last().isEqualTo(Said.of("fill.long-gap", "n", 31L));
        assertThat(gap.touches(MAY, MAY)).isFalse();
        assertThat(gap.touches(MAY, MAY.plusDays(1))).isTrue();
    }

    @Test
    void rain_alone_missing_for_long_is_a_gap_too() {
        List<WeatherDay> raw = new ArrayList<>();
        for (int k = 0; k < 40; k++) {
            raw.add(day(k, 20, 10, k == 0 ? 0 : NO));
        }
        assertThat(WeatherFill.fill(raw, SITE, "w").gaps())
                .containsExactly(new WeatherGap(MAY.plusDays(1), MAY.plusDays(39)));
    }

    @Test
    void no_temperature_at_all_or_two_rows_for_a_day_cannot_be_filled() {
        assertThatThrownBy(() -> fill(day(0, NO, 10, 0)))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("weather.no-temperature at weather.csv: found found.no-highest");
        assertThatThrownBy(() -> fill(day(0, 20, 10, 0), day(0, 21, 10, 0)))
                .hasMessageContaining("weather.two-rows at weather.csv: found found.two-rows{day=1998-05-01}");
    }

    @Test
    void an_empty_record_stays_empty() {
        assertThat(fill().series().isEmpty()).isTrue();
    }
}
