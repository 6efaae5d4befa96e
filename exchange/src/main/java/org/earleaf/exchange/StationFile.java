// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import static org.earleaf.exchange.DayBook.COLD_SUMMER_C;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.exchange.table.CsvText;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Place;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;

/**
 * Daily record of a weather station without a header: date as YYYYMMDD, highest and lowest temperature in tenths of a
 * °C, precipitation in tenths of a mm, parted by tabs or blanks; -9999 is missing. These are the units of the Global
 * Historical Climatology Network Daily.
 */
public final class StationFile {
    private static final String[] COLUMNS = {"1 (date)", "2 (highest)", "3 (lowest)", "4 (rain)"};
    private static final int MISSING = -9999;

    private StationFile() {}

    /** Days as written, oldest first, {@code NaN} where missing; throws with every problem found. */
    public static List<WeatherDay> read(Path file) {
        Findings findings = new Findings();
        DayBook book = new DayBook(findings);
        read(file, book, findings);
        findings.refuseIfAny();
        return book.days();
    }

    static void read(Path file, DayBook book, Findings findings) {
        String name = CsvText.name(file);
        Optional<String> text = CsvText.read(file, findings);
        if (text.isEmpty()) {
            return;
        }
        DayBook own = new DayBook(findings);
        int row = 0;
        for (String line : text.get().split("\n", -1)) {
            row++;
            if (!line.isBlank()) {
                Place place = new Place(name, row, COLUMNS[0]);
                day(line, place, findings).ifPresent(d -> own.add(place, d));
            }
        }
        if (own.isEmpty()) {
            if (!findings.hasProblemsIn(name)) {
                findings.problem("station.empty", Place.of(name), Said.of("found.empty-file"));
            }
            return;
        }
        own.hasLikelyTemperatures(
                WeatherDay::tmax_C, COLUMNS[1], true, COLD_SUMMER_C, Said.of("weather.tenths-of-degrees"));
        own.checkRain(COLUMNS[3], Said.of("weather.tenths-of-mm"));
        book.addAll(own);
    }

    private static Optional<WeatherDay> day(String line, Place place, Findings findings) {
        String[] cells = line.strip().split("\\s+");
        if (cells.length != COLUMNS.length) {
            findings.problem(
                    "station.cells",
                    new Place(place.file(), place.row(), ""),
                    Said.of("found.cells", "n", cells.length));
            return Optional.empty();
        }
        Optional<LocalDate> date = date(cells[0]);
        if (date.isEmpty()) {
            findings.problem("station.date", new Place(place.file(), place.row(), COLUMNS[0]), Problem.seen(cells[0]));
            return Optional.empty();
        }
        double[] values = new double[COLUMNS.length];
        for (int k = 1; k < COLUMNS.length; k++) {
            Optional<Double> tenths = tenths(cells[k]);
            if (tenths.isEmpty()) {
                findings.problem(
                        "station.number", new Place(place.file(), place.row(), COLUMNS[k]), Problem.seen(cells[k]));
                return Optional.empty();
            }
            values[k] = tenths.get();
        }
        if (values[3] < 0) {
            findings.problem(
                    "station.rain-below-zero",
                    new Place(place.file(), place.row(), COLUMNS[3]),
                    Problem.seen(cells[3]));
            return Optional.empty();
        }
        return Optional.of(WeatherDay.of(date.get(), values[1], values[2], values[3]));
    }

    private static Optional<LocalDate> date(String cell) {
        try {
            int number = cell.length() == 8 ? Integer.parseInt(cell) : 0;
            return Optional.of(LocalDate.of(number / 10_000, number / 100 % 100, number % 100));
        } catch (NumberFormatException | DateTimeException e) {
            return Optional.empty();
        }
    }

    private static Optional<Double> tenths(String cell) {
        try {
            int number = Integer.parseInt(cell);
            return Optional.of(number == MISSING ? Double.NaN : number / 10.0);
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
