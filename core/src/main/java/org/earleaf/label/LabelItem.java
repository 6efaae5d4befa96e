// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.NumberText;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/** One thing that a label may limit: what it is, how it is written, and whether the figure is a most or a least. */
public enum LabelItem {
    SINGLE(Kind.PRODUCT, Bound.MOST, true),
    LEAST(Kind.PRODUCT, Bound.LEAST, false),
    SEASON(Kind.PRODUCT, Bound.MOST, true),
    PASSES(Kind.COUNT, Bound.MOST, true),
    GROUP_RUN(Kind.COUNT, Bound.MOST, false),
    INTERVAL(Kind.DAYS, Bound.LEAST, true),
    HARVEST(Kind.DAYS, Bound.LEAST, true),
    GRAZING(Kind.DAYS, Bound.LEAST, false),
    REENTRY(Kind.HOURS, Bound.LEAST, true),
    FIRST_STAGE(Kind.STAGE, Bound.LEAST, true),
    LAST_STAGE(Kind.STAGE, Bound.MOST, true),
    HEIGHT(Kind.LENGTH, Bound.MOST, false),
    CARRIER(Kind.CARRIER, Bound.LEAST, false),
    FINEST(Kind.DROPLETS, Bound.LEAST, true),
    COARSEST(Kind.DROPLETS, Bound.MOST, false),
    WIND_LEAST(Kind.SPEED, Bound.LEAST, true),
    WIND_MOST(Kind.SPEED, Bound.MOST, true),
    AIR_MOST(Kind.TEMPERATURE, Bound.MOST, true),
    INVERSION(Kind.YES_NO, Bound.MOST, true),
    RAINFAST(Kind.HOURS, Bound.LEAST, true),
    BOOM(Kind.LENGTH, Bound.MOST, true),
    SPEED(Kind.SPEED, Bound.MOST, false),
    WATER(Kind.LENGTH, Bound.LEAST, true),
    SENSITIVE(Kind.LENGTH, Bound.LEAST, true),
    NITROGEN_CARRIER(Kind.YES_NO, Bound.MOST, false),
    BY_AIR(Kind.YES_NO, Bound.MOST, false),
    RESTRICTED(Kind.YES_NO, Bound.LEAST, true);

    private static final Pattern NUMBER = Pattern.compile("([0-9.,]+)\\s*(.*)");
    private static final double LHA_PER_M3M2 = 1e7;

    /** How an item is written. */
    public enum Kind {
        PRODUCT,
        COUNT,
        DAYS,
        HOURS,
        STAGE,
        LENGTH,
        CARRIER,
        DROPLETS,
        SPEED,
        TEMPERATURE,
        YES_NO
    }

    /** Whether what is planned may be at most or must be at least the figure. */
    public enum Bound {
        MOST,
        LEAST
    }

    private final Kind kind;
    private final Bound bound;
    private final boolean needed;

    LabelItem(Kind kind, Bound bound, boolean needed) {
        this.kind = kind;
        this.bound = bound;
        this.needed = needed;
    }

    /** The word in files and stores. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public Kind kind() {
        return kind;
    }

    public Bound bound() {
        return bound;
    }

    /** Whether nothing may be planned before it was looked up; "none" is an answer. */
    public boolean isNeeded() {
        return needed;
    }

    /** Whether it is judged in the air of the day and not before. */
    public boolean isOfAir() {
        return this == WIND_LEAST || this == WIND_MOST || this == AIR_MOST || this == INVERSION || this == RAINFAST;
    }

    public static Optional<LabelItem> findByWord(String word) {
        return Arrays.stream(values())
                .filter(item -> item.word().equals(word.strip().toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /** An example, for hints and messages. */
    public Said example(boolean dry, String crop) {
        return switch (kind) {
            case PRODUCT -> dry ? Said.of("label.example.dry") : Said.of("label.example.liquid");
            case COUNT -> Said.of("label.example.count");
            case DAYS -> Said.of("label.example.days");
            case HOURS -> Said.of("label.example.hours");
            case STAGE -> Said.of("label.example.stage", "stages", CropStages.said(crop));
            case LENGTH -> Said.of("label.example.length");
            case CARRIER -> Said.of("label.example.carrier");
            case DROPLETS -> Said.of("label.example.droplets", "classes", DropletClass.letters());
            case SPEED -> Said.of("label.example.speed");
            case TEMPERATURE -> Said.of("label.example.temperature");
            case YES_NO -> Said.of("label.example.yes-no");
        };
    }

    /**
     * Reads what a person copied from a label.
     *
     * @param text empty: not entered; "none": the label states none
     * @param dry whether the product is measured by weight
     * @param where product and crop, for messages
     */
    public LabelFigure parse(String text, boolean dry, String crop, Said where) {
        String said = text.strip();
        if (said.isEmpty()) {
            return LabelFigure.NOT_ENTERED;
        }
        if (said.equalsIgnoreCase("none") && kind != Kind.YES_NO) {
            return new LabelFigure(LabelLimit.noneStated(), "none");
        }
        Said place = Said.of("where.label-item", "label", where, "item", this);
        double inside = inside(said, dry, crop, place);
        return new LabelFigure(LabelLimit.of(inside), said);
    }

    private double inside(String said, boolean dry, String crop, Said where) {
        return switch (kind) {
            case PRODUCT ->
                dry
                        ? quantity(said, Dimension.MASS_RATE, where)
                        : quantity(said, Dimension.VOLUME_RATE, where) * LHA_PER_M3M2;
            case CARRIER -> quantity(said, Dimension.VOLUME_RATE, where) * LHA_PER_M3M2;
            case LENGTH -> quantity(said, Dimension.LENGTH, where);
            case SPEED -> quantity(said, Dimension.SPEED, where);
            case TEMPERATURE -> read(said, Dimension.TEMPERATURE, where);
            case COUNT -> count(said, "", dry, crop, where);
            case DAYS -> count(said, "d|day|days", dry, crop, where);
            case HOURS -> count(said, "h|hour|hours", dry, crop, where);
            case STAGE -> CropStages.find(crop, said).orElseThrow(() -> wrong(said, dry, crop, where));
            case DROPLETS ->
                DropletClass.find(said).map(c -> (double) c.ordinal()).orElseThrow(() -> wrong(said, dry, crop, where));
            case YES_NO -> yesNo(said, dry, crop, where);
        };
    }

    private static double quantity(String said, Dimension dimension, Said where) {
        double inside = read(said, dimension, where);
        if (!(inside >= 0)) {
            throw new EarleafException(Problem.of("label.below-zero", where, Said.text(said)));
        }
        return inside;
    }

    private static double read(String said, Dimension dimension, Said where) {
        try {
            return Quantity.parse(said, dimension, "").inside();
        } catch (EarleafException e) {
            throw e.at(where);
        }
    }

    private double count(String said, String units, boolean dry, String crop, Said where) {
        Matcher m = NUMBER.matcher(said.toLowerCase(Locale.ROOT));
        if (!m.matches() || !(m.group(2).isEmpty() || m.group(2).matches(units))) {
            throw wrong(said, dry, crop, where);
        }
        return number(m.group(1), where);
    }

    private static double number(String said, Said where) {
        try {
            return NumberText.read(said, "");
        } catch (EarleafException e) {
            throw e.at(where);
        }
    }

    private double yesNo(String said, boolean dry, String crop, Said where) {
        return switch (said.toLowerCase(Locale.ROOT)) {
            case "yes" -> 1;
            case "no" -> 0;
            default -> throw wrong(said, dry, crop, where);
        };
    }

    private EarleafException wrong(String said, boolean dry, String crop, Said where) {
        return new EarleafException(
                kind == Kind.YES_NO
                        ? Problem.of("label.not-yes-or-no", where, Said.text(said))
                        : Problem.of("label.unreadable", where, Said.text(said), "example", example(dry, crop)));
    }
}
