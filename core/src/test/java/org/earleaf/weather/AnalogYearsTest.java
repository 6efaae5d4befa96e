// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.Stream;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** Properties of the splice itself, told by days whose rain is their year and whose highest temperature is their day. */
class AnalogYearsTest {
    private static final Site SITE = new Site(41, -93, 300);
    private static final LocalDate FROM = LocalDate.of(2020, 3, 1);
    private static final LocalDate ON = LocalDate.of(2020, 6, 30);
    private static final LocalDate TO = LocalDate.of(2020, 10, 31);
    private static final WeatherSeries RECORD = record(1981, LocalDate.of(2020, 12, 31));

    /** Rain tells the year, the highest temperature the day of the year, and solar is twice the latter. */
    private static WeatherSeries record(int firstYear, LocalDate last) {
        return new WeatherSeries(LocalDate.of(firstYear, 1, 1)
                .datesUntil(last.plusDays(1))
                .map(AnalogYearsTest::told)
                .toList());
    }

    private static WeatherDay told(LocalDate d) {
        double nan = Double.NaN;
        int day = d.getDayOfYear();
        return new WeatherDay(d, day, -day, d.getYear(), 2 * day, nan, nan, nan, nan);
    }

    private static List<WeatherDay> forecast(LocalDate first, int days) {
        return Stream.iterate(first, d -> d.plusDays(1))
                .limit(days)
                .map(d -> WeatherDay.of(d, 30, 15, 99))
                .toList();
    }

    private static SplittableRandom seed() {
        return new SplittableRandom(7);
    }

    private static AnalogYears years(WeatherSeries record) {
        return new AnalogYears(record, List.of(), SITE);
    }

    @Test
    void the_thirty_latest_earlier_years_come_and_the_more_like_this_one_weigh_more() {
        List<Future> futures = years(RECORD).futures(ON, FROM, TO, seed());
        assertThat(futures).hasSize(30);
        assertThat(futures.get(0).label()).isEqualTo("2019");
        assertThat(futures.get(29).label()).isEqualTo("1990");
        assertThat(futures.stream().mapToDouble(Future::weight).sum()).isCloseTo(1, within(1e-12));
        assertThat(futures.get(0).weight())
                .as("rain grows year by year")
                .isGreaterThan(futures.get(29).weight());
        assertThat(futures).allSatisfy(f -> {
            assertThat(f.weather().first()).isEqualTo(FROM);
            assertThat(f.weather().last()).isEqualTo(TO);
        });
    }

    @Test
    void every_day_to_the_day_asked_for_is_observed_and_none_after_it() {
        for (Future f : years(RECORD).futures(ON, FROM, TO, seed())) {
            for (WeatherDay d : f.weather().days()) {
                double source = d.date().isAfter(ON) ? Double.parseDouble(f.label()) : 2020;
                assertThat(d.rain_mm()).as("%s in %s", d.date(), f.label()).isEqualTo(source);
                assertThat(d.solar_MJm2())
                        .as("variables of a day stay together")
                        .isEqualTo(2 * d.tmax_C());
            }
        }
    }

    @Test
    void weather_after_the_day_asked_for_changes_nothing() {
        WeatherSeries toTheDay = RECORD.between(RECORD.first(), ON);
        assertThat(days(years(toTheDay).futures(ON, FROM, TO, seed())))
                .isEqualTo(days(years(RECORD).futures(ON, FROM, TO, seed())));
    }

    @Test
    void the_forecast_stands_for_its_first_seven_days_in_every_future() {
        AnalogYears years = new AnalogYears(RECORD, forecast(ON.plusDays(1), 10), SITE);
        for (Future f : years.futures(ON, FROM, TO, seed())) {
            assertThat(f.weather().between(ON.plusDays(1), ON.plusDays(7)).days())
                    .allSatisfy(d -> assertThat(d.rain_mm()).isEqualTo(99));
            assertThat(f.weather().at(ON.plusDays(8)).rain_mm()).isEqualTo(Double.parseDouble(f.label()));
        }
    }

    @Test
    void a_forecast_issued_after_the_day_asked_for_is_not_used() {
        AnalogYears years = new AnalogYears(RECORD, forecast(ON.plusDays(2), 7), SITE);
        assertThat(days(years.futures(ON, FROM, TO, seed())))
                .isEqualTo(days(years(RECORD).futures(ON, FROM, TO, seed())));
    }

    @Test
    void a_year_with_a_long_gap_in_the_window_is_left_out() {
        WeatherGap inside = new WeatherGap(LocalDate.of(2010, 6, 1), LocalDate.of(2010, 8, 1));
        WeatherGap outside = new WeatherGap(LocalDate.of(2012, 11, 15), LocalDate.of(2012, 12, 31));
        AnalogYears years = new AnalogYears(RECORD, List.of(), SITE, List.of(inside, outside));
        List<Future> futures = years.futures(ON, FROM, TO, seed());
        assertThat(futures)
                .extracting(Future::label)
                .hasSize(30)
                .contains("2012", "1989")
                .doesNotContain("2010");
    }

    @Test
    void a_year_that_misses_a_part_of_the_window_is_left_out() {
        WeatherSeries record = record(1981, LocalDate.of(2020, 6, 30)).between(LocalDate.of(1999, 8, 1), ON);
        List<String> labels = years(record).futures(ON, FROM, TO, seed()).stream()
                .map(Future::label)
                .toList();
        assertThat(labels).contains("2000", "2019").doesNotContain("1999", "2020");
    }

    @Test
    void a_leap_day_is_taken_from_28_february_of_a_common_year_and_skipped_the_other_way() {
        LocalDate on = LocalDate.of(2020, 2, 20);
        List<Future> leap = years(RECORD).futures(on, on, LocalDate.of(2020, 4, 1), seed());
        assertThat(leap.get(0).weather().at(LocalDate.of(2020, 2, 29)).tmax_C()).isEqualTo(59);
        assertThat(leap.get(3).label()).isEqualTo("2016");
        assertThat(leap.get(3).weather().at(LocalDate.of(2020, 2, 29)).tmax_C()).isEqualTo(60);
        LocalDate common = LocalDate.of(2019, 2, 20);
        Future of2016 = years(RECORD)
                .futures(common, common, LocalDate.of(2019, 4, 1), seed())
                .get(2);
        assertThat(of2016.label()).isEqualTo("2016");
        assertThat(of2016.weather().at(LocalDate.of(2019, 2, 28)).tmax_C()).isEqualTo(59);
        assertThat(of2016.weather().at(LocalDate.of(2019, 3, 1)).tmax_C()).isEqualTo(61);
    }

    @Test
    void hindsight_is_the_observed_year_alone() {
        List<Future> futures = years(RECORD).hindsight(ON, FROM, TO, seed());
        assertThat(futures).hasSize(1);
        assertThat(futures.get(0).weight()).isEqualTo(1);
        assertThat(futures.get(0).weather().days())
                .isEqualTo(RECORD.between(FROM, TO).days());
    }

    @Test
    void a_season_that_is_over_has_a_single_future() {
        List<Future> futures = years(RECORD).futures(LocalDate.of(2020, 12, 1), FROM, TO, seed());
        assertThat(futures).hasSize(1);
        assertThat(futures.get(0).weather().days())
                .isEqualTo(RECORD.between(FROM, TO).days());
    }

    @Test
    void a_run_that_begins_after_the_day_asked_for_is_all_future() {
        List<Future> futures = years(RECORD).futures(LocalDate.of(2020, 2, 1), FROM, TO, seed());
        assertThat(futures.get(0).weather().first()).isEqualTo(FROM);
        assertThat(futures.get(0).weather().at(FROM).rain_mm()).isEqualTo(2019);
    }

    @Test
    void days_between_the_end_of_the_record_and_the_day_asked_for_come_from_earlier_years_too() {
        WeatherSeries record = RECORD.between(RECORD.first(), ON.minusDays(5));
        Future f = years(record).futures(ON, FROM, TO, seed()).get(0);
        assertThat(f.weather().at(ON.minusDays(5)).rain_mm()).isEqualTo(2020);
        assertThat(f.weather().at(ON.minusDays(4)).rain_mm()).isEqualTo(2019);
    }

    @Test
    void with_few_earlier_years_the_generator_makes_up_thirty_the_same_from_the_same_seed() {
        WeatherGenerator place = WeatherGeneratorTest.OF_CLIMATE;
        WeatherSeries record = place.generate(LocalDate.of(2010, 1, 1), ON, new SplittableRandom(3));
        List<Future> futures = years(record).futures(ON, FROM, TO, seed());
        assertThat(futures).hasSize(30);
        assertThat(futures.get(9).label()).isEqualTo("2010");
        assertThat(futures.get(10).label()).isEqualTo("generated 1");
        assertThat(futures.get(29).weight()).isCloseTo(1.0 / 30, within(1e-12));
        assertThat(futures.get(29).weather().between(FROM, ON).days())
                .isEqualTo(record.between(FROM, ON).days());
        assertThat(futures.get(29).weather().last()).isEqualTo(TO);
        assertThat(days(futures)).isEqualTo(days(years(record).futures(ON, FROM, TO, seed())));
        assertThat(days(futures).subList(10, 30)).doesNotHaveDuplicates();
    }

    @Test
    void with_twenty_earlier_years_none_is_invented() {
        WeatherSeries record = RECORD.between(LocalDate.of(2000, 1, 1), ON);
        assertThat(years(record).futures(ON, FROM, TO, seed())).hasSize(20);
    }

    @Test
    void a_record_without_an_earlier_year_says_what_is_missing() {
        AnalogYears years = years(RECORD.between(FROM, ON));
        assertThatThrownBy(() -> years.futures(ON, FROM, TO, seed()))
                .isInstanceOfSatisfying(EarleafException.class, e -> {
                    Problem problem = e.problems().get(0);
                    assertThat(problem.code()).isEqualTo("weather.no-earlier-year");
                    assertThat(problem.seen())
                            .isEqualTo(Said.of(
                                    "found.weather-record",
                                    "first",
                                    LocalDate.of(2020, 3, 1),
                                    "last",
                                    LocalDate.of(2020, 6, 30)));
                });
    }

    private static List<List<WeatherDay>> days(List<Future> futures) {
        List<List<WeatherDay>> days = new ArrayList<>();
        futures.forEach(f -> days.add(f.weather().days()));
        return days;
    }
}
