// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.entry.Allowed;
import org.earleaf.entry.Ranges;
import org.earleaf.entry.RecipeEntry;
import org.earleaf.entry.StockEntry;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Stock;
import org.earleaf.units.Said;

/** recipes.csv and stock.csv: what goes together, and what is on hand. */
final class MixCsv {
    private MixCsv() {}

    private static final class Open {
        private final String name;
        private double carrier_LHa = Double.NaN;
        private final List<Recipe.Line> lines = new ArrayList<>();

        private Open(String name) {
            this.name = name;
        }
    }

    static List<Recipe> recipes(Sheet sheet, Shelf shelf) {
        Column recipe = sheet.text("recipe");
        Column product = sheet.text("product");
        Column rate = sheet.number("rate", Measure.PLAIN, Allowed.ANY);
        Column rateUnit = sheet.text("rate_unit");
        Column carrier = sheet.optionalNumber("carrier", Measures.CARRIER_LHA, Ranges.RECIPE_CARRIER);
        Map<String, Open> open = new LinkedHashMap<>();
        if (!sheet.isComplete()) {
            return List.of();
        }
        for (Row row : sheet.rows()) {
            String name = row.text(recipe);
            List<Column> columns = List.of(product, rate, rateUnit);
            Optional<Recipe.Line> line = row.told(RecipeEntry.of(row.draft(columns), shelf), columns);
            double litres = row.number(carrier);
            if (!row.isGood() || line.isEmpty()) {
                continue;
            }
            Open one = open.computeIfAbsent(name.toLowerCase(Locale.ROOT), k -> new Open(name));
            if (!Double.isNaN(litres) && !Double.isNaN(one.carrier_LHa) && litres != one.carrier_LHa) {
                row.refuse(
                        "recipe.two-carriers", carrier, Said.of("found.other-carrier", "carrier", row.cell(carrier)));
            }
            one.carrier_LHa = Double.isNaN(litres) ? one.carrier_LHa : litres;
            one.lines.add(line.get());
        }
        return open.values().stream()
                .map(o -> new Recipe(o.name, o.carrier_LHa, o.lines))
                .toList();
    }

    static List<Stock> stock(Sheet sheet, Shelf shelf) {
        Column product = sheet.text("product");
        Column amount = sheet.number("amount", Measure.PLAIN, Allowed.ANY);
        Column unit = sheet.text("unit");
        Column lot = sheet.optionalText("lot");
        Column place = sheet.optionalText("place");
        List<Stock> stock = new ArrayList<>();
        if (!sheet.isComplete()) {
            return stock;
        }
        List<Column> columns = List.of(product, amount, unit, lot, place);
        for (Row row : sheet.rows()) {
            row.told(StockEntry.of(row.draft(columns), shelf), columns).ifPresent(stock::add);
        }
        return stock;
    }
}
