// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.RateUnit;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;

/** The products a folder may speak of: those of products.csv, and the built-in nitrogen products. */
final class Shelf {
    private final Map<String, Product> byName = new HashMap<>();
    private final List<Product> products = new ArrayList<>();
    private final Map<String, Double> nitrogenPrices_usdKg = new HashMap<>();
    private boolean whole = true;

    /** Keeps a product; false when one of that name is there already. */
    boolean add(Product product) {
        if (byName.putIfAbsent(key(product.name()), product) != null) {
            return false;
        }
        products.add(product);
        return true;
    }

    void price(String product, double nitrogen_usdKg) {
        nitrogenPrices_usdKg.put(product, nitrogen_usdKg);
    }

    /** To be called when a row of products.csv could not be read: then no product is refused as unknown. */
    void setTorn() {
        whole = false;
    }

    private static String key(String name) {
        return name.trim().toLowerCase(Locale.ROOT);
    }

    List<Product> products() {
        return products;
    }

    /** A product of products.csv. */
    Optional<Product> find(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    List<NitrogenProduct> nitrogen() {
        return products.stream()
                .flatMap(p -> Optional.ofNullable(p.nitrogen()).stream())
                .toList();
    }

    Map<String, Double> nitrogenPrices_usdKg() {
        return nitrogenPrices_usdKg;
    }

    /** The product's name as the shelf spells it; refuses the row when there is none. */
    String name(Row row, Column column) {
        String cell = row.text(column);
        Optional<String> known = Optional.ofNullable(byName.get(key(cell)))
                .map(Product::name)
                .or(() -> NitrogenProduct.findBuiltIn(cell).map(NitrogenProduct::name));
        if (known.isEmpty() && whole && !cell.isEmpty()) {
            String builtIn = String.join(
                    ", ",
                    NitrogenProduct.builtIn().stream()
                            .map(NitrogenProduct::name)
                            .toList());
            row.refuse(
                    column,
                    "the product \"" + cell + "\"",
                    "a product of products.csv, or one of " + builtIn,
                    "Spell it as there, or add it to products.csv.");
        }
        return known.orElse(cell);
    }

    private Optional<NitrogenProduct> findNitrogen(String name) {
        Product own = byName.get(key(name));
        return own != null ? Optional.ofNullable(own.nitrogen()) : NitrogenProduct.findBuiltIn(name);
    }

    /** Nitrogen that the rate of a row puts on [kg/ha]; refuses the row when unit and product do not fit. */
    double nitrogen_kgHa(Row row, Column unitColumn, String product, double rate, RateUnit unit) {
        Product own = byName.get(key(product));
        if (unit == RateUnit.OZ_AC && own != null && Formulation.isLiquid(own.form())) {
            row.refuse(
                    unitColumn,
                    "oz/ac of a liquid, which may be weight or volume",
                    "fl oz/ac or lb/ac",
                    "Write which of the two is meant.");
            return Double.NaN;
        }
        if (findNitrogen(product).isEmpty() && !whole) {
            return Double.NaN;
        }
        try {
            return unit.nitrogen_kgHa(rate, product, findNitrogen(product).orElse(null));
        } catch (EarleafException e) {
            Problem p = e.problems().get(0);
            row.refuse(unitColumn, p.found(), p.expected(), p.todo());
            return Double.NaN;
        }
    }
}
