// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;

/**
 * What readings of lesions and insects say, with what their notes add.
 *
 * <p>Of lesions the value is a count a plant, unless the note says otherwise: "58 of 100 plants, gray leaf spot, ear leaf
 * -3" counts plants; "8 % of the ear leaf" and "severity, ear leaf" (the value in percent) judge the leaf. Of insects the
 * value is aphids on a plant that has them: "aphids, 40 of 100 plants, lady beetles 0.3, lacewings 0.1, mummies 2".
 */
public final class Sightings {
    private static final Pattern OF = Pattern.compile("(\\d{1,5}) (?:of|out of) (\\d{1,5})");
    private static final Pattern PERCENT = Pattern.compile("(\\d+(?:\\.\\d+)?) ?(?:%|percent|pct)");
    private static final Pattern OF_PLANTS = Pattern.compile("(?:%|percent|pct) (?:of )?(?:the )?plants");
    private static final Pattern ON_LEAF = Pattern.compile("(?:%|percent|pct) (?:of )?(?:the )?\\w*? ?leaf|severity");
    private static final Pattern LEAF = Pattern.compile("(?:\\bel\\b|ear ?leaf) ?([-+] ?\\d)?");
    private static final Pattern BELOW =
            Pattern.compile("(\\d|first|second|third|fourth)(?:th|rd|nd|st)? (?:leaf |leaves )?below");
    private static final List<String> ORDINALS = List.of("", "first", "second", "third", "fourth");

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
        String note = plain(r.note());
        Optional<Incidence> counted = counted(note);
        int usual = (int) settings.of(ProtectionAssumption.SCOUTED_PLANTS);
        double severity = Double.NaN;
        if (ON_LEAF.matcher(note).find()) {
            severity = Math.min(1, percent(note).orElse(r.value()) / 100);
        } else if (counted.isEmpty() && OF_PLANTS.matcher(note).find()) {
            counted = Optional.of(share(percent(note).orElse(r.value()) / 100, usual));
        } else if (counted.isEmpty()) {
            // A mean count says how many plants are free of lesions, were they to fall by chance.
            counted = Optional.of(share(1 - Math.exp(-r.value()), usual));
        }
        return new LesionSighting(r.date(), Disease.findIn(note), leaf(note), counted, severity, r.note());
    }

    static AphidSighting aphids(Reading r) {
        String note = plain(r.note());
        return new AphidSighting(
                r.date(),
                r.value(),
                counted(note),
                enemies(note, "lady ?(?:beetles?|bugs?)"),
                enemies(note, "lacewings?(?: larvae)?"),
                enemies(note, "mumm(?:y|ies)"));
    }

    private static String plain(String note) {
        return note.toLowerCase(Locale.ROOT).replace('−', '-').replaceAll("\\s+", " ");
    }

    private static Optional<Incidence> counted(String note) {
        Matcher m = OF.matcher(note);
        return m.find()
                ? Optional.of(new Incidence(Integer.parseInt(m.group(1)), Integer.parseInt(m.group(2))))
                : Optional.empty();
    }

    private static Optional<Double> percent(String note) {
        Matcher m = PERCENT.matcher(note);
        return m.find() ? Optional.of(Double.parseDouble(m.group(1))) : Optional.empty();
    }

    private static Incidence share(double share, int plants) {
        return new Incidence((int) Math.round(Math.max(0, Math.min(1, share)) * plants), plants);
    }

    private static OptionalInt leaf(String note) {
        Matcher below = BELOW.matcher(note);
        if (below.find()) {
            String word = below.group(1);
            return OptionalInt.of(-(ORDINALS.contains(word) ? ORDINALS.indexOf(word) : Integer.parseInt(word)));
        }
        Matcher m = LEAF.matcher(note);
        if (!m.find()) {
            return OptionalInt.empty();
        }
        return OptionalInt.of(
                m.group(1) == null ? 0 : Integer.parseInt(m.group(1).replace(" ", "")));
    }

    private static double enemies(String note, String word) {
        Matcher m = Pattern.compile(word + ":? ?(\\d+(?:\\.\\d+)?)").matcher(note);
        return m.find() ? Double.parseDouble(m.group(1)) : 0;
    }
}
