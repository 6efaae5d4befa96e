// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Zone;

/**
 * What readings of lesions and insects say, with what their notes add.
 *
 * <p>Of lesions the value is a count a plant, unless the note says otherwise: "58 of 100 plants, gray leaf spot, ear leaf
 * -3" counts plants; "8 % of the ear leaf" and "severity, ear leaf" (the value in percent) judge the leaf. Of insects the
 * value is aphids on a plant that has them: "aphids, 40 of 100 plants, lady beetles 0.3, lacewings 0.1, mummies 2".
 */
public final class Sightings {
    private Sightings() {}

    /** The latest sighting of each disease on a zone, made up to a day and not too long before it. */
    public static List<LesionSighting> lesions(
            List<Reading> readings, Zone zone, LocalDate on, ProtectionSettings settings) {
        List<LesionSighting> latestFirst = recent(readings, Reading.Kind.LESIONS, zone, on, settings).stream()
                .map(r -> lesions(r, settings))
                .toList();
        return latestFirst.stream()
                .filter(s -> latestFirst.stream()
                                .filter(t -> t.disease().equals(s.disease()))
                                .findFirst()
                                .orElseThrow()
                        == s)
                .toList();
    }

    /** The latest count of aphids likewise; insects of other kinds are not modelled. */
    public static Optional<AphidSighting> aphids(
            List<Reading> readings, Zone zone, LocalDate on, ProtectionSettings settings) {
        return recent(readings, Reading.Kind.INSECTS, zone, on, settings).stream()
                .filter(r -> r.note().toLowerCase(Locale.ROOT).contains("aphid"))
                .findFirst()
                .map(Sightings::aphids);
    }

    /** What the grower noted of another insect that he found above its threshold. */
    public static Optional<String> otherInsect(
            List<Reading> readings, Zone zone, LocalDate on, ProtectionSettings settings) {
        return recent(readings, Reading.Kind.INSECTS, zone, on, settings).stream()
                .map(Reading::note)
                .filter(note -> note.toLowerCase(Locale.ROOT).contains("above the threshold"))
                .filter(note -> !note.toLowerCase(Locale.ROOT).contains("aphid"))
                .findFirst();
    }

    private static List<Reading> recent(
            List<Reading> readings, Reading.Kind kind, Zone zone, LocalDate on, ProtectionSettings settings) {
        LocalDate earliest = on.minusDays((long) settings.of(ProtectionAssumption.SIGHTING_LASTS));
        return readings.stream()
                .filter(r -> r.kind() == kind && r.isOn(zone))
                .filter(r -> !r.date().isAfter(on) && !r.date().isBefore(earliest))
                .sorted(Comparator.comparing(Reading::date).reversed())
                .toList();
    }

    static LesionSighting lesions(Reading r, ProtectionSettings settings) {
        Scouted seen = Scouted.of(r.note());
        int usual = (int) settings.of(ProtectionAssumption.SCOUTED_PLANTS);
        Optional<Incidence> counted = seen.counted();
        double severity = Double.NaN;
        if (seen.ofLeaf()) {
            severity = Math.min(1, seen.percent().orElse(r.value()) / 100);
        } else if (counted.isEmpty() && seen.ofPlants()) {
            counted = Optional.of(share(seen.percent().orElse(r.value()) / 100, usual));
        } else if (counted.isEmpty()) {
            // A mean count says how many plants are free of lesions, were they to fall by chance.
            counted = Optional.of(share(1 - Math.exp(-r.value()), usual));
        }
        return new LesionSighting(r.date(), seen.disease(), seen.leaf(), counted, severity, r.note());
    }

    static AphidSighting aphids(Reading r) {
        Scouted seen = Scouted.of(r.note());
        return new AphidSighting(
                r.date(), r.value(), seen.counted(), seen.ladyBeetles(), seen.lacewings(), seen.mummies());
    }

    private static Incidence share(double share, int plants) {
        return new Incidence((int) Math.round(Math.max(0, Math.min(1, share)) * plants), plants);
    }
}
