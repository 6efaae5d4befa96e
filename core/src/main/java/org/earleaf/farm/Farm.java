// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Boundary;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.label.LabelBook;
import org.earleaf.units.Flag;
import org.earleaf.weather.Site;

/** The facts of one business on one day; the same value whether read from a folder or from the store. */
public record Farm(
        String name,
        Site site,
        ZoneId timeZone,
        Prices prices,
        List<Zone> zones,
        List<Pass> passes,
        List<Reading> readings,
        List<Irrigation> irrigation,
        List<Manure> manure,
        List<NitrogenProduct> nitrogen,
        List<Product> products,
        List<Rig> rigs,
        List<Recipe> recipes,
        List<Stock> stock,
        List<Boundary> boundaries,
        WeatherBook weather,
        List<Flag> flags,
        Settings settings,
        LabelBook labels) {
    public Farm {
        zones = List.copyOf(zones);
        passes = List.copyOf(passes);
        readings = List.copyOf(readings);
        irrigation = List.copyOf(irrigation);
        manure = List.copyOf(manure);
        nitrogen = List.copyOf(nitrogen);
        products = List.copyOf(products);
        rigs = List.copyOf(rigs);
        recipes = List.copyOf(recipes);
        stock = List.copyOf(stock);
        boundaries = List.copyOf(boundaries);
        flags = List.copyOf(flags);
    }

    /** With every setting as usual, and no label entered. */
    public Farm(
            String name,
            Site site,
            ZoneId timeZone,
            Prices prices,
            List<Zone> zones,
            List<Pass> passes,
            List<Reading> readings,
            List<Irrigation> irrigation,
            List<Manure> manure,
            List<NitrogenProduct> nitrogen,
            List<Product> products,
            List<Rig> rigs,
            List<Recipe> recipes,
            List<Stock> stock,
            List<Boundary> boundaries,
            WeatherBook weather,
            List<Flag> flags) {
        this(
                name,
                site,
                timeZone,
                prices,
                zones,
                passes,
                readings,
                irrigation,
                manure,
                nitrogen,
                products,
                rigs,
                recipes,
                stock,
                boundaries,
                weather,
                flags,
                Settings.USUAL,
                LabelBook.EMPTY);
    }

    /** Nitrogen product by name, of the farm's own or built in. */
    public Optional<NitrogenProduct> findNitrogen(String product) {
        return nitrogen.stream()
                .filter(p -> p.name().equalsIgnoreCase(product.trim()))
                .findFirst()
                .or(() -> NitrogenProduct.findBuiltIn(product));
    }

    /** Product of the shelf by name. */
    public Optional<Product> findProduct(String product) {
        return products.stream().filter(p -> p.name().equalsIgnoreCase(product)).findFirst();
    }

    public List<Zone> zonesOf(String field) {
        return zones.stream()
                .filter(z -> z.field().equalsIgnoreCase(field.trim()))
                .toList();
    }
}
