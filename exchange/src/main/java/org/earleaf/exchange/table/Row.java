// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.function.Function;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Days;
import org.earleaf.entry.Draft;
import org.earleaf.entry.Entered;
import org.earleaf.units.EarleafException;
import org.earleaf.units.NumberText;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** One row of a sheet. Reading a cell that is wrong notes the problem and leaves the row no longer good. */
public final class Row {
    private static final Set<String> MISSING = Set.of("", "na", "-9999", "-9999.0", "-999", "-999.0", "m");

    private final Sheet sheet;
    private final int line;
    private final String[] cells;
    private boolean good = true;

    Row(Sheet sheet, int line, String[] cells) {
        this.sheet = sheet;
        this.line = line;
        this.cells = cells;
    }

    /** Line of the file, the header being line 1 when no remark stands above it. */
    public int line() {
        return line;
    }

    /** Whether every cell read so far could be used. */
    public boolean isGood() {
        return good;
    }

    public Place place(Column column) {
        return new Place(sheet.name(), line, column.header());
    }

    /** The whole row, for findings that are about no single cell. */
    public Place place() {
        return new Place(sheet.name(), line, "");
    }

    /** Refuses the row for what is seen in one of its cells. */
    public void refuse(String code, Column column, Said seen, Object... namesAndValues) {
        good = false;
        sheet.findings().problem(code, place(column), seen, namesAndValues);
    }

    /** Refuses the row for a problem that a rule found in one of its cells. */
    public void refuse(Column column, Problem problem) {
        good = false;
        sheet.findings().problem(place(column), problem);
    }

    /** Refuses the row for what a rule found, told at the column of its part with what stands there. */
    public void refuse(List<Problem> problems, Column... columns) {
        for (Problem p : problems) {
            Column column = columnOf(p.where(), List.of(columns));
            boolean told = !p.seen().code().equals("found.nothing");
            Said seen = told ? p.seen() : Problem.seen(cell(column));
            refuse(column, new Problem(p.rule(), p.place(), seen));
        }
    }

    /** Likewise for every one of them. */
    public void refuse(Column column, EarleafException wrong) {
        good = false;
        wrong.problems().forEach(p -> sheet.findings().problem(place(column), p));
    }

    /** The cells of these columns as a draft: each part is named by its column, and carries the unit of the header. */
    public Draft draft(List<Column> columns) {
        Map<String, String> parts = new HashMap<>();
        for (Column column : columns) {
            String cell = cell(column);
            parts.put(column.base(), cell.isEmpty() ? "" : cell + column.unit().word());
        }
        return new Draft(parts);
    }

    /** Tells what came of a draft, each problem at the column of its part; empty where the row is not good. */
    public <T> Optional<T> told(Entered<T> entered, List<Column> columns) {
        for (Problem p : entered.problems()) {
            Column column = columnOf(p.where(), columns);
            good = false;
            sheet.findings().problem(place(column), p);
        }
        return good ? entered.fact() : Optional.empty();
    }

    /** The column of a part. */
    public static Column columnOf(String part, List<Column> columns) {
        return columns.stream()
                .filter(c -> c.base().equals(part))
                .findFirst()
                .orElseThrow(() -> new IllegalStateException("no column for the part " + part));
    }

    /** Remarks on what was taken, told by its code and values. */
    public void flag(Column column, Said what) {
        sheet.findings().flag(place(column), what);
    }

    /** The cell as it stands; "" when the column is not there. */
    public String cell(Column column) {
        return column.isThere() && column.index() < cells.length ? cells[column.index()] : "";
    }

    public boolean isEmpty(Column column) {
        return cell(column).isEmpty();
    }

    /** Text of the cell; a required one must not be empty. */
    public String text(Column column) {
        String cell = cell(column);
        if (cell.isEmpty() && column.required()) {
            refuse(column, EarleafException.coded("cell.empty", column.header(), ""));
        }
        return cell;
    }

    /** Number in the inside unit; {@code NaN} when empty or wrong. */
    public double number(Column column) {
        String cell = cell(column);
        if (cell.isEmpty()) {
            if (column.required()) {
                refuse(column, EarleafException.coded("cell.empty", column.header(), ""));
            }
            return Double.NaN;
        }
        try {
            return limited(column, cell, column.unit().inside(NumberText.read(cell, column.header())));
        } catch (EarleafException unreadable) {
            refuse(column, unreadable);
            return Double.NaN;
        }
    }

    /** As {@link #number}, but an empty cell, -9999, -999, NA or M means not observed. */
    public double observed(Column column) {
        return MISSING.contains(cell(column).toLowerCase(Locale.ROOT)) ? Double.NaN : number(column);
    }

    private double limited(Column column, String cell, double inside) {
        Allowed allowed = column.limits();
        String low = bound(column, allowed.low());
        String high = bound(column, allowed.high());
        if (allowed.refuses(inside)) {
            refuse(column, new EarleafException(allowed.refused(column.header(), cell, low, high)));
            return Double.NaN;
        }
        double in = allowed.clamp(inside);
        if (in != inside) {
            String taken = bound(column, in);
            flag(column, Said.of("flag.outside", "entered", cell, "low", low, "high", high, "taken", taken));
        }
        return in;
    }

    private static String bound(Column column, double inside) {
        Measure.Unit unit = column.unit();
        return unit.text(inside) + unit.word();
    }

    /** Date of the cell: of what was done or seen on the farm. */
    public Optional<LocalDate> date(Column column) {
        return date(column, Days::read);
    }

    /** Date of a day's weather, which may lie long before. */
    public Optional<LocalDate> dateOfWeather(Column column) {
        return date(column, Days::ofWeather);
    }

    private Optional<LocalDate> date(Column column, BiFunction<String, String, LocalDate> read) {
        String cell = cell(column);
        if (cell.isEmpty() && !column.required()) {
            return Optional.empty();
        }
        try {
            return Optional.of(read.apply(cell, column.header()));
        } catch (EarleafException wrong) {
            refuse(column, wrong);
            return Optional.empty();
        }
    }

    /** Day and hour of the cell, "2012-07-01 06:00". */
    public Optional<LocalDateTime> time(Column column) {
        String cell = cell(column);
        try {
            return Optional.of(LocalDateTime.parse(cell.replace(' ', 'T')));
        } catch (DateTimeParseException e) {
            refuse(column, EarleafException.coded("hour.unreadable", column.header(), cell));
            return Optional.empty();
        }
    }

    /** One of a few words; empty when the cell is empty or wrong. */
    public <T> Optional<T> word(Column column, Function<String, Optional<T>> find, String words) {
        String cell = text(column);
        if (cell.isEmpty()) {
            return Optional.empty();
        }
        Optional<T> value = find.apply(cell);
        if (value.isEmpty()) {
            refuse(column, EarleafException.coded("word.unknown", column.header(), cell, "words", words));
        }
        return value;
    }

    /** One of a few words; the default is taken for an empty cell, and said. */
    public <T> T word(
            Column column, Function<String, Optional<T>> find, String words, T byDefault, String defaultWord) {
        Optional<T> value = word(column.emptyAllowed(), find, words);
        if (value.isEmpty() && isEmpty(column)) {
            assumed(column, defaultWord);
        }
        return value.orElse(byDefault);
    }

    /** A number, or the default where the cell is empty, and said. */
    public double number(Column column, double byDefault) {
        if (isEmpty(column)) {
            assumed(column, column.unit().text(byDefault));
            return byDefault;
        }
        return number(column);
    }

    void assumed(Column column, String value) {
        if (column.isThere()) {
            flag(column, Said.of("flag.empty", "taken", value));
        } else {
            Place place = new Place(sheet.name(), 0, column.header());
            sheet.findings().flag(place, Said.of("flag.no-column", "taken", value));
        }
    }
}
