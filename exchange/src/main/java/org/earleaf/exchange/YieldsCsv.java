// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Entered;
import org.earleaf.entry.PastEntry;
import org.earleaf.entry.Place;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.RowParts;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.field.FieldPart;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.units.Said;

/** yields.csv: what the fields grew in the years before this season. */
final class YieldsCsv {
    private record Key(FieldPart part, int year) {}

    private final Names names;
    private final Column year;
    private final Column crop;
    private final List<Column> columns;
    private final Map<Key, Row> seen = new HashMap<>();

    private YieldsCsv(Sheet sheet, Names names) {
        this.names = names;
        year = sheet.text(PastEntry.YEAR);
        crop = sheet.optionalText(PastEntry.CROP);
        columns = List.of(
                sheet.text(Place.FIELD),
                sheet.optionalText(Place.ZONE),
                year,
                crop,
                sheet.number(PastEntry.YIELD, Measures.DRY_GRAIN_KGHA, Allowed.ANY),
                sheet.optionalNumber(PastEntry.NITROGEN, Measures.NITROGEN_KGHA, Allowed.ANY));
    }

    static List<PastYear> read(Sheet sheet, Names names) {
        YieldsCsv file = new YieldsCsv(sheet, names);
        List<PastYear> past = new ArrayList<>();
        if (sheet.isComplete()) {
            sheet.rows().forEach(row -> file.read(row).ifPresent(past::add));
        }
        return past;
    }

    private Optional<PastYear> read(Row row) {
        Entered<PastYear> entered = PastEntry.of(row.draft(columns), names);
        Optional<PastYear> past = row.told(entered, columns);
        past.ifPresent(p -> {
            if (row.isEmpty(crop)) {
                new RowParts(row, columns).assumed(PastEntry.CROP, PreviousCrop.CORN.word());
            }
            entered.remarks().forEach(r -> row.flag(Row.columnOf(r.part(), columns), r.said()));
            refuseTwice(row, p);
        });
        return past;
    }

    private void refuseTwice(Row row, PastYear past) {
        Row before = seen.putIfAbsent(new Key(past.part(), past.year()), row);
        if (before != null) {
            row.refuse(
                    "past.twice",
                    year,
                    Said.of(
                            "found.past-twice",
                            "place",
                            past.part().label(),
                            "year",
                            String.valueOf(past.year()),
                            "row",
                            String.valueOf(before.line())));
        }
    }
}
