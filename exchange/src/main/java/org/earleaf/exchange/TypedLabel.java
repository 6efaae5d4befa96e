// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.exchange.table.CsvRows;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.Product;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** A label typed by hand, read by the rules of labels.csv. */
public final class TypedLabel {
    private static final String FILE = "label";
    /** Of the lines, below the header. */
    private static final int FIRST_ROW = 2;

    private TypedLabel() {}

    /**
     * One figure.
     *
     * @param item word as in labels.csv
     * @param of active ingredient, or the crop of plant_back
     * @param value with its unit
     */
    public record Line(String item, String of, String value) {}

    /**
     * The entry that the lines make; refused with every fault, named by its item.
     *
     * @param shelf products, of which one is meant
     */
    public static LabelEntry read(
            String product, String crop, List<Product> shelf, List<Line> lines, String person, Instant at) {
        if (person.isBlank()) {
            throw EarleafException.coded("person.missing", product, "");
        }
        Findings findings = new Findings();
        LabelBook book = Sheet.of(FILE, text(product, crop, lines), findings)
                .map(sheet -> LabelsCsv.read(sheet, shelf(shelf), ZoneOffset.UTC))
                .orElse(LabelBook.EMPTY);
        if (findings.hasProblems()) {
            throw new EarleafException(findings.problems().stream()
                    .map(p -> p.at(where(p, product, crop, lines)))
                    .toList());
        }
        if (book.entries().isEmpty()) {
            throw EarleafException.coded("label.nothing-typed", product, "");
        }
        LabelEntry e = book.entries().get(0);
        return new LabelEntry(
                e.title(),
                e.clock(),
                e.actives(),
                e.figures(),
                e.inTank(),
                e.plantBack_d(),
                LabelEntry.Look.first(person, at));
    }

    private static Shelf shelf(List<Product> products) {
        Shelf shelf = new Shelf();
        products.forEach(shelf::add);
        return shelf;
    }

    private static String text(String product, String crop, List<Line> lines) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("product", "crop", "item", "of", "value", "entered_by", "entered_on"));
        for (Line line : lines) {
            rows.add(List.of(product, crop, line.item(), line.of(), line.value(), "typed", "2000-01-01"));
        }
        return CsvRows.text(rows);
    }

    /** Where a fault stands: the item that was typed, since there are no rows to be seen. */
    private static Said where(Problem found, String product, String crop, List<Line> lines) {
        int at = found.place().values().get("row") instanceof String row ? Integer.parseInt(row) - FIRST_ROW : -1;
        if (at < 0 || at >= lines.size()) {
            return Said.of("where.label", "product", product, "crop", crop);
        }
        Line line = lines.get(at);
        String item = line.item().replace('_', ' ');
        return line.of().isEmpty() ? Said.text(item) : Said.of("where.item-of", "item", item, "of", line.of());
    }
}
