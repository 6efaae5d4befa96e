// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.earleaf.field.Incidence;
import org.earleaf.field.Observed;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.ScoutingCount;
import org.earleaf.field.Zone;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;

/** A reading as a person enters it at a door, checked against the farm; every problem is told at once. */
public final class EnteredReading {
    private static final Pattern VALUE_UNIT = Pattern.compile("\\s*([-+]?[0-9.]+|[VRvr][0-9.TEte]+)\\s*(.*?)\\s*");
    /** A soil test without depths is the usual one of the top foot; common practice, no source. */
    private final Farm farm;

    private final List<Problem> problems = new ArrayList<>();

    private EnteredReading(Farm farm) {
        this.farm = farm;
    }

    /**
     * What was entered, all as text; an empty text is "not given".
     *
     * @param field name of the field
     * @param zone name of its zone; empty: the whole field
     * @param kind word of the kind
     * @param value with its unit, "12 ppm"; a stage as V9
     * @param top with its unit, "0 in"
     * @param bottom likewise
     * @param position random, row or middle
     * @param count of plants, for lesions and insects
     */
    public record Entry(
            String field,
            String zone,
            LocalDate date,
            String kind,
            String value,
            String top,
            String bottom,
            String position,
            String note,
            ScoutingCount count) {
        /** Without a count of plants. */
        public Entry(
                String field,
                String zone,
                LocalDate date,
                String kind,
                String value,
                String top,
                String bottom,
                String position,
                String note) {
            this(field, zone, date, kind, value, top, bottom, position, note, ScoutingCount.NONE);
        }
    }

    /** The reading, without an id; refused with every problem found. */
    public static Reading of(Farm farm, Entry entry) {
        return new EnteredReading(farm).reading(entry);
    }

    private Reading reading(Entry e) {
        Optional<Zone> zone = zone(e);
        Optional<Reading.Kind> kind = Reading.Kind.findByWord(e.kind());
        if (kind.isEmpty()) {
            say("kind", quoted(e.kind()), "one of " + Reading.Kind.words(), "Name one of these.");
        }
        Reading.Position position = position(e.position());
        double top = depth("top", e.top());
        double bottom = depth("bottom", e.bottom());
        checkDepths(e, top, bottom);
        boolean usual = e.top().isBlank()
                && e.bottom().isBlank()
                && kind.filter(EnteredReading::isOfSoil).isPresent();
        double from = usual ? 0 : top;
        // A soil test without depths is the usual one of the top foot; common practice, no source.
        double to = usual ? SoilProfile.FOOT_MM : bottom;
        String note = kind.map(k -> note(k, e)).orElse("");
        Optional<Incidence> counted = kind.filter(
                        k -> k == Reading.Kind.LESIONS && e.value().isBlank())
                .flatMap(k -> counted(e.count()));
        double inside = counted.isPresent()
                ? counted.get().share()
                : kind.isPresent() ? inside(kind.get(), e.value(), zone, from, to) : Double.NaN;
        if (!problems.isEmpty() || kind.isEmpty() || zone.isEmpty()) {
            throw new EarleafException(problems);
        }
        return new Reading(
                "",
                zone.get().field(),
                e.zone().isBlank() ? "" : zone.get().zone(),
                e.date(),
                kind.get(),
                inside,
                counted.map(Incidence::toString).orElse(e.value().strip()),
                from,
                to,
                position,
                note);
    }

    /** What was written, with the count of plants in words before it. */
    private String note(Reading.Kind kind, Entry e) {
        try {
            String note = e.count().note(kind, e.note());
            if (kind == Reading.Kind.LESIONS || kind == Reading.Kind.INSECTS) {
                Scouted.of(note);
            }
            return note;
        } catch (EarleafException wrong) {
            problems.addAll(wrong.problems());
            return "";
        }
    }

    /** Plants that show it; a wrong count was told with the note. */
    private static Optional<Incidence> counted(ScoutingCount count) {
        try {
            return count.incidence();
        } catch (EarleafException toldAlready) {
            return Optional.of(new Incidence(0, 1));
        }
    }

    /** The zone meant, or the first of the field. */
    private Optional<Zone> zone(Entry e) {
        List<Zone> zones = farm.zonesOf(e.field());
        if (zones.isEmpty()) {
            String fields = farm.zones().stream().map(Zone::field).distinct().collect(Collectors.joining(", "));
            say("field", quoted(e.field()), "one of " + fields, "Name one of these fields.");
            return Optional.empty();
        }
        if (e.zone().isBlank()) {
            return Optional.of(zones.get(0));
        }
        Optional<Zone> named = zones.stream()
                .filter(z -> z.zone().equalsIgnoreCase(e.zone().trim()))
                .findFirst();
        if (named.isEmpty()) {
            String names =
                    zones.stream().map(Zone::zone).filter(n -> !n.isEmpty()).collect(Collectors.joining(", "));
            say(
                    "zone",
                    quoted(e.zone()),
                    names.isEmpty() ? "nothing, the field is one zone" : "one of " + names,
                    "Correct or leave it out.");
        }
        return named;
    }

    private Reading.Position position(String word) {
        if (word.isBlank()) {
            return Reading.Position.RANDOM;
        }
        try {
            return Reading.Position.valueOf(word.trim().toUpperCase(Locale.ROOT));
        } catch (IllegalArgumentException e) {
            String words = Arrays.stream(Reading.Position.values())
                    .map(p -> p.name().toLowerCase(Locale.ROOT))
                    .collect(Collectors.joining(", "));
            say("position", quoted(word), "one of " + words, "Name where the cores were taken.");
            return Reading.Position.RANDOM;
        }
    }

    private double depth(String which, String text) {
        if (text.isBlank()) {
            return Double.NaN;
        }
        try {
            return 1000 * Quantity.parse(text, Dimension.LENGTH, which).inside();
        } catch (EarleafException e) {
            problems.addAll(e.problems());
            return Double.NaN;
        }
    }

    private void checkDepths(Entry e, double top_mm, double bottom_mm) {
        if (e.top().isBlank() != e.bottom().isBlank()) {
            say(
                    e.top().isBlank() ? "top" : "bottom",
                    "nothing",
                    "both depths, or none",
                    "Give from where to where the soil was taken.");
        }
        if (top_mm < 0 || top_mm >= bottom_mm) {
            say(
                    "bottom",
                    e.bottom() + ", with the top at " + e.top(),
                    "a top at or below the surface and a bottom below it",
                    "Check both.");
        }
    }

    private double inside(Reading.Kind kind, String text, Optional<Zone> zone, double from_mm, double to_mm) {
        Matcher m = VALUE_UNIT.matcher(text);
        if (!m.matches()) {
            say(
                    "value",
                    quoted(text),
                    "a value with its unit (" + Observed.units(kind) + ")",
                    "Write both, as in 12 ppm.");
            return Double.NaN;
        }
        double density = zone.map(z -> z.soil().bulkDensity_gcm3(from_mm, to_mm))
                .filter(d -> !Double.isNaN(d))
                .orElse(Observed.USUAL_BULK_DENSITY_GCM3);
        try {
            return Observed.inside(kind, m.group(1), m.group(2), to_mm - from_mm, density);
        } catch (EarleafException e) {
            problems.addAll(e.problems());
            return Double.NaN;
        }
    }

    private static boolean isOfSoil(Reading.Kind kind) {
        return kind == Reading.Kind.NITRATE || kind == Reading.Kind.AMMONIUM || kind == Reading.Kind.MOISTURE;
    }

    private void say(String where, String found, String expected, String todo) {
        problems.add(new Problem(where, found, expected, todo));
    }

    private static String quoted(String text) {
        return text.isBlank() ? "nothing" : "\"" + text + "\"";
    }
}
