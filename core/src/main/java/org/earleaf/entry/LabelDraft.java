// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.farm.Product;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.CropStages;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelEntry.Clock;
import org.earleaf.label.LabelEntry.Look;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.mix.MixForm;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/**
 * What a label says as a person enters it, one figure a line: product, crop, item, of, value and unit, entered_by,
 * entered_on, second_look_by, second_look_on. The lines of a product and crop make one entry; a line without a crop counts
 * for every crop that its product has lines of. A label is read as a whole: who entered it and who looked again is the
 * same in all of its lines.
 */
public final class LabelDraft {
    public static final String PRODUCT = "product";
    public static final String CROP = "crop";
    public static final String ITEM = "item";
    public static final String OF = "of";
    public static final String VALUE = "value";
    public static final String UNIT = "unit";
    public static final String ENTERED_BY = "entered_by";
    public static final String ENTERED_ON = "entered_on";
    public static final String CHECKED_BY = "second_look_by";
    public static final String CHECKED_ON = "second_look_on";

    /**
     * One figure.
     *
     * @param crop empty: every crop of the product
     * @param what the item
     * @param of active ingredient or crop that it speaks of; empty: none
     * @param said value with its unit
     */
    public record Line(Parts parts, String product, String crop, String what, String of, String said, Look look) {}

    /** Items that speak of an active ingredient, or of a crop that follows. */
    private static final Set<String> NAMED =
            Set.of("content", "counts", "group", "active_single", "active_season", "plant_back");

    /** Items beside the figures of {@link LabelItem}. */
    private static final Set<String> WORDS = Stream.concat(
                    NAMED.stream(), Stream.of("version", "season_is", "never_with", "after"))
            .collect(Collectors.toUnmodifiableSet());

    /** Items that may stand more than once. */
    private static final Set<String> MANY = Set.of("group", "never_with", "after");

    private static final Pattern GROUP =
            Pattern.compile("(FRAC|IRAC|HRAC) (\\d{1,2}[A-Z]?|M\\d{1,2}|P\\d{1,2}|BM\\d{1,2}|U\\d{1,2}|UN[A-Z]*|NC)");

    private final Optional<Product> product;
    private final String name;
    private final String crop;
    private final List<Line> lines;
    private final boolean dry;

    private LabelDraft(Optional<Product> product, String name, String crop, List<Line> lines) {
        this.product = product;
        this.name = name;
        this.crop = crop;
        this.lines = lines;
        dry = product.flatMap(p -> MixForm.find(p.form()))
                .filter(f -> f.isDry() || f.isLiquid())
                .map(MixForm::isDry)
                .orElseGet(() -> lines.stream().anyMatch(l -> l.what().equals("single") && isMass(l.said())));
    }

    /**
     * One line; empty where something is refused.
     *
     * @param zone the days of the looks are told in it
     */
    public static Optional<Line> line(Parts parts, Shelf shelf, ZoneId zone) {
        Entered<String> product = shelf.named(parts.text(PRODUCT));
        product.problems().forEach(parts::refuse);
        String what = parts.filled(ITEM).toLowerCase(Locale.ROOT);
        if (!what.isEmpty() && LabelItem.findByWord(what).isEmpty() && !WORDS.contains(what)) {
            parts.refuse("label.item-unknown", ITEM, what, "items", words());
        }
        boolean named = NAMED.contains(what);
        if (named != parts.has(OF) && parts.isGood()) {
            parts.refuse(named ? "label.of-missing" : "label.of-not-here", OF, parts.text(OF));
        }
        String said = (parts.filled(VALUE) + " " + parts.text(UNIT)).strip();
        Look look = look(parts, zone);
        return parts.isGood()
                ? Optional.of(new Line(
                        parts,
                        product.orThrow(),
                        parts.text(CROP).toLowerCase(Locale.ROOT),
                        what,
                        parts.text(OF).toLowerCase(Locale.ROOT),
                        said,
                        look))
                : Optional.empty();
    }

    private static Look look(Parts parts, ZoneId zone) {
        String first = parts.filled(ENTERED_BY);
        Optional<LocalDate> day = parts.filled(ENTERED_ON).isEmpty() ? Optional.empty() : parts.date(ENTERED_ON);
        String second = parts.text(CHECKED_BY);
        Optional<LocalDate> again = parts.date(CHECKED_ON);
        if (second.isEmpty() != again.isEmpty() && parts.isGood()) {
            parts.refuse("label.look-half", second.isEmpty() ? CHECKED_BY : CHECKED_ON, "");
        }
        if (day.isPresent() && again.isPresent() && again.get().isBefore(day.get())) {
            parts.refuse(Problem.of(
                    "label.looked-before-entered",
                    Said.text(CHECKED_ON),
                    Said.of("found.before-entered", "day", again.get()),
                    "day",
                    day.get()));
        }
        var at = day.orElse(LocalDate.EPOCH).atStartOfDay(zone).toInstant();
        return new Look(
                first,
                at,
                second,
                again.map(d -> d.atStartOfDay(zone).toInstant()).orElse(at));
    }

    /** Entries of one product, in the order in which its crops are first named. */
    public static List<LabelEntry> entries(List<Line> lines, Shelf shelf) {
        Set<String> crops = new LinkedHashSet<>();
        lines.stream().map(Line::crop).filter(c -> !c.isEmpty()).forEach(crops::add);
        Line head = lines.get(0);
        if (crops.isEmpty()) {
            head.parts().refuse(Problem.of("label.no-crop", Said.text(CROP), Said.of("found.no-crop")));
        }
        List<LabelEntry> entries = new ArrayList<>();
        for (String of : crops) {
            List<Line> own = lines.stream()
                    .filter(l -> l.crop().isEmpty() || l.crop().equals(of))
                    .toList();
            if (!CropStages.crops().contains(of)) {
                own.get(0).parts().remark(CROP, Said.of("label.stages-unknown", "crop", of));
            }
            if (isOfOneLook(own)) {
                new LabelDraft(shelf.find(head.product()), head.product(), of, own)
                        .entry()
                        .ifPresent(entries::add);
            }
        }
        return entries;
    }

    /** Whether one person read all of it, and one looked again; told of the first line that differs. */
    private static boolean isOfOneLook(List<Line> lines) {
        Look look = lines.get(0).look();
        for (Line line : lines) {
            if (!line.look().equals(look)) {
                line.parts().refuse(Problem.of("label.two-looks", Said.text(ENTERED_BY), Said.of("found.other-look")));
                return false;
            }
        }
        return true;
    }

    public static String words() {
        return Stream.concat(
                        Arrays.stream(LabelItem.values()).map(LabelItem::word),
                        WORDS.stream().sorted())
                .collect(Collectors.joining(", "));
    }

    private static boolean isMass(String said) {
        return Dimension.MASS_RATE
                .findInside(1, said.replaceFirst("[-+0-9.eE]+\\s*", ""))
                .isPresent();
    }

    /** The entry; empty when a row had to be refused. */
    private Optional<LabelEntry> entry() {
        refuseTwice();
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        for (Line line : lines) {
            LabelItem.findByWord(line.what()).ifPresent(i -> figures.put(i, figure(i, line)));
        }
        LabelEntry entry = new LabelEntry(
                new LabelEntry.Title(
                        name, crop, dry, product.map(Product::registration).orElse(""), text("version")),
                clock(),
                actives(),
                figures,
                new LabelEntry.InTank(all("never_with"), all("after")),
                plantBack(),
                lines.get(0).look());
        refuseTurned(entry);
        return lines.stream().allMatch(l -> l.parts().isGood()) ? Optional.of(entry) : Optional.empty();
    }

    private void refuseTwice() {
        Set<String> seen = new HashSet<>();
        for (Line line : lines) {
            String key = line.what() + "|" + line.of() + (MANY.contains(line.what()) ? "|" + line.said() : "");
            if (!seen.add(key) && line.parts().isGood()) {
                line.parts()
                        .refuse(Problem.of(
                                "label.item-twice",
                                Said.text(ITEM),
                                line.of().isEmpty()
                                        ? Said.of("found.second-time", "what", line.what())
                                        : Said.of("found.second-time-of", "what", line.what(), "of", line.of())));
            }
        }
    }

    private LabelFigure figure(LabelItem item, Line line) {
        try {
            LabelFigure figure =
                    item.parse(line.said(), dry, crop, Said.of("where.label", "product", name, "crop", crop));
            refuseImplausible(item, figure, line);
            return figure;
        } catch (EarleafException e) {
            tell(line, e);
            return LabelFigure.NOT_ENTERED;
        }
    }

    private static void refuseImplausible(LabelItem item, LabelFigure figure, Line line) {
        Optional<Measured> most = Ranges.most(item);
        if (figure.isStated()
                && most.isPresent()
                && figure.limit().value() > most.get().value()) {
            refuseOnce(
                    line,
                    Problem.of("label.implausible", Said.text(VALUE), Problem.seen(line.said()), "most", most.get()));
        }
    }

    private static void tell(Line line, EarleafException e) {
        e.problems().forEach(p -> refuseOnce(line, p));
    }

    /** Once for a row, though it counts for several crops. */
    private static void refuseOnce(String code, Line line, Said seen) {
        refuseOnce(line, Problem.of(code, Said.text(line.what()), seen));
    }

    private static void refuseOnce(Line line, Problem problem) {
        if (line.parts().isGood()) {
            line.parts().refuse(problem.at(Said.text(VALUE)));
        }
    }

    private void refuseTurned(LabelEntry entry) {
        for (Problem p : entry.turned()) {
            lines.stream()
                    .filter(l -> LabelItem.findByWord(l.what())
                            .filter(i -> i.equals(p.place().values().get("item")))
                            .isPresent())
                    .forEach(l -> refuseOnce(l, p));
        }
    }

    private Stream<Line> of(String what) {
        return lines.stream().filter(l -> l.what().equals(what));
    }

    private String text(String what) {
        return of(what).map(Line::said).findFirst().orElse("");
    }

    private Set<String> all(String what) {
        return of(what).map(Line::said).collect(Collectors.toCollection(TreeSet::new));
    }

    private Clock clock() {
        for (Line line : of("season_is").toList()) {
            switch (line.said().toLowerCase(Locale.ROOT).replaceAll("\\s+", "-")) {
                case "crop":
                    return Clock.CROP;
                case "calendar-year":
                    return Clock.CALENDAR_YEAR;
                case "365-days":
                    return Clock.DAYS_365;
                default:
                    refuseOnce("label.season-unknown", line, Problem.seen(line.said()));
            }
        }
        return Clock.CROP;
    }

    private Map<String, Double> plantBack() {
        Map<String, Double> days = new TreeMap<>();
        of("plant_back").forEach(line -> {
            LabelFigure figure = figure(LabelItem.INTERVAL, line);
            days.put(line.of(), figure.limit().or(0));
        });
        return days;
    }

    private List<ActiveIngredient> actives() {
        Map<String, List<Line>> byName = new LinkedHashMap<>();
        lines.stream()
                .filter(l -> NAMED.contains(l.what()) && !l.what().equals("plant_back"))
                .forEach(l ->
                        byName.computeIfAbsent(l.of(), k -> new ArrayList<>()).add(l));
        List<ActiveIngredient> actives = new ArrayList<>();
        byName.forEach((active, said) -> actives.add(active(active, said)));
        return actives;
    }

    private ActiveIngredient active(String active, List<Line> said) {
        double content = Double.NaN;
        double counts = 1;
        List<String> groups = new ArrayList<>();
        LabelLimit single = LabelLimit.noneStated();
        LabelLimit season = LabelLimit.noneStated();
        for (Line line : said) {
            switch (line.what()) {
                case "content" -> content = dry ? share(line) : quantity(line, Dimension.DENSITY) / 1000;
                case "counts" -> counts = share(line);
                case "group" -> groups.add(group(line));
                case "active_single" -> single = rate(line);
                default -> season = rate(line);
            }
        }
        if (Double.isNaN(content)) {
            refuseOnce("label.no-content", said.get(0), Said.of("found.no-content", "active", active));
        }
        return new ActiveIngredient(active, content, counts, groups, single, season);
    }

    private static LabelLimit rate(Line line) {
        return line.said().equalsIgnoreCase("none")
                ? LabelLimit.noneStated()
                : LabelLimit.of(quantity(line, Dimension.MASS_RATE));
    }

    private static double share(Line line) {
        double share = quantity(line, Dimension.SHARE);
        if (!(share <= 1)) {
            refuseOnce("label.share-above-all", line, Problem.seen(line.said()));
        }
        return share;
    }

    private static double quantity(Line line, Dimension dimension) {
        try {
            double inside = Quantity.parse(line.said(), dimension, line.what()).inside();
            if (!(inside > 0)) {
                refuseOnce("label.not-above-zero", line, Problem.seen(line.said()));
            }
            return inside;
        } catch (EarleafException e) {
            tell(line, e);
            return Double.NaN;
        }
    }

    private static String group(Line line) {
        String group = line.said().toUpperCase(Locale.ROOT);
        if (!GROUP.matcher(group).matches()) {
            refuseOnce("label.group-unknown", line, Problem.seen(line.said()));
        }
        return group;
    }
}
