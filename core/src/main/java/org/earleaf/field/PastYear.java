// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Comparator;
import java.util.List;
import java.util.TreeMap;

/**
 * What a field grew in a year before this season, where it is known. {@code NaN} means not known.
 *
 * @param crop the main crop of that year
 * @param yield_kgHa dry grain [kg/ha]; of corn alone
 * @param nitrogen_kgHa nitrogen put on for that crop from all sources, manure included [kg N/ha]
 */
public record PastYear(FieldPart part, int year, PreviousCrop crop, double yield_kgHa, double nitrogen_kgHa) {
    public String field() {
        return part.field();
    }

    public String zone() {
        return part.zone();
    }

    public boolean hasYield() {
        return !Double.isNaN(yield_kgHa);
    }

    public boolean hasNitrogen() {
        return !Double.isNaN(nitrogen_kgHa);
    }

    /** The years of a zone, newest first and each once: what is told of the zone itself goes before that of its field. */
    public static List<PastYear> of(Zone zone, List<PastYear> all) {
        TreeMap<Integer, PastYear> byYear = new TreeMap<>(Comparator.reverseOrder());
        for (PastYear year : all) {
            if (year.part().holds(zone)) {
                byYear.merge(year.year(), year, (a, b) -> a.zone().isEmpty() ? b : a);
            }
        }
        return List.copyOf(byYear.values());
    }
}
