// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.Optional;
import org.earleaf.field.FieldPart;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * A past year of a field as a person enters it: field, zone, year, crop (corn where it is not given), and what is known of
 * yield and nitrogen, each with its unit behind it or beside it in yield_unit and nitrogen_unit.
 */
public final class PastEntry {
    public static final String YEAR = "year";
    public static final String CROP = "crop";
    public static final String YIELD = "yield";
    public static final String NITROGEN = "nitrogen";
    /** Behind the name of a part: the unit of its number. */
    public static final String UNIT = "_unit";

    /** Fields and hybrids of before tell little of today's; common practice, no source. */
    public static final int FIRST_YEAR = 1950;

    /** The last past harvest lies in the year before planting; in that of planting where the crop goes in from August on. */
    private static final int SUMMER_MONTHS = 7;

    private final Draft draft;
    private final Gathered gathered = new Gathered();

    private PastEntry(Draft draft) {
        this.draft = draft;
    }

    public static Entered<PastYear> of(Draft draft, Plots plots) {
        return new PastEntry(draft).past(plots);
    }

    /** Of which year, alone: to take it out again. */
    public static Entered<PastYear> named(Draft draft, Plots plots) {
        Draft alone = Draft.of(
                Place.FIELD, draft.text(Place.FIELD), Place.ZONE, draft.text(Place.ZONE), YEAR, draft.text(YEAR));
        return new PastEntry(alone.with(CROP, PreviousCrop.CORN.word())).past(plots);
    }

    private Entered<PastYear> past(Plots plots) {
        Place place = Place.of(draft, plots, gathered);
        int year = year(place);
        Optional<PreviousCrop> crop = crop();
        double yield_kgHa = crop.map(this::dryGrain_kgHa).orElse(Double.NaN);
        double nitrogen_kgHa = number(NITROGEN, Ranges.PAST_NITROGEN);
        if (!draft.has(CROP) && !draft.has(YIELD) && !draft.has(NITROGEN)) {
            gathered.wrong("past.nothing", YIELD, "");
        }
        return gathered.with(() -> new PastYear(
                new FieldPart(place.field(), place.zone()), year, crop.orElseThrow(), yield_kgHa, nitrogen_kgHa));
    }

    private int year(Place place) {
        int last = place.plots().stream()
                .flatMap(p -> p.planted().stream())
                .mapToInt(day -> day.minusMonths(SUMMER_MONTHS).getYear())
                .min()
                .orElse(Days.LAST.getYear());
        String text = draft.text(YEAR);
        int year = text.matches("[0-9]{4}") ? Integer.parseInt(text) : 0;
        if (year < FIRST_YEAR || year > last) {
            gathered.wrong("past.year", YEAR, text, "first", String.valueOf(FIRST_YEAR), "last", String.valueOf(last));
        }
        return year;
    }

    private Optional<PreviousCrop> crop() {
        if (!draft.has(CROP)) {
            return Optional.of(PreviousCrop.CORN);
        }
        Optional<PreviousCrop> crop = PreviousCrop.findByWord(draft.text(CROP));
        if (crop.isEmpty()) {
            gathered.wrong("word.unknown", CROP, draft.text(CROP), "words", PreviousCrop.words());
        }
        return crop;
    }

    /** Only corn tells what the field makes of corn: a bushel of another crop is another weight at another moisture. */
    private double dryGrain_kgHa(PreviousCrop crop) {
        if (crop != PreviousCrop.CORN && draft.has(YIELD)) {
            gathered.ask(YIELD, draft.text(YIELD), Said.of("past.yield-of-another-crop", "crop", crop));
            return Double.NaN;
        }
        double dry_kgHa = number(YIELD, Ranges.PAST_YIELD);
        if (!Double.isNaN(dry_kgHa) && Ranges.USUAL_PAST_YIELD.refuses(dry_kgHa)) {
            double most_kgHa = Ranges.USUAL_PAST_YIELD.most();
            gathered.ask(YIELD, draft.text(YIELD), Said.of("past.yield-seldom", "seldom", Measure.YIELD.of(most_kgHa)));
        }
        return dry_kgHa;
    }

    private double number(String part, Allowed allowed) {
        return draft.has(part)
                ? gathered.number(() -> allowed.read(draft.text(part), draft.text(part + UNIT), part))
                : Double.NaN;
    }
}
