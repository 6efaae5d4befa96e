// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherFill;
import org.junit.jupiter.api.Test;

/** Real records of the Global Historical Climatology Network Daily, looked for outside the project. */
class StationFileTest {
    private static final Site URBANA = new Site(40.08, -88.24, 220);

    private static Path data() {
        for (Path at = Path.of("").toAbsolutePath(); at != null; at = at.getParent()) {
            for (String shared : List.of("shared", "../shared")) {
                Path file = at.resolve(shared).resolve("data/weather/USC00118740.txt");
                if (Files.exists(file)) {
                    return file.normalize();
                }
            }
        }
        return Path.of("missing");
    }

    private static Path urbana() {
        Path file = data();
        assumeTrue(Files.exists(file), "skipped: no ../shared/data/weather beside the project");
        return file;
    }

    /** Counts of days and of missing and swapped values were taken from the file with another tool (awk). */
    @Test
    void thirty_years_of_a_real_station_are_read_and_filled() {
        List<WeatherDay> days = StationFile.read(urbana());
        assertThat(days).hasSize(10_957);
        assertThat(days.get(0)).isEqualTo(WeatherDay.of(LocalDate.of(1985, 1, 1), 3.3, -5.6, 5.6));
        assertThat(days).filteredOn(d -> Double.isNaN(d.rain_mm())).hasSize(20);
        assertThat(days).filteredOn(d -> Double.isNaN(d.tmax_C())).hasSize(1);
        assertThat(days).filteredOn(d -> d.tmax_C() < d.tmin_C()).hasSize(1);
        WeatherFill.Filled filled = WeatherFill.fill(days, URBANA, "weather");
        assertThat(filled.series().days()).hasSize(10_957).allMatch(d -> d.tmax_C() - d.tmin_C() > 0.5 - 1e-9);
        assertThat(filled.gaps()).isEmpty();
        assertThat(filled.flags()).extracting(f -> f.what().toString()).anyMatch(w -> w.startsWith("fill.swapped"));
    }

    /** Urbana's normal is about 41 in of precipitation a year (from memory). */
    @Test
    void its_rain_is_that_of_central_illinois() {
        double sum = StationFile.read(urbana()).stream()
                .mapToDouble(WeatherDay::rain_mm)
                .filter(r -> !Double.isNaN(r))
                .sum();
        assertThat(sum / 30 / 25.4).isCloseTo(41, within(2.5));
    }
}
