// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import org.earleaf.field.Boundary;
import org.earleaf.field.Irrigation;
import org.earleaf.field.Manure;
import org.earleaf.field.Pass;
import org.earleaf.field.PastYear;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.label.LabelBook;
import org.earleaf.units.Flag;
import org.earleaf.weather.Site;

/**
 * The facts of one business on one day; the same value whether read from a folder or from the store.
 *
 * @param flags what was filled in or assumed
 */
public record Farm(
        String name,
        Site site,
        ZoneId timeZone,
        Ground ground,
        Work work,
        Shelf shelf,
        WeatherBook weather,
        Rules rules,
        List<Flag> flags) {
    public Farm {
        flags = List.copyOf(flags);
    }

    /** What it farms. */
    public record Ground(List<Zone> zones, List<Boundary> boundaries) {
        public Ground {
            zones = List.copyOf(zones);
            boundaries = List.copyOf(boundaries);
        }
    }

    /** What was done on it and seen on it, or is planned; and what is known of the years before. */
    public record Work(
            List<Pass> passes,
            List<Reading> readings,
            List<Irrigation> irrigation,
            List<Manure> manure,
            List<PastYear> past) {
        public static final Work NONE = new Work(List.of(), List.of(), List.of(), List.of());

        public Work {
            passes = List.copyOf(passes);
            readings = List.copyOf(readings);
            irrigation = List.copyOf(irrigation);
            manure = List.copyOf(manure);
            past = List.copyOf(past);
        }

        /** Of one season, nothing being known of the years before. */
        public Work(List<Pass> passes, List<Reading> readings, List<Irrigation> irrigation, List<Manure> manure) {
            this(passes, readings, irrigation, manure, List.of());
        }
    }

    /** What there is to work with. */
    public record Shelf(
            List<NitrogenProduct> nitrogen,
            List<Product> products,
            List<Rig> rigs,
            List<Recipe> recipes,
            List<Stock> stock) {
        public static final Shelf EMPTY = new Shelf(List.of(), List.of(), List.of(), List.of(), List.of());

        public Shelf {
            nitrogen = List.copyOf(nitrogen);
            products = List.copyOf(products);
            rigs = List.copyOf(rigs);
            recipes = List.copyOf(recipes);
            stock = List.copyOf(stock);
        }
    }

    /** What counts: prices, the farm's own settings, what labels allow. */
    public record Rules(Prices prices, Settings settings, LabelBook labels) {
        /** With every setting as usual, and no label entered. */
        public static Rules usual(Prices prices) {
            return new Rules(prices, Settings.USUAL, LabelBook.EMPTY);
        }
    }

    public List<Zone> zones() {
        return ground.zones();
    }

    public List<Pass> passes() {
        return work.passes();
    }

    public List<Reading> readings() {
        return work.readings();
    }

    /** What is known of a zone's years before this season, newest first and each once. */
    public List<PastYear> past(Zone zone) {
        return PastYear.of(zone, work.past());
    }

    public List<Product> products() {
        return shelf.products();
    }

    public List<Rig> rigs() {
        return shelf.rigs();
    }

    /** The same farm with other readings. */
    public Farm withReadings(List<Reading> others) {
        Work other = new Work(work.passes(), others, work.irrigation(), work.manure(), work.past());
        return new Farm(name, site, timeZone, ground, other, shelf, weather, rules, flags);
    }

    public Prices prices() {
        return rules.prices();
    }

    public Settings settings() {
        return rules.settings();
    }

    public LabelBook labels() {
        return rules.labels();
    }

    /** The latest of some readings of a zone, from one day to another, both included. */
    public Optional<Reading> findReading(Zone zone, Predicate<Reading> which, LocalDate from, LocalDate to) {
        return readings().stream()
                .filter(r ->
                        r.isOn(zone) && !r.date().isBefore(from) && !r.date().isAfter(to))
                .filter(which)
                .max(Comparator.comparing(Reading::date));
    }

    /** Nitrogen product by name, of the farm's own or built in. */
    public Optional<NitrogenProduct> findNitrogen(String product) {
        return shelf.nitrogen().stream()
                .filter(p -> p.name().equalsIgnoreCase(product.trim()))
                .findFirst()
                .or(() -> NitrogenProduct.findBuiltIn(product));
    }

    /** Product of the shelf by name. */
    public Optional<Product> findProduct(String product) {
        return products().stream()
                .filter(p -> p.name().equalsIgnoreCase(product))
                .findFirst();
    }

    public List<Zone> zonesOf(String field) {
        return zones().stream()
                .filter(z -> z.field().equalsIgnoreCase(field.trim()))
                .toList();
    }
}
