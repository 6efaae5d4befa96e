// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Incidence;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Zone;

/**
 * What readings of lesions and insects say. Of lesions the value is a count on a plant, a share of plants or a share of
 * the leaf ({@link Scouted.By}), and plants counted go before it; of insects it is aphids on a plant that has them.
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
                .filter(r -> r.scouted().isAphids())
                .findFirst()
                .map(Sightings::aphids);
    }

    /** Another insect that the grower found above its threshold, as he named it. */
    public static Optional<String> otherInsect(
            List<Reading> readings, Zone zone, LocalDate on, ProtectionSettings settings) {
        return recent(readings, Reading.Kind.INSECTS, zone, on, settings).stream()
                .map(Reading::scouted)
                .filter(s -> s.aboveThreshold() && !s.isAphids())
                .map(Scouted::insect)
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
        Scouted seen = r.scouted();
        int usual = (int) settings.of(ProtectionAssumption.SCOUTED_PLANTS);
        Optional<Incidence> counted = seen.counted();
        double severity = Double.NaN;
        if (seen.by() == Scouted.By.OF_LEAF) {
            severity = Math.min(1, r.value());
        } else if (counted.isEmpty() && seen.by() == Scouted.By.OF_PLANTS) {
            counted = Optional.of(share(r.value(), usual));
        } else if (counted.isEmpty()) {
            // A mean count says how many plants are free of lesions, were they to fall by chance.
            counted = Optional.of(share(1 - Math.exp(-r.value()), usual));
        }
        return new LesionSighting(r.date(), seen.disease(), seen.leaf(), counted, severity);
    }

    static AphidSighting aphids(Reading r) {
        Scouted.Enemies enemies = r.scouted().enemies();
        return new AphidSighting(
                r.date(),
                r.value(),
                r.scouted().counted(),
                enemies.ladyBeetles(),
                enemies.lacewings(),
                enemies.mummies());
    }

    private static Incidence share(double share, int plants) {
        return new Incidence((int) Math.round(Math.max(0, Math.min(1, share)) * plants), plants);
    }
}
