// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Limits;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.RateUnit;
import org.earleaf.farm.Recipe;
import org.earleaf.farm.Stock;
import org.earleaf.units.Dimension;

/** recipes.csv and stock.csv: what goes together, and what is on hand. */
final class MixCsv {
    private static final Limits CARRIER_LHA = Limits.refuse(5, 2000);
    private static final String STOCK_UNITS = "gal, qt, pt, fl oz, L, mL, lb, oz, ton, kg, g, t";

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
        Column rate = sheet.number("rate", Measure.PLAIN, Limits.NOT_NEGATIVE);
        Column rateUnit = sheet.text("rate_unit");
        Column carrier = sheet.optionalNumber("carrier", Measures.CARRIER_LHA, CARRIER_LHA);
        Map<String, Open> open = new LinkedHashMap<>();
        if (!sheet.isComplete()) {
            return List.of();
        }
        for (Row row : sheet.rows()) {
            String name = row.text(recipe);
            String p = shelf.name(row, product);
            double amount = row.number(rate);
            Optional<RateUnit> unit = row.word(rateUnit, RateUnit::findByWord, RateUnit.words());
            double litres = row.number(carrier);
            if (!row.isGood() || unit.isEmpty()) {
                continue;
            }
            Open one = open.computeIfAbsent(name.toLowerCase(Locale.ROOT), k -> new Open(name));
            if (!Double.isNaN(litres) && !Double.isNaN(one.carrier_LHa) && litres != one.carrier_LHa) {
                row.refuse(
                        carrier,
                        row.cell(carrier) + ", another than in the rows above",
                        "one carrier rate a recipe",
                        "Give it once.");
            }
            one.carrier_LHa = Double.isNaN(litres) ? one.carrier_LHa : litres;
            one.lines.add(new Recipe.Line(p, amount, unit.get().word()));
        }
        return open.values().stream()
                .map(o -> new Recipe(o.name, o.carrier_LHa, o.lines))
                .toList();
    }

    static List<Stock> stock(Sheet sheet, Shelf shelf) {
        Column product = sheet.text("product");
        Column amount = sheet.number("amount", Measure.PLAIN, Limits.NOT_NEGATIVE);
        Column unit = sheet.text("unit");
        Column lot = sheet.optionalText("lot");
        Column place = sheet.optionalText("place");
        List<Stock> stock = new ArrayList<>();
        if (!sheet.isComplete()) {
            return stock;
        }
        for (Row row : sheet.rows()) {
            String p = shelf.name(row, product);
            double much = row.number(amount);
            String word = row.text(unit);
            Optional<Double> m3 = Dimension.VOLUME.findInside(much, word);
            Optional<Double> kg = Dimension.MASS.findInside(much, word);
            if (m3.isEmpty() && kg.isEmpty() && !word.isEmpty()) {
                row.refuse(unit, "\"" + word + "\"", "one of " + STOCK_UNITS, "Write volume or weight.");
            }
            if (row.isGood()) {
                double litres = m3.map(v -> v * 1000).orElse(Double.NaN);
                stock.add(new Stock(p, much, word, litres, kg.orElse(Double.NaN), row.text(lot), row.text(place)));
            }
        }
        return stock;
    }
}
