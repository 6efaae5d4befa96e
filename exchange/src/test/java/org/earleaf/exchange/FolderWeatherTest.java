// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import org.earleaf.farm.Farm;
import org.earleaf.units.EarleafException;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherGap;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class FolderWeatherTest {
    private static final String HEAD = "date,tmax_c,tmin_c,rain_mm\n";

    @TempDir
    private Path dir;

    private Farm read(TinyFolder folder) {
        return FarmFolder.read(folder.write(dir));
    }

    private static TinyFolder withWeather(String rows) {
        return TinyFolder.us().with("weather.csv", HEAD + rows);
    }

    private static List<String> said(Farm farm) {
        return farm.flags().stream()
                .map(f -> PlaceText.of(f.where()) + ": " + f.what())
                .toList();
    }

    @Test
    void holes_are_filled_and_each_is_said() {
        Farm farm = read(withWeather("2012-05-01,20,10,5\n2012-05-02,,11,NA\n2012-05-05,26,14,-9999\n"));
        List<WeatherDay> days = farm.weather().observed().days();
        assertThat(days).hasSize(5);
        assertThat(days.get(1).tmax_C()).isCloseTo(21.5, within(1e-12));
        assertThat(days.get(1).rain_mm()).isZero();
        assertThat(days.get(2).tmin_C()).isCloseTo(12, within(1e-12));
        assertThat(said(farm))
                .contains(
                        "flag.year{where=weather.csv, year=2012}: fill.no-highest{on=fill.day{day=2012-05-02}}",
                        "flag.year{where=weather.csv, year=2012}: fill.no-rain{on=fill.days{n=2, days=[2012-05-02, 2012-05-05]}}",
                        "flag.year{where=weather.csv, year=2012}: fill.no-row{on=fill.days{n=2, days=[2012-05-03, 2012-05-04]}}");
        assertThat(farm.weather().flags()).hasSize(3);
    }

    @Test
    void a_long_gap_is_filled_said_aloud_and_kept_apart() {
        Farm farm = read(withWeather("2012-01-01,2,-8,0\n2012-05-01,20,10,5\n"));
        assertThat(farm.weather().gaps())
                .containsExactly(new WeatherGap(LocalDate.of(2012, 1, 2), LocalDate.of(2012, 4, 30)));
        assertThat(said(farm))
                .anyMatch(s -> s.equals(
                        "flag.span{where=weather.csv, first=2012-01-02, last=2012-04-30}: fill.long-gap{n=120}"));
    }

    @Test
    void a_row_that_stands_twice_alike_is_read_once() {
        Farm farm = read(withWeather("2012-05-01,20,10,5\n2012-05-01,20,10,5\n"));
        assertThat(farm.weather().observed().days()).hasSize(1);
        assertThat(said(farm)).contains("weather.csv, row 3, column date: flag.day-twice{day=2012-05-01}");
    }

    @Test
    void rows_in_any_order_are_sorted() {
        Farm farm = read(withWeather("2012-05-02,20,10,5\n2012-05-01,19,10,0\n"));
        assertThat(farm.weather().observed().first()).isEqualTo(LocalDate.of(2012, 5, 1));
        assertThat(said(farm)).contains("weather.csv: flag.days-unsorted");
    }

    @Test
    void a_single_broken_sensor_day_is_no_wrong_unit() {
        StringBuilder rows = new StringBuilder();
        for (int k = 0; k < 100; k++) {
            rows.append(LocalDate.of(2012, 4, 1).plusDays(k)).append(k == 50 ? ",99.9,10,0\n" : ",20,10,0\n");
        }
        Farm farm = read(withWeather(rows.toString()));
        assertThat(farm.weather().observed().days().get(50).tmax_C()).isEqualTo(20);
        assertThat(said(farm))
                .contains(
                        "flag.year{where=weather.csv, year=2012}: fill.highest-beyond{on=fill.day{day=2012-05-21}, most=55.0 °C}");
    }

    @Test
    void station_files_are_read_in_tenths_and_swapped_temperatures_mended() {
        TinyFolder folder = TinyFolder.us().without("weather.csv");
        folder.with("weather/A.txt", "20120101\t  33\t -56\t  56\n20120102\t-122\t -61\t-9999\n");
        folder.with("weather/B.txt", "20120103\t  10\t  10\t   0\r\n");
        Farm farm = read(folder);
        assertThat(farm.weather().observed().days())
                .containsExactly(
                        WeatherDay.of(LocalDate.of(2012, 1, 1), 3.3, -5.6, 5.6),
                        WeatherDay.of(LocalDate.of(2012, 1, 2), -6.1, -12.2, 0),
                        WeatherDay.of(LocalDate.of(2012, 1, 3), 1.25, 0.75, 0));
        assertThat(said(farm))
                .contains(
                        "flag.year{where=weather, year=2012}: fill.swapped{on=fill.day{day=2012-01-02}}",
                        "flag.year{where=weather, year=2012}: fill.no-rain{on=fill.day{day=2012-01-02}}",
                        "flag.year{where=weather, year=2012}: fill.apart{on=fill.day{day=2012-01-03}, apart=0.5 K}");
    }

    @Test
    void the_days_of_weather_csv_stand_before_those_of_a_station() {
        TinyFolder folder = withWeather("2012-01-02,5,0,9\n2012-01-03,6,1,0\n");
        folder.with("weather/A.txt", "20120101\t  33\t -56\t  56\n20120102\t -61\t-122\t   0\n");
        Farm farm = read(folder);
        assertThat(farm.weather().observed().days())
                .extracting(WeatherDay::tmax_C)
                .containsExactly(3.3, 5.0, 6.0);
        assertThat(said(farm)).contains("weather.csv: flag.both-weathers");
    }

    @Test
    void weather_alone_can_be_read_for_a_repeated_import_holes_and_all() {
        TinyFolder folder = withWeather("2012-05-01,20,10,\n");
        folder.without("farm.csv").without("fields.csv").without("soil.csv").write(dir);
        FolderWeather weather = FarmFolder.readWeather(dir);
        assertThat(weather.observed()).containsExactly(WeatherDay.of(LocalDate.of(2012, 5, 1), 20, 10, Double.NaN));
        assertThat(weather.forecast()).hasSize(2);
        assertThat(weather.rainChance()).containsEntry(LocalDate.of(2012, 10, 27), 0.4);
        assertThat(weather.hours()).hasSize(1);
    }

    @Test
    void one_weather_file_can_be_read_by_itself() {
        Path folder = withWeather("2012-05-01,20,10,1\n").write(dir);
        assertThat(WeatherCsv.read(folder.resolve("weather.csv")).days()).hasSize(1);
        assertThatThrownBy(() -> WeatherCsv.read(folder.resolve("none.csv")))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("none.csv");
    }

    @Test
    void a_forecast_may_lack_the_chance_of_rain() {
        Farm farm = read(TinyFolder.us().with("forecast.csv", HEAD + "2012-10-27,15,5,0\n"));
        assertThat(farm.weather().rainChance()).containsExactly(Double.NaN);
        assertThat(farm.flags()).extracting(f -> f.where().toString()).doesNotContain("forecast.csv");
    }
}
