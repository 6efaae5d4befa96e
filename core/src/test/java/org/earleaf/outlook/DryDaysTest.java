// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.Farm;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class DryDaysTest {
    private static final int DAYS = 7;
    private static final Farm FARM = new TestFarm().farm();
    private static final List<DryDays.Course> COURSES = DryDays.of(FARM, TestFarm.ON, DAYS);

    @Test
    void shares_add_up_and_the_likeliest_course_stands_first() {
        assertThat(COURSES.stream().mapToDouble(DryDays.Course::share).sum()).isCloseTo(1, within(1e-9));
        assertThat(COURSES.get(0).share())
                .isEqualTo(COURSES.stream()
                        .mapToDouble(DryDays.Course::share)
                        .max()
                        .orElseThrow());
        assertThat(COURSES).extracting(DryDays.Course::canBeWorked).doesNotHaveDuplicates();
    }

    @Test
    void the_day_asked_about_is_known() {
        WeatherSeries w = FARM.weather().observed();
        boolean dry = w.at(TestFarm.ON).rain_mm() <= 2.54
                && w.at(TestFarm.ON.minusDays(1)).rain_mm() <= 12.7
                && w.at(TestFarm.ON.minusDays(1)).rain_mm()
                                + w.at(TestFarm.ON.minusDays(2)).rain_mm()
                        <= 25.4;
        assertThat(DryDays.chance(COURSES, 0)).isCloseTo(dry ? 1 : 0, within(1e-9));
    }

    /** Counted in the record, by the rule of rain: 23 years x 30 days about the season. */
    @Test
    void a_day_ahead_can_be_worked_as_often_as_the_record_has_it() {
        WeatherSeries w = FARM.weather().observed();
        int dry = 0;
        int all = 0;
        for (int year = 2001; year < 2024; year++) {
            for (int d = 0; d < 30; d++) {
                LocalDate day = LocalDate.of(year, 6, 20).plusDays(d);
                double yesterday = w.at(day.minusDays(1)).rain_mm();
                boolean is = w.at(day).rain_mm() <= 2.54
                        && yesterday <= 12.7
                        && yesterday + w.at(day.minusDays(2)).rain_mm() <= 25.4;
                dry += is ? 1 : 0;
                all++;
            }
        }
        double mean = 0;
        for (int d = 3; d < DAYS; d++) {
            mean += DryDays.chance(COURSES, d) / (DAYS - 3);
        }
        assertThat(mean).isCloseTo((double) dry / all, within(.1));
    }
}
