// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * What the label of a product says for one crop, as people copied it. It counts only after a second look: by another
 * person, or by the one who entered it doing so again from the label; which of the two is kept.
 *
 * @param clock what "a season" is on this label
 * @param actives what works in it
 * @param figures what is entered; an item that is missing was not entered
 * @param plantBack_d days from the last pass until another crop may be planted there, by crop
 * @param look who entered it and who looked again
 */
public record LabelEntry(
        Title title,
        Clock clock,
        List<ActiveIngredient> actives,
        Map<LabelItem, LabelFigure> figures,
        InTank inTank,
        Map<String, Double> plantBack_d,
        Look look) {
    /**
     * Which label it is.
     *
     * @param dry whether the product is measured by weight
     * @param registration number on the label
     * @param version of the label, as printed on it
     */
    public record Title(String product, String crop, boolean dry, String registration, String version) {}

    /**
     * What it says of other products in the tank.
     *
     * @param neverWith products, active ingredients or groups that may not be in the same tank
     * @param after products or classes that must be in the tank before it
     */
    public record InTank(Set<String> neverWith, Set<String> after) {
        public static final InTank NOTHING = new InTank(Set.of(), Set.of());

        public InTank {
            neverWith = Collections.unmodifiableSet(new TreeSet<>(neverWith));
            after = Collections.unmodifiableSet(new TreeSet<>(after));
        }
    }

    /** What "a season" means on a label. */
    public enum Clock {
        /** From the last crop's end to this one's. */
        CROP,
        CALENDAR_YEAR,
        /** Any 365 days. */
        DAYS_365
    }

    /**
     * Who entered it and who looked again.
     *
     * @param checkedBy empty: nobody yet
     */
    public record Look(String enteredBy, Instant entered, String checkedBy, Instant checked) {
        public static Look first(String person, Instant at) {
            return new Look(person, at, "", at);
        }

        public boolean isDone() {
            return !checkedBy.isBlank();
        }

        /** Whether both looks were one person's. */
        public boolean isSingle() {
            return isDone() && samePerson(enteredBy, checkedBy);
        }
    }

    /** How a product is measured. */
    private enum Form {
        DRY,
        LIQUID
    }

    /** What an entry says beside its figures. */
    public enum Part {
        REGISTRATION,
        VERSION,
        SEASON_CLOCK,
        ACTIVES,
        NEVER_WITH,
        AFTER,
        PLANT_BACK,
        FORM
    }

    private static final double KGM3_PER_KGL = 1000;

    public LabelEntry {
        actives = List.copyOf(actives);
        EnumMap<LabelItem, LabelFigure> sorted = new EnumMap<>(LabelItem.class);
        sorted.putAll(figures);
        sorted.values().removeIf(f -> !f.isEntered());
        figures = Collections.unmodifiableMap(sorted);
        plantBack_d = Collections.unmodifiableMap(new TreeMap<>(plantBack_d));
    }

    public String product() {
        return title.product();
    }

    public String crop() {
        return title.crop();
    }

    public boolean dry() {
        return title.dry();
    }

    public String registration() {
        return title.registration();
    }

    public String version() {
        return title.version();
    }

    public Set<String> neverWith() {
        return inTank.neverWith();
    }

    public Set<String> after() {
        return inTank.after();
    }

    public LabelLimit limit(LabelItem item) {
        return figure(item).limit();
    }

    /** Pairs of figures that stand the wrong way round: a least above the most. */
    public List<Problem> turned() {
        List<Problem> problems = new ArrayList<>();
        turned(problems, LabelItem.LEAST, LabelItem.SINGLE);
        turned(problems, LabelItem.FIRST_STAGE, LabelItem.LAST_STAGE);
        turned(problems, LabelItem.FINEST, LabelItem.COARSEST);
        turned(problems, LabelItem.WIND_LEAST, LabelItem.WIND_MOST);
        return problems;
    }

    private void turned(List<Problem> problems, LabelItem least, LabelItem most) {
        if (limit(least).or(Double.NEGATIVE_INFINITY) > limit(most).or(Double.POSITIVE_INFINITY)) {
            problems.add(Problem.of(
                    "label.turned",
                    Said.of("where.label-item", "label", where(), "item", most),
                    Said.of(
                            "found.below-least",
                            "most",
                            figure(most).entered(),
                            "item",
                            least,
                            "least",
                            figure(least).entered())));
        }
    }

    public LabelFigure figure(LabelItem item) {
        return Objects.requireNonNullElse(figures.get(item), LabelFigure.NOT_ENTERED);
    }

    /** Needed items that nobody has looked up. */
    public List<LabelItem> missing() {
        List<LabelItem> missing = new ArrayList<>();
        for (LabelItem item : LabelItem.values()) {
            if (item.isNeeded() && !figure(item).isEntered()) {
                missing.add(item);
            }
        }
        return missing;
    }

    public boolean isFor(String otherProduct, String otherCrop) {
        return product().equalsIgnoreCase(otherProduct.strip()) && crop().equalsIgnoreCase(otherCrop.strip());
    }

    /** Another person has held it against the label. */
    public LabelEntry checkedBy(String person, Instant at) {
        if (person.isBlank()) {
            throw new EarleafException(
                    Problem.of("label.second-look-unnamed", secondLook(), Said.of("found.no-person")));
        }
        if (samePerson(person, look.enteredBy())) {
            throw new EarleafException(Problem.of(
                    "label.second-look-same", secondLook(), Said.of("found.who-entered-it", "person", person)));
        }
        return looked(person, at);
    }

    /** The one who entered it did so again; refused where the two entries differ, naming each difference. */
    public LabelEntry enteredAgain(LabelEntry again) {
        List<Problem> problems = new ArrayList<>();
        for (LabelItem item : LabelItem.values()) {
            if (!figure(item).isSameAs(again.figure(item))) {
                differ(
                        problems,
                        item,
                        figure(item).entered(),
                        again.figure(item).entered());
            }
        }
        differ(problems, Part.REGISTRATION, registration(), again.registration());
        differ(problems, Part.VERSION, version(), again.version());
        differ(problems, Part.SEASON_CLOCK, clock, again.clock);
        differ(problems, Part.ACTIVES, actives, again.actives);
        differ(problems, Part.NEVER_WITH, neverWith(), again.neverWith());
        differ(problems, Part.AFTER, after(), again.after());
        differ(problems, Part.PLANT_BACK, plantBack_d, again.plantBack_d);
        differ(problems, Part.FORM, form(), again.form());
        if (!problems.isEmpty()) {
            throw new EarleafException(problems);
        }
        return looked(again.look().enteredBy(), again.look().entered());
    }

    private void differ(List<Problem> problems, Enum<?> what, Object first, Object second) {
        if (!first.equals(second)) {
            problems.add(Problem.of(
                    "label.differs",
                    Said.of("where.label-item", "label", where(), "item", what),
                    told(second),
                    "first",
                    told(first)));
        }
    }

    private Form form() {
        return dry() ? Form.DRY : Form.LIQUID;
    }

    private Said where() {
        return Said.of("where.label", "product", product(), "crop", crop());
    }

    private Said secondLook() {
        return Said.of("where.second-look", "product", product(), "crop", crop());
    }

    private Said told(Object value) {
        if (value instanceof Map<?, ?> days) {
            return several(days.entrySet());
        }
        if (value instanceof Collection<?> several) {
            return several(several);
        }
        if (value instanceof Map.Entry<?, ?> wait) {
            double days = ((Number) wait.getValue()).doubleValue();
            return Said.of("label.plant-back", "crop", String.valueOf(wait.getKey()), "days", Measure.DAYS.of(days));
        }
        if (value instanceof ActiveIngredient a) {
            Measured content = dry() ? Measure.SHARE.of(a.content()) : Measure.DENSITY.of(a.content() * KGM3_PER_KGL);
            return a.groups().isEmpty()
                    ? Said.of("label.active", "name", a.name(), "content", content)
                    : Said.of("label.active-groups", "name", a.name(), "content", content, "groups", a.groups());
        }
        if (value instanceof Enum<?> constant) {
            return Said.of("label.constant", "constant", constant);
        }
        return value.toString().isEmpty() ? Said.of("found.nothing") : Said.text(value.toString());
    }

    private Said several(Collection<?> values) {
        return values.isEmpty()
                ? Said.of("found.nothing")
                : Said.of(
                        "label.several",
                        "parts",
                        values.stream().map(this::told).toList());
    }

    private LabelEntry looked(String person, Instant at) {
        Look both = new Look(look.enteredBy(), look.entered(), person, at);
        return new LabelEntry(title, clock, actives, figures, inTank, plantBack_d, both);
    }

    static boolean samePerson(String one, String other) {
        return one.strip().equalsIgnoreCase(other.strip());
    }
}
