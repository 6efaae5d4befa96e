// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.earleaf.entry.LabelDraft;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.RowParts;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;

/** labels.csv: what labels say, one figure a row. */
final class LabelsCsv {
    private LabelsCsv() {}

    static LabelBook read(Sheet sheet, Shelf shelf, ZoneId zone) {
        List<Column> columns = List.of(
                sheet.text(LabelDraft.PRODUCT),
                sheet.optionalText(LabelDraft.CROP),
                sheet.text(LabelDraft.ITEM),
                sheet.optionalText(LabelDraft.OF),
                sheet.text(LabelDraft.VALUE),
                sheet.optionalText(LabelDraft.UNIT),
                sheet.text(LabelDraft.ENTERED_BY),
                sheet.text(LabelDraft.ENTERED_ON),
                sheet.optionalText(LabelDraft.CHECKED_BY),
                sheet.optionalText(LabelDraft.CHECKED_ON));
        if (!sheet.isComplete()) {
            return LabelBook.EMPTY;
        }
        Map<String, List<LabelDraft.Line>> byProduct = new LinkedHashMap<>();
        for (Row row : sheet.rows()) {
            LabelDraft.line(new RowParts(row, columns), shelf, zone).ifPresent(line -> byProduct
                    .computeIfAbsent(line.product().toLowerCase(Locale.ROOT), k -> new ArrayList<>())
                    .add(line));
        }
        List<LabelEntry> entries = new ArrayList<>();
        byProduct.values().forEach(lines -> entries.addAll(LabelDraft.entries(lines, shelf)));
        return new LabelBook(entries);
    }
}
