// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * A reading as a person enters it: field, zone, date, kind, value (with its unit, or the unit beside it), top, bottom,
 * position, note, and what was counted on plants ({@link ScoutingEntry}).
 */
public final class ReadingEntry {
    public static final String DATE = "date";
    public static final String KIND = "kind";
    public static final String VALUE = Observed.VALUE;
    public static final String UNIT = Observed.UNIT;
    public static final String TOP = "top";
    public static final String BOTTOM = "bottom";
    public static final String POSITION = "position";
    public static final String NOTE = "note";

    /** Beyond these the model does not hold [mg/kg]. */
    private static final double MOST_NITRATE_MGKG = 60;

    private static final double MOST_AMMONIUM_MGKG = 30;
    /** Notes are for people; longer text belongs elsewhere. */
    private static final int LONGEST_NOTE = 500;

    private static final Pattern VALUE_UNIT = Pattern.compile(
            "\\s*([-+\u2212]?[0-9.,]+(?:[eE][-+]?[0-9]+)?|[VRvr]\\s?[0-9.TEte]{1,6})\\s*(\\S.{0,40})?\\s*");

    private final Draft draft;
    private final Gathered gathered = new Gathered();

    private ReadingEntry(Draft draft) {
        this.draft = draft;
    }

    /**
     * The reading, without an id.
     *
     * @param today no reading is taken later; empty: not known
     */
    public static Entered<Reading> of(Draft draft, Plots plots, Optional<LocalDate> today) {
        return new ReadingEntry(draft).reading(plots, today);
    }

    private Entered<Reading> reading(Plots plots, Optional<LocalDate> today) {
        Place place = Place.of(draft, plots, gathered);
        Optional<LocalDate> day = day(today);
        Optional<Reading.Kind> kind = Reading.Kind.findByWord(draft.text(KIND));
        if (kind.isEmpty()) {
            gathered.wrong(
                    "reading.kind-unknown",
                    KIND,
                    draft.text(KIND),
                    "kinds",
                    Arrays.stream(Reading.Kind.values()).map(Reading.Kind::word).toList());
        }
        Reading.Position position = position();
        double[] depths_mm = depths(kind.filter(Reading.Kind::isOfSoil).isPresent());
        if (draft.text(NOTE).length() > LONGEST_NOTE) {
            gathered.wrong("note.too-long", NOTE, draft.text(NOTE).substring(0, 20) + "...", "most", LONGEST_NOTE);
        }
        if (kind.isEmpty()) {
            return gathered.with(() -> {
                throw new IllegalStateException("a reading without a kind");
            });
        }
        Reading.Kind what = kind.get();
        String[] said = said(what);
        Scouted scouted = ScoutingEntry.of(draft, what, Observed.by(what, said[1]), gathered);
        double value = value(what, said, scouted, place, depths_mm);
        return gathered.with(() -> new Reading(
                "",
                new FieldPart(place.field(), place.zone()),
                day.orElseThrow(),
                what,
                value,
                entered(what, said, scouted),
                new Reading.Sampled(depths_mm[0], depths_mm[1], position),
                draft.text(NOTE),
                scouted));
    }

    private Optional<LocalDate> day(Optional<LocalDate> today) {
        if (!draft.has(DATE) && today.isPresent()) {
            return today;
        }
        return gathered.read(() -> {
            LocalDate day = Days.read(draft.text(DATE), DATE);
            return today.isPresent() ? Days.past(day, today.get(), DATE) : day;
        });
    }

    /** The number and its unit; the unit behind the number goes before the one beside it. */
    private String[] said(Reading.Kind kind) {
        Matcher m = VALUE_UNIT.matcher(draft.text(VALUE));
        if (!m.matches()) {
            return new String[] {draft.text(VALUE), kind == Reading.Kind.STAGE ? "" : draft.text(UNIT)};
        }
        boolean own = m.group(2) != null;
        return new String[] {m.group(1), own ? m.group(2).strip() : draft.text(UNIT)};
    }

    private String entered(Reading.Kind kind, String[] said, Scouted scouted) {
        if (!draft.has(VALUE)) {
            return scouted.counted().map(i -> i.shows() + "/" + i.plants()).orElse("");
        }
        String text = (said[0] + " " + said[1]).strip();
        return kind == Reading.Kind.STAGE ? text.toUpperCase(Locale.ROOT) : text;
    }

    /** Lesions may be given by the plants that show them alone. */
    private double value(Reading.Kind kind, String[] said, Scouted scouted, Place place, double[] depths_mm) {
        if (!draft.has(VALUE)) {
            boolean counted = draft.has(ScoutingEntry.POSITIVE) || draft.has(ScoutingEntry.PLANTS);
            if (kind == Reading.Kind.LESIONS && counted) {
                return scouted.counted().map(i -> i.share()).orElse(Double.NaN);
            }
            gathered.wrong("reading.value-missing", VALUE, "", "kind", kind, "units", Observed.units(kind));
            return Double.NaN;
        }
        double density = place.plots().stream()
                .findFirst()
                .flatMap(Plots.Plot::soil)
                .map(soil -> soil.bulkDensity_gcm3(depths_mm[0], depths_mm[1]))
                .filter(d -> !Double.isNaN(d))
                .orElse(Observed.USUAL_BULK_DENSITY_GCM3);
        boolean told = draft.has(TOP) && draft.has(BOTTOM);
        double depth_mm = told ? depths_mm[1] - depths_mm[0] : Double.NaN;
        double inside = gathered.number(() -> Observed.inside(kind, said[0], said[1], depth_mm, density));
        return inTheModel(kind, inside);
    }

    private double inTheModel(Reading.Kind kind, double inside) {
        double most =
                switch (kind) {
                    case NITRATE -> MOST_NITRATE_MGKG;
                    case AMMONIUM -> MOST_AMMONIUM_MGKG;
                    default -> Double.POSITIVE_INFINITY;
                };
        if (inside > most) {
            gathered.ask(
                    VALUE,
                    draft.text(VALUE),
                    Said.of("reading.beyond-the-model", "kind", kind, "taken", Measure.CONCENTRATION.of(most)));
            return most;
        }
        return inside;
    }

    private Reading.Position position() {
        String word = draft.text(POSITION);
        List<String> words = Arrays.stream(Reading.Position.values())
                .map(p -> p.name().toLowerCase(Locale.ROOT))
                .toList();
        if (word.isEmpty()) {
            return Reading.Position.RANDOM;
        }
        int which = words.indexOf(word.toLowerCase(Locale.ROOT));
        if (which < 0) {
            gathered.wrong("reading.position-unknown", POSITION, word, "positions", words);
            return Reading.Position.RANDOM;
        }
        return Reading.Position.values()[which];
    }

    /** From and to [mm]; NaN where depth was not given and means nothing. */
    private double[] depths(boolean ofSoil) {
        if (!draft.has(TOP) && !draft.has(BOTTOM)) {
            if (ofSoil) {
                gathered.remark(TOP, Said.of("reading.depth-assumed"));
            }
            // A soil test without depths is the usual one of the top foot; common practice, no source.
            return ofSoil ? new double[] {0, SoilProfile.FOOT_MM} : new double[] {Double.NaN, Double.NaN};
        }
        if (!draft.has(TOP) || !draft.has(BOTTOM)) {
            gathered.wrong("reading.one-depth", draft.has(TOP) ? BOTTOM : TOP, "");
        }
        double top = draft.has(TOP) ? gathered.number(() -> Ranges.READING_TOP.read(draft.text(TOP), TOP)) : Double.NaN;
        double bottom = draft.has(BOTTOM)
                ? gathered.number(() -> Ranges.READING_BOTTOM.read(draft.text(BOTTOM), BOTTOM))
                : Double.NaN;
        if (top >= bottom) {
            gathered.wrong("reading.depths-turned", BOTTOM, draft.text(BOTTOM), "top", draft.text(TOP));
        }
        return new double[] {top, bottom};
    }
}
