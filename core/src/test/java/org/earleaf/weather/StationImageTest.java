// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * Cross-check on real data: Global Historical Climatology Network Daily, station USC00118740 (Urbana, Illinois),
 * 1985-2014, US government work in the public domain. Skips where the record does not lie beside the project.
 */
class StationImageTest {
    private static final Site URBANA = new Site(40.08, -88.24, 220);
    private static final Path FILE =
            Path.of(System.getProperty("earleaf.root", "..")).resolve("../shared/data/weather/USC00118740.txt");
    private static final int YEARS = 1000;
    private static WeatherSeries record;
    private static WeatherSeries image;

    @BeforeAll
    static void learn() throws IOException {
        assumeTrue(Files.exists(FILE), () -> "skipped: no station record at " + FILE);
        record = read();
        image = WeatherGenerator.ofRecord(record, URBANA)
                .generate(LocalDate.of(1001, 1, 1), LocalDate.of(1000 + YEARS, 12, 31), new SplittableRandom(1981));
    }

    /** Tenths of a degree and of a mm; a missing temperature repeats the day before, missing rain is none. */
    private static WeatherSeries read() throws IOException {
        List<WeatherDay> days = new ArrayList<>();
        double tmax = 0;
        double tmin = 0;
        for (String line : Files.readAllLines(FILE)) {
            String[] cell = line.split("\t");
            int tx = Integer.parseInt(cell[1].trim());
            int tn = Integer.parseInt(cell[2].trim());
            int mm = Integer.parseInt(cell[3].trim());
            tmax = tx == -9999 ? tmax : tx / 10.0;
            tmin = tn == -9999 ? tmin : tn / 10.0;
            LocalDate date = LocalDate.parse(cell[0], DateTimeFormatter.BASIC_ISO_DATE);
            days.add(WeatherDay.of(date, Math.max(tmax, tmin), Math.min(tmax, tmin), mm == -9999 ? 0 : mm / 10.0));
        }
        return new WeatherSeries(days);
    }

    private static double mean(WeatherSeries series, int month, ToDoubleFunction<WeatherDay> value) {
        return series.days().stream()
                .filter(d -> d.date().getMonthValue() == month)
                .mapToDouble(value)
                .average()
                .orElseThrow();
    }

    private static double sd(WeatherSeries series, int month, ToDoubleFunction<WeatherDay> value) {
        double mean = mean(series, month, value);
        return Math.sqrt(mean(series, month, d -> Math.pow(value.applyAsDouble(d) - mean, 2)));
    }

    @Test
    void monthly_temperatures_are_within_six_tenths_of_a_degree() {
        for (int month = 1; month <= 12; month++) {
            assertThat(mean(image, month, WeatherDay::tmax_C))
                    .as("tmax, month " + month)
                    .isCloseTo(mean(record, month, WeatherDay::tmax_C), within(0.6));
            assertThat(mean(image, month, WeatherDay::tmin_C))
                    .as("tmin, month " + month)
                    .isCloseTo(mean(record, month, WeatherDay::tmin_C), within(0.6));
        }
    }

    @Test
    void daily_spread_of_temperature_is_within_fifteen_percent() {
        for (int month = 1; month <= 12; month++) {
            assertThat(sd(image, month, WeatherDay::tmax_C) / sd(record, month, WeatherDay::tmax_C))
                    .as("tmax, month " + month)
                    .isCloseTo(1, within(0.15));
            assertThat(sd(image, month, WeatherDay::tmin_C) / sd(record, month, WeatherDay::tmin_C))
                    .as("tmin, month " + month)
                    .isCloseTo(1, within(0.15));
        }
    }

    @Test
    void monthly_rain_is_within_ten_percent_and_wet_days_within_five() {
        for (int month = 1; month <= 12; month++) {
            assertThat(mean(image, month, WeatherDay::rain_mm) / mean(record, month, WeatherDay::rain_mm))
                    .as("rain, month " + month)
                    .isCloseTo(1, within(0.10));
            ToDoubleFunction<WeatherDay> wet = d -> d.rain_mm() >= 0.25 ? 1 : 0;
            assertThat(mean(image, month, wet) / mean(record, month, wet))
                    .as("wet days, month " + month)
                    .isCloseTo(1, within(0.05));
        }
    }
}
