// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.earleaf.entry.Allowed;

/**
 * A comma-separated file with a header. Ask for its columns first, then {@link #isComplete()}, then read the rows; every
 * fault goes to the findings. Columns stand in any order, upper and lower case are one. Lines that begin with # above the
 * header are remarks.
 */
public final class Sheet {
    private final String name;
    private final Findings findings;
    private final Map<String, Integer> header;
    private final List<Row> rows = new ArrayList<>();
    private final Set<String> claimed = new HashSet<>();
    private final Set<String> missing = new HashSet<>();
    private final Map<String, Measure> asked = new LinkedHashMap<>();
    private boolean complete = true;
    private boolean torn;

    private Sheet(String name, Findings findings, Map<String, Integer> header) {
        this.name = name;
        this.findings = findings;
        this.header = header;
    }

    /** Opens a file; empty, with the reason noted, when it has no header that can be read. */
    public static Optional<Sheet> open(Path file, Findings findings) {
        return CsvText.read(file, findings).flatMap(text -> of(CsvText.name(file), text, findings));
    }

    /** Reads text as the file of that name. */
    public static Optional<Sheet> of(String name, String text, Findings findings) {
        List<Records.Line> lines = Records.of(name, text, findings);
        if (lines.isEmpty()) {
            if (!findings.hasProblemsIn(name)) {
                findings.problem(
                        Place.of(name), "an empty file", "a header line and rows", "Fill the file or take it away.");
            }
            return Optional.empty();
        }
        Sheet sheet = new Sheet(name, findings, header(name, lines.get(0), findings));
        for (Records.Line line : lines.subList(1, lines.size())) {
            sheet.addRow(line, lines.get(0).cells().length);
        }
        return Optional.of(sheet);
    }

    private static Map<String, Integer> header(String name, Records.Line line, Findings findings) {
        Map<String, Integer> header = new LinkedHashMap<>();
        String[] cells = line.cells();
        for (int k = 0; k < cells.length; k++) {
            String cell = cells[k].toLowerCase(Locale.ROOT).replaceAll("\\s+", "_");
            Place place = new Place(name, line.row(), cells[k]);
            if (cell.isEmpty()) {
                continue;
            }
            if (header.putIfAbsent(cell, k) != null) {
                findings.problem(place, "the column twice", "every column once", "Take one of the two away.");
            }
        }
        return header;
    }

    private void addRow(Records.Line line, int width) {
        String[] cells = line.cells();
        boolean blank = true;
        boolean spare = true;
        for (int k = 0; k < cells.length; k++) {
            blank &= cells[k].isEmpty();
            spare &= k < width || cells[k].isEmpty();
        }
        if (blank) {
            return;
        }
        if (cells.length < width || !spare) {
            torn = true;
            findings.problem(
                    new Place(name, line.row(), ""),
                    cells.length + " cells",
                    width + " cells, as the header has",
                    "Put a cell that holds a comma in quotes; leave a cell empty rather than out.");
            return;
        }
        rows.add(new Row(this, line.row(), cells));
    }

    public String name() {
        return name;
    }

    public Findings findings() {
        return findings;
    }

    /** Notes that a file needs at least one row. */
    public void refuseNoRows() {
        findings.problem(new Place(name, 1, ""), "a header and no rows", "at least one row", "Add the rows.");
    }

    /** Whether a row had to be left out because its cells do not match the header. */
    public boolean isTorn() {
        return torn;
    }

    /** Rows under the header, blank ones left out. */
    public List<Row> rows() {
        return rows;
    }

    /** A text column that must be there and filled. */
    public Column text(String base) {
        return find(base, true, Measure.PLAIN, Allowed.ANY);
    }

    /** A text column that may be missing or empty. */
    public Column optionalText(String base) {
        return find(base, false, Measure.PLAIN, Allowed.ANY);
    }

    /** A number column that must be there and filled. */
    public Column number(String base, Measure measure, Allowed limits) {
        return find(base, true, measure, limits);
    }

    /** A number column that may be missing or empty. */
    public Column optionalNumber(String base, Measure measure, Allowed limits) {
        return find(base, false, measure, limits);
    }

    private Column find(String base, boolean required, Measure measure, Allowed limits) {
        asked.put(base, measure);
        Column found = null;
        for (Map.Entry<String, Integer> h : header.entrySet()) {
            Optional<Measure.Unit> unit = measure.find(base, h.getKey());
            if (unit.isEmpty() || claimed.contains(h.getKey())) {
                continue;
            }
            claimed.add(h.getKey());
            if (found != null) {
                refuseTwo(found.header(), h.getKey());
            }
            found = new Column(base, required, limits, h.getKey(), h.getValue(), unit.get());
        }
        if (found == null && required) {
            complete = false;
            missing.add(base);
            findings.problem(
                    new Place(name, 1, base),
                    "no such column; the columns are " + String.join(", ", header.keySet()),
                    "a column " + measure.names(base),
                    "Add the column, or name it with its unit as above.");
        }
        return found != null ? found : new Column(base, required, limits, base, -1, Measure.Unit.NONE);
    }

    private static Optional<String> ending(String header, String base) {
        if (header.equals(base)) {
            return Optional.of("");
        }
        return header.startsWith(base + "_") ? Optional.of(header.substring(base.length() + 1)) : Optional.empty();
    }

    private void refuseTwo(String one, String other) {
        complete = false;
        findings.problem(
                new Place(name, 1, other),
                "the same quantity as in column " + one,
                "one column for it",
                "Keep the one you trust.");
    }

    /**
     * Whether all required columns are there; call it after asking for the last column. Columns that nobody asked for are
     * flagged, or refused when they are a known quantity in a unit of another.
     */
    public boolean isComplete() {
        for (String column : header.keySet()) {
            if (!claimed.contains(column)) {
                unknown(column);
            }
        }
        return complete;
    }

    /** Refuses columns that begin like this: what they held has moved. */
    public void refuseColumns(String beginning, String expected, String todo) {
        for (String column : header.keySet()) {
            if (column.startsWith(beginning)) {
                claimed.add(column);
                complete = false;
                findings.problem(new Place(name, 1, column), "a column that is not kept here", expected, todo);
            }
        }
    }

    private void unknown(String column) {
        Place place = new Place(name, 1, column);
        for (Map.Entry<String, Measure> a : asked.entrySet()) {
            Optional<String> ending = ending(column, a.getKey());
            boolean unit = ending.isPresent() && (ending.get().isEmpty() || Measure.isUnit(ending.get()));
            if (unit && missing.contains(a.getKey())) {
                return;
            }
            if (unit) {
                findings.problem(
                        place,
                        ending.get().isEmpty() ? "no unit in its name" : "the unit \"" + ending.get() + "\"",
                        a.getValue().names(a.getKey()),
                        "Name the column with the unit of its numbers.");
                return;
            }
        }
        findings.flag(place, "unknown column", "a column that is not known; it is not read");
    }
}
