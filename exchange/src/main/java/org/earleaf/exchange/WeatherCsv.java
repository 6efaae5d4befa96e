// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.earleaf.entry.Checks;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;

/** weather.csv and forecast.csv: one row a day. */
public final class WeatherCsv {
    /**
     * Days as written, with holes.
     *
     * @param days oldest first, {@code NaN} where a value is missing
     * @param rainChance share 0 to 1 of the days for which one is given
     */
    public record Days(List<WeatherDay> days, Map<LocalDate, Double> rainChance) {
        public Days {
            days = List.copyOf(days);
            rainChance = Map.copyOf(rainChance);
        }
    }

    private final Sheet sheet;
    private final Column date;
    private final Column tmax;
    private final Column tmin;
    private final Column rain;
    private final Column solar;
    private final Column wind;
    private final Column rhMax;
    private final Column rhMin;
    private final Column dewPoint;
    private final Column chance;

    private WeatherCsv(Sheet sheet) {
        this.sheet = sheet;
        date = sheet.text("date");
        tmax = sheet.number("tmax", Measures.TEMPERATURE_C, Ranges.AIR);
        tmin = sheet.number("tmin", Measures.TEMPERATURE_C, Ranges.AIR);
        rain = sheet.number("rain", Measures.WATER_MM, Ranges.RAIN);
        solar = sheet.optionalNumber("solar", Measures.SOLAR_MJM2, Ranges.SOLAR);
        wind = sheet.optionalNumber("wind", Measures.SPEED_MS, Ranges.WIND);
        rhMax = sheet.optionalNumber("rh_max", Measures.PERCENT, Ranges.HUMIDITY);
        rhMin = sheet.optionalNumber("rh_min", Measures.PERCENT, Ranges.HUMIDITY);
        dewPoint = sheet.optionalNumber("dew_point", Measures.TEMPERATURE_C, Ranges.DEW_POINT);
        chance = sheet.optionalNumber("rain_chance", Measures.SHARE, Ranges.RAIN_CHANCE);
    }

    /** Reads a file of its own, throwing with every problem found. */
    public static Days read(Path file) {
        Findings findings = new Findings();
        DayBook book = new DayBook(findings);
        Map<LocalDate, Double> chances = new HashMap<>();
        Sheet.open(file, findings).ifPresent(sheet -> read(sheet, book, chances));
        findings.refuseIfAny();
        return new Days(book.days(), chances);
    }

    static void read(Sheet sheet, DayBook book, Map<LocalDate, Double> chances) {
        WeatherCsv file = new WeatherCsv(sheet);
        if (!sheet.isComplete()) {
            return;
        }
        if (sheet.rows().isEmpty()) {
            sheet.refuseNoRows();
            return;
        }
        for (Row row : sheet.rows()) {
            file.read(row, book, chances);
        }
        if (!book.isEmpty() && file.hasLikelyUnits(book)) {
            file.refuseInverted();
        }
    }

    private void read(Row row, DayBook book, Map<LocalDate, Double> chances) {
        Optional<LocalDate> day = row.dateOfWeather(date);
        double high = row.observed(tmax);
        double low = row.observed(tmin);
        double mm = row.observed(rain);
        double sun = row.observed(solar);
        double ms = row.observed(wind);
        double moist = row.observed(rhMax);
        double dry = row.observed(rhMin);
        double dew = row.observed(dewPoint);
        double share = row.observed(chance);
        if (day.isPresent() && row.isGood()) {
            book.add(row.place(date), new WeatherDay(day.get(), high, low, mm, sun, ms, moist, dry, dew));
            chances.put(day.get(), share);
        }
    }

    private boolean hasLikelyUnits(DayBook book) {
        book.checkRain(rain.header(), Said.of("weather.looks-like-mm"));
        return isLikely(book, WeatherDay::tmax_C, tmax, DayBook.COLD_SUMMER_C)
                & isLikely(book, WeatherDay::tmin_C, tmin, DayBook.COLD_SUMMER_NIGHT_C);
    }

    private static boolean isLikely(
            DayBook book, ToDoubleFunction<WeatherDay> temperature, Column column, double cold_C) {
        boolean celsius = column.unit().inside(0) == 0;
        Said todo = Said.of("weather.name-the-column", "name", column.base() + (celsius ? "_f" : "_c"));
        return book.hasLikelyTemperatures(temperature, column.header(), celsius, cold_C, todo);
    }

    private void refuseInverted() {
        for (Row row : sheet.rows()) {
            if (row.isGood()) {
                row.refuse(
                        Checks.temperatures(row.observed(tmax), row.observed(tmin)).stream()
                                .toList(),
                        tmin);
            }
        }
    }
}
