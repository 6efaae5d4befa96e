// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Entered;
import org.earleaf.entry.PassEntry;
import org.earleaf.entry.YesNo;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.Pass;
import org.earleaf.units.Said;

/** passes.csv: passes made and planned. */
final class PassesCsv {
    private final Sheet sheet;
    private final Names names;
    private final Shelf shelf;
    private final List<Column> columns = new ArrayList<>();
    private final Column made;
    private final Column planned;

    private PassesCsv(Sheet sheet, Names names, Shelf shelf) {
        this.sheet = sheet;
        this.names = names;
        this.shelf = shelf;
        List.of("field", "date", "product", "rate_unit", "placement").forEach(name -> columns.add(sheet.text(name)));
        columns.add(sheet.number("rate", Measure.PLAIN, Allowed.ANY));
        List.of("zone", "inhibitor").forEach(name -> columns.add(sheet.optionalText(name)));
        made = sheet.optionalText("made");
        planned = sheet.optionalText("planned");
    }

    static List<Pass> read(Sheet sheet, Names names, Shelf shelf) {
        PassesCsv file = new PassesCsv(sheet, names, shelf);
        List<Pass> passes = new ArrayList<>();
        if (sheet.isComplete()) {
            sheet.rows().forEach(row -> file.read(row).ifPresent(passes::add));
        }
        return passes;
    }

    private Optional<Pass> read(Row row) {
        Pass.State state = state(row);
        Entered<Pass> entered = PassEntry.of(row.draft(columns), names, shelf, Optional.empty(), state);
        Optional<Pass> pass = row.told(entered, columns);
        if (pass.isPresent()) {
            entered.remarks().forEach(r -> row.flag(Row.columnOf(r.part(), columns), r.said()));
        }
        return pass.map(p -> p.withId(sheet.name() + " row " + row.line()));
    }

    private Pass.State state(Row row) {
        Optional<Boolean> isPlanned = row.word(planned, YesNo::find, YesNo.WORDS);
        Optional<Boolean> isMade = row.word(made, YesNo::find, YesNo.WORDS);
        if (isPlanned.orElse(false) && isMade.orElse(false)) {
            row.refuse("pass.planned-and-made", planned, Said.of("found.planned-and-made"));
        }
        return isMade.orElse(!isPlanned.orElse(false)) ? Pass.State.MADE : Pass.State.PLANNED;
    }
}
