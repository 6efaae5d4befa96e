// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
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
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelEntry.Clock;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;
import org.earleaf.mix.MixForm;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/** Puts the rows of one product and crop together to a label entry. */
final class LabelWriter {
    /** Items that speak of an active ingredient, or of a crop that follows. */
    static final Set<String> NAMED =
            Set.of("content", "counts", "group", "active_single", "active_season", "plant_back");

    /** Items beside the figures of {@link LabelItem}. */
    static final Set<String> WORDS = Stream.concat(
                    NAMED.stream(), Stream.of("version", "season_is", "never_with", "after"))
            .collect(Collectors.toUnmodifiableSet());

    /** Items that may stand more than once. */
    private static final Set<String> MANY = Set.of("group", "never_with", "after");

    private static final Pattern GROUP =
            Pattern.compile("(FRAC|IRAC|HRAC) (\\d{1,2}[A-Z]?|M\\d{1,2}|P\\d{1,2}|BM\\d{1,2}|U\\d{1,2}|UN[A-Z]*|NC)");

    private final Optional<Product> product;
    private final String name;
    private final String crop;
    private final List<LabelLine> lines;
    private final boolean dry;

    LabelWriter(Optional<Product> product, String name, String crop, List<LabelLine> lines) {
        this.product = product;
        this.name = name;
        this.crop = crop;
        this.lines = lines;
        dry = product.flatMap(p -> MixForm.find(p.form()))
                .filter(f -> f.isDry() || f.isLiquid())
                .map(MixForm::isDry)
                .orElseGet(() -> lines.stream().anyMatch(l -> l.what().equals("single") && isMass(l.said())));
    }

    static String words() {
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
    Optional<LabelEntry> entry() {
        refuseTwice();
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        for (LabelLine line : lines) {
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
        return lines.stream().allMatch(l -> l.row().isGood()) ? Optional.of(entry) : Optional.empty();
    }

    private void refuseTwice() {
        Set<String> seen = new HashSet<>();
        for (LabelLine line : lines) {
            String key = line.what() + "|" + line.of() + (MANY.contains(line.what()) ? "|" + line.said() : "");
            if (!seen.add(key) && line.row().isGood()) {
                line.refuseSecond();
            }
        }
    }

    private LabelFigure figure(LabelItem item, LabelLine line) {
        try {
            return item.parse(line.said(), dry, crop, Said.of("where.label", "product", name, "crop", crop));
        } catch (EarleafException e) {
            tell(line, e);
            return LabelFigure.NOT_ENTERED;
        }
    }

    private static void tell(LabelLine line, EarleafException e) {
        e.problems().forEach(p -> refuseOnce(line, p));
    }

    /** Once for a row, though it counts for several crops. */
    private static void refuseOnce(String code, LabelLine line, Said seen) {
        refuseOnce(line, Problem.of(code, Said.text(line.what()), seen));
    }

    private static void refuseOnce(LabelLine line, Problem problem) {
        if (line.row().isGood()) {
            line.refuse(problem);
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

    private Stream<LabelLine> of(String what) {
        return lines.stream().filter(l -> l.what().equals(what));
    }

    private String text(String what) {
        return of(what).map(LabelLine::said).findFirst().orElse("");
    }

    private Set<String> all(String what) {
        return of(what).map(LabelLine::said).collect(Collectors.toCollection(TreeSet::new));
    }

    private Clock clock() {
        for (LabelLine line : of("season_is").toList()) {
            switch (line.said().toLowerCase(Locale.ROOT)) {
                case "crop":
                    return Clock.CROP;
                case "calendar year":
                    return Clock.CALENDAR_YEAR;
                case "365 days":
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
        Map<String, List<LabelLine>> byName = new LinkedHashMap<>();
        lines.stream()
                .filter(l -> NAMED.contains(l.what()) && !l.what().equals("plant_back"))
                .forEach(l ->
                        byName.computeIfAbsent(l.of(), k -> new ArrayList<>()).add(l));
        List<ActiveIngredient> actives = new ArrayList<>();
        byName.forEach((active, said) -> actives.add(active(active, said)));
        return actives;
    }

    private ActiveIngredient active(String active, List<LabelLine> said) {
        double content = Double.NaN;
        double counts = 1;
        List<String> groups = new ArrayList<>();
        LabelLimit single = LabelLimit.noneStated();
        LabelLimit season = LabelLimit.noneStated();
        for (LabelLine line : said) {
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

    private static LabelLimit rate(LabelLine line) {
        return line.said().equalsIgnoreCase("none")
                ? LabelLimit.noneStated()
                : LabelLimit.of(quantity(line, Dimension.MASS_RATE));
    }

    private static double share(LabelLine line) {
        double share = quantity(line, Dimension.SHARE);
        if (!(share <= 1)) {
            refuseOnce("label.share-above-all", line, Problem.seen(line.said()));
        }
        return share;
    }

    private static double quantity(LabelLine line, Dimension dimension) {
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

    private static String group(LabelLine line) {
        String group = line.said().toUpperCase(Locale.ROOT);
        if (!GROUP.matcher(group).matches()) {
            refuseOnce("label.group-unknown", line, Problem.seen(line.said()));
        }
        return group;
    }
}
