// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** One row of a sheet. Reading a cell that is wrong notes the problem and leaves the row no longer good. */
public final class Row {
    private static final Set<String> MISSING = Set.of("", "na", "-9999", "-9999.0", "-999", "-999.0", "m");
    private static final int FIRST_YEAR = 1850;
    private static final int LAST_YEAR = 2150;

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

    public void refuse(Column column, String found, String expected, String todo) {
        good = false;
        sheet.findings().problem(place(column), found, expected, todo);
    }

    public void flag(Column column, String kind, String what) {
        sheet.findings().flag(place(column), kind, what);
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
            refuse(column, "an empty cell", "a value", "Fill the cell.");
        }
        return cell;
    }

    /** Number in the inside unit; {@code NaN} when empty or wrong. */
    public double number(Column column) {
        String cell = cell(column);
        if (cell.isEmpty()) {
            if (column.required()) {
                refuse(column, "an empty cell", "a number", "Fill the cell.");
            }
            return Double.NaN;
        }
        Optional<Double> entered = parse(cell);
        if (entered.isEmpty()) {
            refuse(column, quoted(cell), "a number", advice(cell));
            return Double.NaN;
        }
        return limited(column, cell, column.unit().inside(entered.get()));
    }

    /** As {@link #number}, but an empty cell, -9999, -999, NA or M means not observed. */
    public double observed(Column column) {
        return MISSING.contains(cell(column).toLowerCase(Locale.ROOT)) ? Double.NaN : number(column);
    }

    private double limited(Column column, String cell, double inside) {
        Limits limits = column.limits();
        if (limits.refuses(inside)) {
            refuse(column, cell, range(column), "Check the number, and the unit in the header.");
            return Double.NaN;
        }
        double in = limits.clamped(inside);
        if (in != inside) {
            String taken = Texts.number(column.unit().entered(in));
            String range = range(column);
            flag(column, "outside " + range, cell + " is outside " + range + "; " + taken + " is taken");
        }
        return in;
    }

    private static String range(Column column) {
        Limits limits = column.limits();
        Measure.Unit unit = column.unit();
        String low = Texts.number(unit.entered(limits.low()));
        return Double.isInfinite(limits.high())
                ? low + unit.word() + " or more"
                : low + " to " + Texts.number(unit.entered(limits.high())) + unit.word();
    }

    /** Date of the cell. */
    public Optional<LocalDate> date(Column column) {
        String cell = cell(column);
        if (cell.isEmpty() && !column.required()) {
            return Optional.empty();
        }
        Optional<LocalDate> date = parseDate(cell);
        if (date.isEmpty()) {
            String found = cell.isEmpty() ? "an empty cell" : quoted(cell);
            refuse(column, found, "a date as YYYY-MM-DD", "Write it like 2012-05-04.");
        }
        return date;
    }

    private static Optional<LocalDate> parseDate(String cell) {
        try {
            LocalDate date = LocalDate.parse(cell);
            boolean likely = date.getYear() >= FIRST_YEAR && date.getYear() <= LAST_YEAR;
            return likely ? Optional.of(date) : Optional.empty();
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }

    /** Day and hour of the cell, "2012-07-01 06:00". */
    public Optional<LocalDateTime> time(Column column) {
        String cell = cell(column);
        try {
            return Optional.of(LocalDateTime.parse(cell.replace(' ', 'T')));
        } catch (DateTimeParseException e) {
            refuse(column, quoted(cell), "day and hour as YYYY-MM-DD HH:MM", "Write it like 2012-07-01 06:00.");
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
            refuse(column, quoted(cell), "one of " + words, "Write one of these words.");
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
            assumed(column, Texts.number(column.unit().entered(byDefault)));
            return byDefault;
        }
        return number(column);
    }

    private void assumed(Column column, String value) {
        if (column.isThere()) {
            flag(column, "empty", "empty; " + value + " is taken");
        } else {
            Place place = new Place(sheet.name(), 0, column.header());
            sheet.findings().flag(place, "not there", "no such column; " + value + " is taken in every row");
        }
    }

    private static String quoted(String cell) {
        return "\"" + cell + "\"";
    }

    private static String advice(String cell) {
        return cell.contains(",")
                ? "Write it with a decimal point and without separators, like 1234.5."
                : "Write the number alone; its unit stands in the header.";
    }

    /** Digits with sign, point and exponent; nothing else that the JDK would take for a number. */
    static Optional<Double> parse(String cell) {
        for (int k = 0; k < cell.length(); k++) {
            char c = cell.charAt(k);
            boolean digit = c >= '0' && c <= '9';
            if (!digit && "+-.eE".indexOf(c) < 0) {
                return Optional.empty();
            }
        }
        try {
            double value = Double.parseDouble(cell);
            return Double.isFinite(value) ? Optional.of(value) : Optional.empty();
        } catch (NumberFormatException e) {
            return Optional.empty();
        }
    }
}
