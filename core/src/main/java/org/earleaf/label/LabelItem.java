// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Figure;
import org.earleaf.units.NumberText;
import org.earleaf.units.Quantity;
import org.earleaf.units.Units;

/** One thing that a label may limit: what it is, how it is written, and whether the figure is a most or a least. */
public enum LabelItem {
    SINGLE("most in one pass", Kind.PRODUCT, Bound.MOST, true),
    LEAST("least in one pass", Kind.PRODUCT, Bound.LEAST, false),
    SEASON("most in a season", Kind.PRODUCT, Bound.MOST, true),
    PASSES("most passes in a season", Kind.COUNT, Bound.MOST, true),
    GROUP_RUN("most passes in a row with one mode-of-action group", Kind.COUNT, Bound.MOST, false),
    INTERVAL("days between passes", Kind.DAYS, Bound.LEAST, true),
    HARVEST("days before harvest", Kind.DAYS, Bound.LEAST, true),
    GRAZING("days before grazing or cutting for forage", Kind.DAYS, Bound.LEAST, false),
    REENTRY("hours until re-entry", Kind.HOURS, Bound.LEAST, true),
    FIRST_STAGE("earliest stage", Kind.STAGE, Bound.LEAST, true),
    LAST_STAGE("latest stage", Kind.STAGE, Bound.MOST, true),
    HEIGHT("greatest crop height", Kind.LENGTH, Bound.MOST, false),
    CARRIER("least finished spray", Kind.CARRIER, Bound.LEAST, false),
    FINEST("finest droplets", Kind.DROPLETS, Bound.LEAST, true),
    COARSEST("coarsest droplets", Kind.DROPLETS, Bound.MOST, false),
    WIND_LEAST("least wind", Kind.SPEED, Bound.LEAST, true),
    WIND_MOST("greatest wind", Kind.SPEED, Bound.MOST, true),
    AIR_MOST("greatest air temperature", Kind.TEMPERATURE, Bound.MOST, true),
    INVERSION("whether inversions are forbidden", Kind.YES_NO, Bound.MOST, true),
    RAINFAST("hours without rain after the pass", Kind.HOURS, Bound.LEAST, true),
    BOOM("greatest height of outlets over the crop", Kind.LENGTH, Bound.MOST, true),
    SPEED("greatest speed", Kind.SPEED, Bound.MOST, false),
    WATER("distance to water", Kind.LENGTH, Bound.LEAST, true),
    SENSITIVE("distance to what it hurts", Kind.LENGTH, Bound.LEAST, true),
    NITROGEN_CARRIER("whether nitrogen solution may carry it", Kind.YES_NO, Bound.MOST, false),
    BY_AIR("whether it may go on from the air", Kind.YES_NO, Bound.MOST, false),
    RESTRICTED("whether it is for certified applicators only", Kind.YES_NO, Bound.LEAST, true);

    private static final Pattern NUMBER = Pattern.compile("([0-9.,]+)\\s*(.*)");
    private static final double LHA_PER_M3M2 = 1e7;
    private static final int MOST_MPH = 40;
    private static final int MOST_AIR_C = 55;
    private static final int MOST_RAINFAST_H = 72;
    private static final int MOST_DAYS = 365;
    private static final int HOURS_PER_DAY = 24;

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

    private final String words;
    private final Kind kind;
    private final Bound bound;
    private final boolean needed;

    LabelItem(String words, Kind kind, Bound bound, boolean needed) {
        this.words = words;
        this.kind = kind;
        this.bound = bound;
        this.needed = needed;
    }

    public String words() {
        return words;
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
    public String example(boolean dry, String crop) {
        return switch (kind) {
            case PRODUCT -> dry ? "2 oz/ac" : "12 fl oz/ac";
            case COUNT -> "2";
            case DAYS -> "14 days";
            case HOURS -> "12 h";
            case STAGE -> CropStages.words(crop);
            case LENGTH -> "24 in";
            case CARRIER -> "10 gal/ac";
            case DROPLETS -> DropletClass.words();
            case SPEED -> "10 mph";
            case TEMPERATURE -> "90 °F";
            case YES_NO -> "yes or no";
        };
    }

    /**
     * Reads what a person copied from a label.
     *
     * @param text empty: not entered; "none": the label states none
     * @param dry whether the product is measured by weight
     * @param where product and crop, for messages
     */
    public LabelFigure parse(String text, boolean dry, String crop, String where) {
        String said = text.strip();
        if (said.isEmpty()) {
            return LabelFigure.NOT_ENTERED;
        }
        if (said.equalsIgnoreCase("none") && kind != Kind.YES_NO) {
            return new LabelFigure(LabelLimit.noneStated(), "none");
        }
        double inside = inside(said, dry, crop, where);
        if (!(inside <= plausible())) {
            throw EarleafException.of(
                    where + ", " + words, said, "0 to " + plausibleText(), "Check the number and its unit.");
        }
        return new LabelFigure(LabelLimit.of(inside), said);
    }

    /** Beyond this it is a slip of the pen; common practice, no source. */
    private double plausible() {
        return switch (this) {
            case WIND_LEAST, WIND_MOST, SPEED -> MOST_MPH * Units.MS_PER_MPH;
            case AIR_MOST -> MOST_AIR_C;
            case RAINFAST -> MOST_RAINFAST_H;
            case INTERVAL, HARVEST, GRAZING -> MOST_DAYS;
            case REENTRY -> MOST_DAYS * HOURS_PER_DAY;
            default -> Double.POSITIVE_INFINITY;
        };
    }

    private String plausibleText() {
        return switch (kind) {
            case SPEED -> MOST_MPH + " mph";
            case TEMPERATURE -> MOST_AIR_C + " C";
            default -> Figure.text(plausible(), 4) + (kind == Kind.HOURS ? " h" : " days");
        };
    }

    private double inside(String said, boolean dry, String crop, String where) {
        return switch (kind) {
            case PRODUCT ->
                dry
                        ? quantity(said, Dimension.MASS_RATE, where)
                        : quantity(said, Dimension.VOLUME_RATE, where) * LHA_PER_M3M2;
            case CARRIER -> quantity(said, Dimension.VOLUME_RATE, where) * LHA_PER_M3M2;
            case LENGTH -> quantity(said, Dimension.LENGTH, where);
            case SPEED -> quantity(said, Dimension.SPEED, where);
            case TEMPERATURE ->
                Quantity.parse(said, Dimension.TEMPERATURE, where + ", " + words)
                        .inside();
            case COUNT -> count(said, "", dry, crop, where);
            case DAYS -> count(said, "d|day|days", dry, crop, where);
            case HOURS -> count(said, "h|hour|hours", dry, crop, where);
            case STAGE -> CropStages.find(crop, said).orElseThrow(() -> wrong(said, dry, crop, where));
            case DROPLETS ->
                DropletClass.find(said).map(c -> (double) c.ordinal()).orElseThrow(() -> wrong(said, dry, crop, where));
            case YES_NO -> yesNo(said, dry, crop, where);
        };
    }

    private double quantity(String said, Dimension dimension, String where) {
        Quantity q = Quantity.parse(said, dimension, where + ", " + words);
        if (!(q.inside() >= 0)) {
            throw EarleafException.of(where + ", " + words, said, "0 or more", "Copy it from the label.");
        }
        return q.inside();
    }

    private double count(String said, String units, boolean dry, String crop, String where) {
        Matcher m = NUMBER.matcher(said.toLowerCase(Locale.ROOT));
        if (!m.matches() || !(m.group(2).isEmpty() || m.group(2).matches(units))) {
            throw wrong(said, dry, crop, where);
        }
        return NumberText.read(m.group(1), where + ", " + words);
    }

    private double yesNo(String said, boolean dry, String crop, String where) {
        return switch (said.toLowerCase(Locale.ROOT)) {
            case "yes" -> 1;
            case "no" -> 0;
            default -> throw wrong(said, dry, crop, where);
        };
    }

    private EarleafException wrong(String said, boolean dry, String crop, String where) {
        return EarleafException.of(
                where + ", " + words,
                "\"" + said + "\"",
                example(dry, crop) + (kind == Kind.YES_NO ? "" : ", or none where the label states none"),
                "Copy it from the label.");
    }
}
