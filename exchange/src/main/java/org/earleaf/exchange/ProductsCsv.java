// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.entry.Checks;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Measure;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductId;
import org.earleaf.farm.ProductKind;
import org.earleaf.units.Called;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** products.csv: what is bought. */
final class ProductsCsv {
    private static final String PRICE_UNITS =
            "usd/gal, usd/qt, usd/pt, usd/fl oz, usd/L, usd/ton, usd/t, usd/lb, usd/oz, usd/kg, usd/lb N, usd/kg N";
    private static final String SOURCE = "products.csv";

    private final Shelf shelf;
    private final Column product;
    private final Column form;
    private final Column density;
    private final Column price;
    private final Column priceUnit;
    private final Column nitrogen;
    private final Column urea;
    private final Column ammonium;
    private final Column nitrate;
    private final Column registration;
    private final Column caution;
    private final Column kind;
    private final IdColumn id;

    private ProductsCsv(Sheet sheet, Shelf shelf) {
        this.shelf = shelf;
        product = sheet.text("product");
        form = sheet.optionalText("form");
        density = sheet.optionalNumber("density", Measures.DENSITY_KGL, Ranges.PRODUCT_DENSITY);
        price = sheet.optionalNumber("price", Measure.PLAIN, Ranges.PRODUCT_PRICE);
        priceUnit = sheet.optionalText("price_unit");
        nitrogen = sheet.optionalNumber("n", Measures.PERCENT, Ranges.NITROGEN_SHARE);
        urea = sheet.optionalNumber("urea_share", Measure.PLAIN, Ranges.UREA_SHARE);
        ammonium = sheet.optionalNumber("ammonium_share", Measure.PLAIN, Ranges.AMMONIUM_SHARE);
        nitrate = sheet.optionalNumber("nitrate_share", Measure.PLAIN, Ranges.NITRATE_SHARE);
        registration = sheet.optionalText("registration");
        caution = sheet.optionalText("caution");
        kind = sheet.optionalText("kind");
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
        Called<ProductId> called = new Called<>(new ProductId(id.of(row, name)), name);
        String code = row.word(form, Formulation::find, Formulation.words()).orElse("");
        double kgL = row.number(density);
        double money = row.number(price);
        String unit = row.text(priceUnit);
        Optional<NitrogenProduct> n = nitrogen(row, name, kgL);
        double usdKg = nitrogenPrice(row, money, unit, n);
        ProductKind what =
                row.word(kind, ProductKind::findByWord, ProductKind.words()).orElse(ProductKind.OTHER);
        if (!row.isGood()) {
            shelf.setTorn();
            return;
        }
        double density = Double.isNaN(kgL) && n.isPresent() ? n.get().density_kgL() : kgL;
        Product made = new Product(
                called, code, density, money, unit, n.orElse(null), row.text(registration), row.text(caution), what);
        if (!shelf.add(made)) {
            row.refuse("row.twice", product, Said.of("found.second-time", "what", name));
        } else if (!Double.isNaN(usdKg)) {
            shelf.price(name, usdKg);
        }
    }

    /** Nitrogen facts of the row; those built in under that name when the row gives none. */
    private Optional<NitrogenProduct> nitrogen(Row row, String name, double density_kgL) {
        double pct = row.number(nitrogen);
        double u = row.number(urea);
        double a = row.number(ammonium);
        double o = row.number(nitrate);
        if (Double.isNaN(pct)) {
            return NitrogenProduct.findBuiltIn(name);
        }
        if (pct == 0) {
            return Optional.empty();
        }
        double sum = zero(u) + zero(a) + zero(o);
        if (!row.isGood()) {
            return Optional.empty();
        }
        row.refuse(Checks.shares(sum).stream().toList(), urea);
        if (!row.isGood()) {
            return Optional.empty();
        }
        return Optional.of(
                new NitrogenProduct(name, pct / 100, density_kgL, zero(u) / sum, zero(a) / sum, zero(o) / sum, SOURCE));
    }

    private static double zero(double value) {
        return Double.isNaN(value) ? 0 : value;
    }

    /** Money for a kilogram of nitrogen; {@code NaN} when the row does not say. */
    private double nitrogenPrice(Row row, double money, String unit, Optional<NitrogenProduct> n) {
        if (Double.isNaN(money)) {
            return Double.NaN;
        }
        String per = unit.toLowerCase(Locale.ROOT).replaceAll("\\s+", "");
        if (per.startsWith("usd/")) {
            String of = per.substring("usd/".length());
            boolean ofNitrogen = of.endsWith("n") && !of.endsWith("ton");
            Optional<Double> kg = Dimension.MASS.findInside(1, ofNitrogen ? of.substring(0, of.length() - 1) : of);
            if (kg.isPresent()) {
                return n.isEmpty()
                        ? Double.NaN
                        : money / kg.get() / (ofNitrogen ? 1 : n.get().nitrogen_share());
            }
            Optional<Double> m3 = Dimension.VOLUME.findInside(1, of);
            if (m3.isPresent()) {
                return n.isEmpty()
                        ? Double.NaN
                        : money / (m3.get() * 1000 * n.get().nitrogen_kgL());
            }
        }
        row.refuse(priceUnit, EarleafException.coded("price.unit-unknown", "price_unit", unit, "units", PRICE_UNITS));
        return Double.NaN;
    }
}
