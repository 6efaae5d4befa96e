// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;

/** The products that a draft may name; the nitrogen products that are built in are known to every farm. */
public interface Shelf {
    /** A product of the farm's own. */
    Optional<Product> find(String name);

    /** Nitrogen products of the farm's own. */
    List<NitrogenProduct> nitrogen();

    /** Names of the farm's own. */
    List<String> names();

    /** Whether a product that is not among them is wrong; not so while a row of products.csv could not be read. */
    boolean isWhole();

    /** What a product carries; empty where it carries no nitrogen or is not known. */
    default Optional<NitrogenProduct> findNitrogen(String name) {
        Optional<Product> own = find(name);
        if (own.isPresent() && own.get().nitrogen() != null) {
            return Optional.ofNullable(own.get().nitrogen());
        }
        return nitrogen().stream()
                .filter(p -> p.name().equalsIgnoreCase(name.strip()))
                .findFirst()
                .or(() -> own.isPresent() ? Optional.empty() : NitrogenProduct.findBuiltIn(name));
    }

    /** The product as the farm spells it; empty: there is none of that name. */
    default Optional<String> findName(String name) {
        return find(name).map(Product::name).or(() -> findNitrogen(name).map(NitrogenProduct::name));
    }

    /** Likewise, refused where there is none. */
    default Entered<String> named(String name) {
        Gathered gathered = new Gathered();
        String known = PassEntry.product(this, name.strip(), gathered);
        return gathered.with(() -> known);
    }

    /** Every name that is understood. */
    default List<String> everyName() {
        Set<String> all = new LinkedHashSet<>(names());
        nitrogen().forEach(p -> all.add(p.name()));
        NitrogenProduct.builtIn().forEach(p -> all.add(p.name()));
        return List.copyOf(all);
    }

    static Shelf of(Farm farm) {
        return new Shelf() {
            @Override
            public Optional<Product> find(String name) {
                return farm.findProduct(name.strip());
            }

            @Override
            public List<NitrogenProduct> nitrogen() {
                return farm.shelf().nitrogen();
            }

            @Override
            public List<String> names() {
                return farm.products().stream().map(Product::name).toList();
            }

            @Override
            public boolean isWhole() {
                return true;
            }
        };
    }
}
