// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;

/** Cross-check: a thousand generated years against the statistics that went in. */
class WeatherGeneratorTest {
    private static final Site SITE = new Site(41, -93, 275);
    /** Invented, near the middle of the Corn Belt: highest, lowest [°C], rain [mm], wet days. */
    private static final double[][] MONTHS = {
        {-1, -10, 30, 8}, {2, -7, 34, 8}, {9, -1, 55, 10}, {17, 5, 90, 11}, {23, 11, 110, 12}, {28, 16, 120, 11},
        {30, 19, 105, 9}, {29, 17, 105, 9}, {25, 12, 85, 8}, {18, 6, 70, 8}, {9, -1, 55, 8}, {1, -7, 38, 8}
    };

    static final WeatherGenerator OF_CLIMATE = WeatherGenerator.ofClimate(climate(), SITE);
    private static final int YEARS = 1000;
    private static final WeatherSeries THOUSAND =
            OF_CLIMATE.generate(LocalDate.of(1000, 1, 1), LocalDate.of(999 + YEARS, 12, 31), new SplittableRandom(42));

    private static List<MonthlyClimate> climate() {
        List<MonthlyClimate> climate = new ArrayList<>();
        for (int k = 0; k < 12; k++) {
            double[] m = MONTHS[k];
            climate.add(new MonthlyClimate(Month.of(k + 1), m[0], m[1], m[2], m[3]));
        }
        return climate;
    }

    private static double mean(WeatherSeries days, int month, ToDoubleFunction<WeatherDay> value) {
        return days.days().stream()
                .filter(d -> d.date().getMonthValue() == month)
                .mapToDouble(value)
                .average()
                .orElseThrow();
    }

    private static boolean isWet(WeatherDay d) {
        return d.rain_mm() >= 0.25;
    }

    @Test
    void monthly_rain_and_wet_days_of_a_thousand_years_are_those_that_went_in() {
        for (MonthlyClimate m : climate()) {
            int month = m.month().getValue();
            double rain_mm = mean(THOUSAND, month, WeatherDay::rain_mm) * m.days();
            double wetDays = mean(THOUSAND, month, d -> isWet(d) ? 1 : 0) * m.days();
            assertThat(rain_mm / m.rain_mm()).as("rain of " + m.month()).isCloseTo(1, within(0.05));
            assertThat(wetDays / m.wetDays()).as("wet days of " + m.month()).isCloseTo(1, within(0.03));
        }
    }

    @Test
    void monthly_temperatures_of_a_thousand_years_are_those_that_went_in() {
        for (MonthlyClimate m : climate()) {
            int month = m.month().getValue();
            assertThat(mean(THOUSAND, month, WeatherDay::tmax_C))
                    .as("tmax of " + m.month())
                    .isCloseTo(m.tmax_C(), within(0.6));
            assertThat(mean(THOUSAND, month, WeatherDay::tmin_C))
                    .as("tmin of " + m.month())
                    .isCloseTo(m.tmin_C(), within(0.6));
        }
    }

    @Test
    void wet_follows_wet_as_often_as_the_chain_says() {
        RainMonth june = OF_CLIMATE.rainOf(Month.JUNE);
        int[] wetAfter = new int[2];
        int[] all = new int[2];
        List<WeatherDay> days = THOUSAND.days();
        for (int k = 1; k < days.size(); k++) {
            if (days.get(k).date().getMonth() == Month.JUNE) {
                int before = isWet(days.get(k - 1)) ? 1 : 0;
                all[before]++;
                wetAfter[before] += isWet(days.get(k)) ? 1 : 0;
            }
        }
        assertThat((double) wetAfter[0] / all[0]).isCloseTo(june.wetAfterDry(), within(0.01));
        assertThat((double) wetAfter[1] / all[1]).isCloseTo(june.wetAfterWet(), within(0.01));
    }

    @Test
    void the_lowest_temperature_stays_below_the_highest() {
        assertThat(THOUSAND.days()).allMatch(d -> d.tmin_C() <= d.tmax_C() - 1 + 1e-9);
    }

    @Test
    void the_same_seed_gives_the_same_days_and_another_seed_others() {
        LocalDate from = LocalDate.of(2020, 7, 1);
        LocalDate to = LocalDate.of(2020, 10, 31);
        WeatherSeries a = OF_CLIMATE.generate(from, to, new SplittableRandom(9));
        assertThat(OF_CLIMATE.generate(from, to, new SplittableRandom(9)).days())
                .isEqualTo(a.days());
        assertThat(OF_CLIMATE.generate(from, to, new SplittableRandom(10)).days())
                .isNotEqualTo(a.days());
    }

    @Test
    void a_fit_on_its_own_weather_finds_chain_amounts_and_radiation_again() {
        WeatherSeries known = new WeatherSeries(THOUSAND.days().subList(0, 100 * 365).stream()
                .map(WeatherGeneratorTest::withRadiation)
                .toList());
        WeatherGenerator fitted = WeatherGenerator.ofRecord(known, SITE);
        RainMonth put = OF_CLIMATE.rainOf(Month.MAY);
        RainMonth found = fitted.rainOf(Month.MAY);
        assertThat(found.wetAfterDry()).isCloseTo(put.wetAfterDry(), within(0.03));
        assertThat(found.wetAfterWet()).isCloseTo(put.wetAfterWet(), within(0.04));
        assertThat(found.shape()).isCloseTo(put.shape(), within(0.12));
        assertThat(found.shape() * found.scale_mm() / (put.shape() * put.scale_mm()))
                .isCloseTo(1, within(0.08));
        WeatherSeries image =
                fitted.generate(LocalDate.of(1000, 1, 1), LocalDate.of(1099, 12, 31), new SplittableRandom(1));
        assertThat(mean(image, 7, WeatherDay::solar_MJm2))
                .isCloseTo(mean(known, 7, WeatherDay::solar_MJm2), within(0.4));
        assertThat(image.days()).allSatisfy(d -> {
            double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(
                    41, d.date().getDayOfYear());
            assertThat(d.solar_MJm2()).isBetween(0.05 * ra - 1e-9, 0.78 * ra + 1e-9);
        });
    }

    /** Radiation from the range of temperature, less a third on wet days. */
    private static WeatherDay withRadiation(WeatherDay d) {
        double ra =
                ReferenceEvapotranspiration.extraterrestrial_MJm2(41, d.date().getDayOfYear());
        double rs = Math.min(0.75 * ra, ReferenceEvapotranspiration.solarOfRange_MJm2(ra, d.tmax_C(), d.tmin_C()));
        double nan = Double.NaN;
        return new WeatherDay(
                d.date(), d.tmax_C(), d.tmin_C(), d.rain_mm(), isWet(d) ? 0.67 * rs : rs, nan, nan, nan, nan);
    }

    @Test
    void less_than_a_year_of_record_is_refused_with_the_month_that_lacks() {
        WeatherSeries half = THOUSAND.between(LocalDate.of(1500, 1, 1), LocalDate.of(1500, 6, 30));
        assertThatThrownBy(() -> WeatherGenerator.ofRecord(half, SITE))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("found.days-of-month{month=1970-07-01, n=0}");
    }
}
