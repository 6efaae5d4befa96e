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
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

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
                findings.problem("file.empty", Place.of(name), Said.of("found.empty-file"));
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
                findings.problem("column.twice", place, Said.of("found.column-twice"));
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
                    "row.cells",
                    new Place(name, line.row(), ""),
                    Said.of("found.cells", "n", cells.length),
                    "width",
                    width);
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
        findings.problem("file.no-rows", new Place(name, 1, ""), Said.of("found.header-alone"));
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
                    "column.missing",
                    new Place(name, 1, base),
                    Said.of("found.columns", "columns", List.copyOf(header.keySet())),
                    "names",
                    measure.names(base));
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
        findings.problem("column.two-units", new Place(name, 1, other), Said.of("found.same-as-column", "column", one));
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
    public void refuseColumns(String beginning, Problem moved) {
        for (String column : header.keySet()) {
            if (column.startsWith(beginning)) {
                claimed.add(column);
                complete = false;
                findings.problem(new Place(name, 1, column), moved);
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
                        "column.unit",
                        place,
                        ending.get().isEmpty() ? Said.of("found.no-unit") : Said.of("found.unit", "unit", ending.get()),
                        "names",
                        a.getValue().names(a.getKey()));
                return;
            }
        }
        findings.flag(place, Said.of("flag.column-unknown"));
    }
}
