// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange.table;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.units.Dimension;
import org.earleaf.units.Figure;

/**
 * A quantity as a header may name it: each unit is the ending of a column name ("area_ac", "area_ha"), and turns into one
 * inside unit.
 */
public final class Measure {
    /** A number without a unit. */
    public static final Measure PLAIN = new Measure();

    private static final int DIGITS = 5;

    private static final List<Measure> EVERY_DIMENSION =
            Arrays.stream(Dimension.values()).map(d -> of(d, 1)).toList();

    private final Map<String, Unit> units = new LinkedHashMap<>();

    /** inside = zero + factor x entered. */
    public record Unit(String ending, double zero, double factor) {
        static final Unit NONE = new Unit("", 0, 1);

        /** For people, with a blank before it: " lb/ac". */
        String word() {
            return ending.isEmpty() ? "" : " " + ending.replace("pct", "%").replace("_", "/");
        }

        public double inside(double entered) {
            return zero + factor * entered;
        }

        private double entered(double inside) {
            return (inside - zero) / factor;
        }

        /** The number in this unit, as people write it. */
        public String text(double inside) {
            return Figure.text(entered(inside), DIGITS);
        }
    }

    private Measure() {}

    /** Every unit of a dimension; {@code scale} brings its inside unit to the one wanted. */
    public static Measure of(Dimension dimension, double scale) {
        Measure measure = new Measure();
        for (String word : dimension.words().split(", ")) {
            double zero = dimension.findInside(0, word).orElseThrow();
            double one = dimension.findInside(1, word).orElseThrow();
            String ending = word.replace("/", "_").replace("%", "pct");
            measure.add(ending, zero * scale, (one - zero) * scale);
        }
        return measure;
    }

    /** Units given one by one. */
    public static Measure of(String ending, double factor) {
        return new Measure().and(ending, factor);
    }

    /** With one more unit; an empty ending lets the column stand without a unit. */
    public Measure and(String ending, double factor) {
        Measure more = new Measure();
        more.units.putAll(units);
        more.add(ending, 0, factor);
        return more;
    }

    private void add(String ending, double zero, double factor) {
        units.putIfAbsent(plain(ending), new Unit(ending, zero, factor));
    }

    /** The unit that is proposed. */
    public Unit first() {
        return units.values().stream().findFirst().orElse(Unit.NONE);
    }

    /** The unit with which {@code name} names the quantity {@code base}; empty when it names another. */
    public Optional<Unit> find(String base, String name) {
        if (name.equals(base)) {
            return findUnit("");
        }
        return name.startsWith(base + "_") ? findUnit(name.substring(base.length() + 1)) : Optional.empty();
    }

    private Optional<Unit> findUnit(String ending) {
        if (units.isEmpty()) {
            return ending.isEmpty() ? Optional.of(Unit.NONE) : Optional.empty();
        }
        return Optional.ofNullable(units.get(plain(ending)));
    }

    /** Column names that would do, "area_m2, area_ha, area_ac"; of two words for one unit only the first. */
    public String names(String base) {
        if (units.isEmpty()) {
            return base;
        }
        Map<List<Double>, String> names = new LinkedHashMap<>();
        for (Unit u : units.values()) {
            names.putIfAbsent(List.of(u.zero(), u.factor()), u.ending().isEmpty() ? base : base + "_" + u.ending());
        }
        return String.join(", ", names.values());
    }

    /** Whether a column ending reads like a unit of some quantity. */
    static boolean isUnit(String ending) {
        return EVERY_DIMENSION.stream().anyMatch(m -> m.findUnit(ending).isPresent());
    }

    private static String plain(String ending) {
        return ending.toLowerCase(Locale.ROOT).replace("_", "").replace("/", "");
    }
}
