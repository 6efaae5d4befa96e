// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Entered;
import org.earleaf.entry.Plots;
import org.earleaf.entry.ReadingEntry;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.Reading;

/** readings.csv: anything observed in a field. */
final class ReadingsCsv {
    private static final List<String> TEXTS = List.of(
            "zone",
            "position",
            "note",
            "found",
            "positive",
            "plants",
            "leaf",
            "lady_beetles",
            "lacewings",
            "mummies",
            "above_threshold");

    private final Sheet sheet;
    private final Plots plots;
    private final List<Column> columns = new ArrayList<>();

    private ReadingsCsv(Sheet sheet, Plots plots) {
        this.sheet = sheet;
        this.plots = plots;
        List.of("field", "date", "kind").forEach(name -> columns.add(sheet.text(name)));
        List.of("value", "unit").forEach(name -> columns.add(sheet.text(name).emptyAllowed()));
        List.of("top", "bottom")
                .forEach(name -> columns.add(sheet.optionalNumber(name, Measures.SOIL_DEPTH_MM, Allowed.ANY)));
        TEXTS.forEach(name -> columns.add(sheet.optionalText(name)));
    }

    static List<Reading> read(Sheet sheet, Plots plots) {
        ReadingsCsv file = new ReadingsCsv(sheet, plots);
        List<Reading> readings = new ArrayList<>();
        if (sheet.isComplete()) {
            sheet.rows().forEach(row -> file.read(row).ifPresent(readings::add));
        }
        return readings;
    }

    private Optional<Reading> read(Row row) {
        Entered<Reading> entered = ReadingEntry.of(row.draft(columns), plots, Optional.empty());
        Optional<Reading> reading = row.told(entered, columns);
        if (reading.isPresent()) {
            entered.remarks().forEach(r -> row.flag(Row.columnOf(r.part(), columns), r.said()));
        }
        return reading.map(r -> r.withId(sheet.name() + " row " + row.line()));
    }
}
