// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Pass;
import org.earleaf.field.Placement;
import org.earleaf.record.FiledRecord;
import org.earleaf.units.EarleafException;

/**
 * A pass as a person enters it: field, zone, date, product, rate (with its unit, or rate_unit beside it), placement and
 * inhibitor; of a planned pass, its id in {@code pass} and whatever was done in another way than planned.
 */
public final class PassEntry {
    public static final String PASS = "pass";
    public static final String DATE = "date";
    public static final String PRODUCT = "product";
    public static final String PLACEMENT = "placement";
    public static final String INHIBITOR = "inhibitor";

    /** Longer after planting no pass belongs to that crop; common practice, no source. */
    private static final int CORN_DAYS = 200;

    private static final int OTHER_CROP_DAYS = 365;

    private static final List<Placement> DRIBBLES = List.of(Placement.ROW_BASE, Placement.MID_DRIBBLE);

    private final Draft draft;
    private final Shelf shelf;
    private final Gathered gathered = new Gathered();

    private PassEntry(Draft draft, Shelf shelf) {
        this.draft = draft;
        this.shelf = shelf;
    }

    /** @param today no pass is made later; empty: not known */
    public static Entered<Pass> of(Draft draft, Plots plots, Shelf shelf, Optional<LocalDate> today, Pass.State state) {
        PassEntry entry = new PassEntry(draft, shelf);
        Place place = Place.of(draft, plots, entry.gathered);
        Optional<LocalDate> day = entry.day(today, state);
        day.ifPresent(d -> checkSeason(place, d, DATE, entry.gathered));
        return entry.pass(place, day, state);
    }

    /** The draft with what is not given taken from the planned pass that it names. */
    public static Draft asPlanned(Draft draft, List<Pass> passes) {
        if (!draft.has(PASS)) {
            return draft;
        }
        Pass planned = passes.stream()
                .filter(p -> p.id().equals(draft.text(PASS)))
                .findFirst()
                .orElseThrow(() -> new EarleafException(Gathered.problem("pass.unknown", PASS, draft.text(PASS))));
        return draft.or(Draft.of(
                Place.FIELD,
                planned.field(),
                Place.ZONE,
                planned.zone(),
                PRODUCT,
                planned.product(),
                RateRule.RATE,
                planned.rate().entered() + " " + planned.rate().unit(),
                PLACEMENT,
                planned.placement().word(),
                INHIBITOR,
                planned.inhibitor().word()));
    }

    /**
     * The draft of what is right, of a record: a field or product that it names as the record does is the one that the
     * pass of the record is of, whatever that is called by now.
     */
    public static Draft asFiled(Draft draft, FiledRecord record, List<Pass> passes) {
        Draft same = draft;
        if (draft.text(Place.FIELD).equalsIgnoreCase(record.field())) {
            same = same.with(Place.FIELD, "");
        }
        if (record.products().stream().anyMatch(p -> p.name().equalsIgnoreCase(draft.text(PRODUCT)))) {
            same = same.with(PRODUCT, "");
        }
        return asPlanned(same.with(PASS, record.passId()), passes);
    }

    /** What was done, of a record filed in any season; the seasons that the farm knows by now are not asked. */
    public static Entered<Pass> corrected(Draft draft, Plots plots, Shelf shelf, LocalDate today) {
        PassEntry entry = new PassEntry(draft, shelf);
        Place place = Place.of(draft, plots, entry.gathered);
        return entry.pass(place, entry.day(Optional.of(today), Pass.State.MADE), Pass.State.MADE);
    }

    private Entered<Pass> pass(Place place, Optional<LocalDate> day, Pass.State state) {
        Optional<Placement> placement = placement();
        Optional<Inhibitor> inhibitor = Inhibitor.findByWord(draft.has(INHIBITOR) ? draft.text(INHIBITOR) : "none");
        if (inhibitor.isEmpty()) {
            gathered.wrong("inhibitor.unknown", INHIBITOR, draft.text(INHIBITOR), "words", Inhibitor.words());
        }
        String product = product(shelf, draft.text(PRODUCT), gathered);
        placement.ifPresent(p -> checkPlacement(product, p));
        Optional<RateRule.Rate> rate = new RateRule(product, shelf, false, gathered).read(draft);
        return gathered.with(() -> new Pass(
                draft.text(PASS),
                new FieldPart(place.field(), place.zone()),
                day.orElseThrow(),
                product,
                new Pass.Rate(
                        rate.orElseThrow().amount(),
                        rate.orElseThrow().unit().word(),
                        rate.orElseThrow().nitrogen_kgHa()),
                placement.orElseThrow(),
                inhibitor.orElseThrow(),
                state));
    }

    private Optional<LocalDate> day(Optional<LocalDate> today, Pass.State state) {
        return gathered.read(() -> {
            LocalDate day = Days.read(draft.text(DATE), DATE);
            boolean past = today.isPresent() && state == Pass.State.MADE;
            return past ? Days.past(day, today.get(), DATE) : day;
        });
    }

    private Optional<Placement> placement() {
        Optional<Placement> placement = Placement.findByWord(draft.text(PLACEMENT));
        if (placement.isEmpty()) {
            gathered.wrong(
                    "placement.unknown",
                    PLACEMENT,
                    draft.text(PLACEMENT),
                    "placements",
                    Arrays.stream(Placement.values()).map(Placement::word).toList());
        }
        return placement;
    }

    /** The product as the farm spells it. */
    static String product(Shelf shelf, String name, Gathered gathered) {
        Optional<String> known = shelf.findName(name);
        if (known.isEmpty() && (shelf.isWhole() || name.isEmpty())) {
            gathered.wrong("product.unknown", PRODUCT, name, "products", shelf.everyName());
        }
        return known.orElse(name);
    }

    private void checkPlacement(String product, Placement placement) {
        if (RateRule.isAmmonia(product) && placement != Placement.AMMONIA) {
            gathered.wrong("pass.ammonia-not-knifed", PLACEMENT, placement.word(), "knifed", Placement.AMMONIA);
        }
        boolean dry = shelf.findNitrogen(product).filter(n -> !n.isLiquid()).isPresent();
        if (dry && DRIBBLES.contains(placement)) {
            gathered.wrong("pass.dry-dribbled", PLACEMENT, placement.word(), "product", product);
        }
    }

    /** Refuses a day that belongs to no season of the field: long before its planting, or after its harvest. */
    static void checkSeason(Place place, LocalDate day, String part, Gathered gathered) {
        List<Plots.Plot> crops =
                place.plots().stream().filter(p -> p.planted().isPresent()).toList();
        if (crops.isEmpty()) {
            return;
        }
        LocalDate early = crops.stream()
                .map(p -> p.planted().orElseThrow())
                .min(LocalDate::compareTo)
                .orElseThrow();
        LocalDate last =
                crops.stream().map(PassEntry::last).max(LocalDate::compareTo).orElseThrow();
        LocalDate first = LocalDate.of(early.getYear() - 1, 8, 1);
        if (day.isAfter(last) || day.isBefore(first)) {
            gathered.wrong(
                    day.isAfter(last) ? "date.after-harvest" : "date.before-the-season",
                    part,
                    day.toString(),
                    "field",
                    place.field(),
                    "planted",
                    early,
                    "first",
                    first,
                    "last",
                    last);
        }
    }

    /** Last day that may belong to this crop; corn does not stand into the next year. */
    private static LocalDate last(Plots.Plot plot) {
        LocalDate planted = plot.planted().orElseThrow();
        LocalDate yearEnd = LocalDate.of(planted.getYear(), 12, 31);
        LocalDate late = planted.plusDays(plot.corn() ? CORN_DAYS : OTHER_CROP_DAYS);
        return plot.corn() && late.isAfter(yearEnd) ? yearEnd : late;
    }
}
