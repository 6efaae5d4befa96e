// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;

/** The products a folder may speak of: those of products.csv, and the built-in nitrogen products. */
final class Shelf implements org.earleaf.entry.Shelf {
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

    @Override
    public Optional<Product> find(String name) {
        return Optional.ofNullable(byName.get(key(name)));
    }

    @Override
    public List<NitrogenProduct> nitrogen() {
        return products.stream()
                .flatMap(p -> Optional.ofNullable(p.nitrogen()).stream())
                .toList();
    }

    @Override
    public List<String> names() {
        return products.stream().map(Product::name).toList();
    }

    @Override
    public boolean isWhole() {
        return whole;
    }

    Map<String, Double> nitrogenPrices_usdKg() {
        return nitrogenPrices_usdKg;
    }
}
