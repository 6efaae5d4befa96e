// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** The demo farm's weather is the generator's work, to the byte, and its climate the public record's. */
class DemoWeatherTest {
    private static final Path ROOT = Path.of(System.getProperty("earleaf.root", ".."));
    private static final Path FARM = ROOT.resolve("demo-farm");

    private static WeatherSeries days() throws IOException {
        return DemoWeather.days(Files.readAllLines(FARM.resolve("climate.csv")));
    }

    @Test
    void making_the_weather_again_gives_the_committed_files_byte_for_byte() throws IOException {
        WeatherSeries days = days();
        assertThat(Files.readString(FARM.resolve("weather.csv")).equals(DemoWeather.weatherCsv(days)))
                .as("weather.csv")
                .isTrue();
        assertThat(Files.readString(FARM.resolve("hours.csv")).equals(DemoHours.csv(days)))
                .as("hours.csv is what the generator makes")
                .isTrue();
        assertThat(Files.readString(FARM.resolve("forecast.csv")).equals(DemoWeather.forecastCsv(days)))
                .as("forecast.csv")
                .isTrue();
    }

    // Global Historical Climatology Network Daily, USC00131635 (Clinton, Iowa), 1985-2014
    @Test
    void the_climate_is_that_of_the_record_it_names() throws IOException {
        Path station = ROOT.resolve("../shared/data/weather/USC00131635.txt");
        assumeTrue(Files.exists(station), () -> "skipped: no station record at " + station);
        List<String> typed = Files.readAllLines(FARM.resolve("climate.csv")).stream()
                .filter(line -> Character.isDigit(line.charAt(0)))
                .toList();
        assertThat(MonthlyNormals.lines(station)).isEqualTo(typed);
    }

    @Test
    void twenty_earlier_years_lie_before_the_demos_day() throws IOException {
        WeatherSeries days = days();
        assertThat(days.covers(LocalDate.of(2006, 3, 1), DemoWeather.TODAY.plusDays(15)))
                .isTrue();
    }

    @Test
    void the_last_june_is_wet_and_ends_in_ten_dry_days() throws IOException {
        WeatherSeries days = days();
        double usual_mm = 117;
        assertThat(rain_mm(days, LocalDate.of(2026, 6, 1), LocalDate.of(2026, 6, 20)))
                .isGreaterThan(usual_mm);
        assertThat(rain_mm(days, LocalDate.of(2026, 6, 21), DemoWeather.TODAY)).isLessThan(5);
        assertThat(days.days().stream().mapToDouble(WeatherDay::rain_mm).sum()
                        / days.days().size()
                        * 365.25)
                .as("rain of a year")
                .isCloseTo(873, within(60.0));
    }

    private static double rain_mm(WeatherSeries days, LocalDate from, LocalDate to) {
        return days.between(from, to).days().stream()
                .mapToDouble(WeatherDay::rain_mm)
                .sum();
    }
}
