// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.NavigableMap;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.decide.Option;
import org.earleaf.field.Purpose;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.Said;

/**
 * A pass that a zone, or a part of it, wants in the days planned for, with the best way of making it by rig and day.
 *
 * @param outlook where its zone stands
 * @param own what would be best for the zone by itself
 * @param byRig the best option of each rig on each day looked at, over the corrected futures
 * @param later_usdHa what waiting past these days may still bring [$/ha]; 0: nothing
 * @param part which part of the zone it goes over
 */
public record FieldPass(
        Outlook outlook,
        Option own,
        Map<String, NavigableMap<LocalDate, Option>> byRig,
        double later_usdHa,
        Part part) {
    /**
     * A part of a zone.
     *
     * @param no from 1
     * @param share of the zone's ground
     */
    public record Part(int no, int of, double share) {
        static final Part WHOLE = new Part(1, 1, 1);
    }

    public FieldPass {
        Map<String, NavigableMap<LocalDate, Option>> copy = new LinkedHashMap<>();
        byRig.forEach((rig, days) -> copy.put(rig, new TreeMap<>(days)));
        byRig = copy;
    }

    /** Over the whole zone. */
    public FieldPass(
            Outlook outlook, Option own, Map<String, NavigableMap<LocalDate, Option>> byRig, double later_usdHa) {
        this(outlook, own, byRig, later_usdHa, Part.WHOLE);
    }

    public Purpose kind() {
        return own.kind();
    }

    public Zone zone() {
        return outlook.zone();
    }

    /** Ground that it goes over. */
    public double area_ha() {
        return part.share() * zone().area_ha();
    }

    FieldPass with(Part other) {
        return new FieldPass(outlook, own, byRig, later_usdHa, other);
    }

    public boolean canBeMadeBy(String rig) {
        return byRig.containsKey(rig);
    }

    public String name() {
        return zone().label() + ", " + work();
    }

    /** What is done there, with the part of it. */
    String work() {
        return kind().word() + partWord();
    }

    /** Where it goes, with the part of it. */
    public Said place() {
        return part.of() > 1
                ? Said.of("pass.part", "field", zone().label(), "no", part.no(), "of", part.of())
                : Said.text(zone().label());
    }

    private String partWord() {
        return part.of() > 1 ? ", part " + part.no() + " of " + part.of() : "";
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
