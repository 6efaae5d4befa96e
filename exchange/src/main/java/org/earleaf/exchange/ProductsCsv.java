// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.List;
import java.util.Optional;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.ProductEntry;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.RowParts;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.ProductId;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** products.csv: what is bought. */
final class ProductsCsv {
    private static final String SOURCE = "products.csv";

    private final Shelf shelf;
    private final Column product;
    private final List<Column> columns;
    private final IdColumn id;

    private ProductsCsv(Sheet sheet, Shelf shelf) {
        this.shelf = shelf;
        product = sheet.text("product");
        Allowed any = Allowed.ANY;
        columns = List.of(
                product,
                sheet.optionalText("form"),
                sheet.optionalNumber("density", Measures.DENSITY_KGL, any),
                sheet.optionalNumber("price", Measure.PLAIN, any),
                sheet.optionalText("price_unit"),
                sheet.optionalNumber("n", Measures.PERCENT, any),
                sheet.optionalNumber("urea_share", Measure.PLAIN, any),
                sheet.optionalNumber("ammonium_share", Measure.PLAIN, any),
                sheet.optionalNumber("nitrate_share", Measure.PLAIN, any),
                sheet.optionalText("registration"),
                sheet.optionalText("caution"),
                sheet.optionalText("kind"));
        id = new IdColumn(sheet, "id");
    }

    static void read(Sheet sheet, Shelf shelf) {
        ProductsCsv file = new ProductsCsv(sheet, shelf);
        for (String moved : List.of("label_", "group")) {
            sheet.refuseColumns(
                    moved, Problem.of("column.moved-to-labels", Said.text(moved), Said.of("found.column-not-kept")));
        }
        if (!sheet.isComplete()) {
            shelf.setTorn();
            return;
        }
        sheet.rows().forEach(file::read);
    }

    private void read(Row row) {
        String name = row.text(product);
        ProductId called = new ProductId(id.of(row, name));
        Optional<ProductEntry.Bought> bought = ProductEntry.of(new RowParts(row, columns), called, SOURCE);
        if (bought.isEmpty()) {
            shelf.setTorn();
        } else if (!shelf.add(bought.get().product())) {
            row.refuse("row.twice", product, Said.of("found.second-time", "what", name));
        } else if (!Double.isNaN(bought.get().nitrogen_usdKg())) {
            shelf.price(name, bought.get().nitrogen_usdKg());
        }
    }
}
