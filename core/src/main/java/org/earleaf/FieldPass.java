// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.decide.Option;
import org.earleaf.decide.Outlook;
import org.earleaf.field.Zone;

/**
 * A pass that a zone wants in the days planned for, with the best way of making it by rig and day.
 *
 * @param outlook where its zone stands
 * @param kind as in its options
 * @param byRig the best option of each rig on each day looked at, over the corrected futures
 * @param later_usdHa what waiting past these days may still bring [$/ha]; 0: nothing
 */
public record FieldPass(
        Outlook outlook, String kind, Map<String, NavigableMap<LocalDate, Option>> byRig, double later_usdHa) {
    public FieldPass {
        Map<String, NavigableMap<LocalDate, Option>> copy = new LinkedHashMap<>();
        byRig.forEach((rig, days) -> copy.put(rig, new TreeMap<>(days)));
        byRig = copy;
    }

    public Zone zone() {
        return outlook.zone();
    }

    public boolean canBeMadeBy(String rig) {
        return byRig.containsKey(rig);
    }

    public String name() {
        return zone().label() + ", " + kind;
    }

    /** The best way of all. */
    public Option best() {
        return byRig.values().stream()
                .flatMap(days -> days.values().stream())
                .max(Comparator.comparingDouble((Option o) -> o.worth().mean_usdHa())
                        .thenComparing(Option::date, Comparator.reverseOrder()))
                .orElseThrow();
    }

    /** The way of a rig on a day, or on the nearest day looked at before it; else after it. */
    public Option way(String rig, LocalDate day) {
        NavigableMap<LocalDate, Option> days = days(rig);
        return Optional.ofNullable(days.floorEntry(day))
                .orElseGet(days::firstEntry)
                .getValue();
    }

    /** The best option of each day of a rig that can make it. */
    public NavigableMap<LocalDate, Option> days(String rig) {
        NavigableMap<LocalDate, Option> days = byRig.get(rig);
        if (days == null) {
            throw new IllegalArgumentException(rig + " does not make " + name());
        }
        return days;
    }

    /** Finished liquid [L/ha]; NaN: none, or not known. */
    public static double litresHa(Option o) {
        return o.spray().map(s -> s.mix().carrier_LHa()).orElse(o.liquid() ? o.productRate() : Double.NaN);
    }
}
