// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.web.view.ReadingKinds;
import org.earleaf.entry.Draft;
import org.earleaf.entry.Plots;
import org.earleaf.entry.ReadingEntry;
import org.earleaf.farm.Farm;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.units.EarleafException;
import org.earleaf.units.NumberText;
import org.jspecify.annotations.Nullable;

/**
 * A reading as it stands in the form: text, until {@link #reading} makes sense of it.
 *
 * @param value number, or a stage; a unit written behind the number goes before {@code unit}
 * @param depth "0-305", upper and lower depth in mm, for soil
 * @param found disease or insect; this and the next three for a count of plants
 * @param leaf highest leaf with lesions, from the ear leaf
 * @param ladyBeetles natural enemies of aphids on a plant, likewise the next two
 * @param aboveThreshold "yes" of another insect found above its threshold
 */
public record ReadingForm(
        @Nullable String place,
        @Nullable String kind,
        @Nullable String value,
        @Nullable String unit,
        @Nullable String date,
        @Nullable String depth,
        @Nullable String position,
        @Nullable String note,
        @Nullable String found,
        @Nullable String positive,
        @Nullable String plants,
        @Nullable String leaf,
        @Nullable String ladyBeetles,
        @Nullable String lacewings,
        @Nullable String mummies,
        @Nullable String aboveThreshold) {
    private static final Pattern STAGE = Pattern.compile("(?i)\\s*V?(\\d{1,2})\\s*");

    /** Text of a field, empty when it was not sent. */
    static String text(@Nullable String sent) {
        return sent == null ? "" : sent.strip();
    }

    /** The same form for another field and kind. */
    ReadingForm of(String elsewhere, String other) {
        return with(elsewhere, other, value);
    }

    Reading.Kind kindRead() {
        return Reading.Kind.findByWord(text(kind)).orElse(Reading.Kind.NITRATE);
    }

    /** The same form with its number one step up or down; from {@code start} when it is empty. */
    ReadingForm stepped(int steps, String start) {
        String from = text(value).isEmpty() ? start : text(value);
        String next = kindRead() == Reading.Kind.STAGE ? steppedStage(from, steps) : steppedNumber(from, steps);
        return with(place, kind, next);
    }

    private ReadingForm with(@Nullable String elsewhere, @Nullable String other, @Nullable String next) {
        return new ReadingForm(
                elsewhere,
                other,
                next,
                unit,
                date,
                depth,
                position,
                note,
                found,
                positive,
                plants,
                leaf,
                ladyBeetles,
                lacewings,
                mummies,
                aboveThreshold);
    }

    private static String steppedStage(String from, int steps) {
        Matcher m = STAGE.matcher(from);
        if (!m.matches()) {
            return from;
        }
        int leaf = Integer.parseInt(m.group(1)) + steps;
        return "V" + (leaf < 1 ? 1 : leaf > 24 ? 24 : leaf);
    }

    private String steppedNumber(String from, int steps) {
        BigDecimal step = new BigDecimal(ReadingKinds.step(kindRead(), text(unit)));
        try {
            BigDecimal next = new BigDecimal(NumberText.plain(from, "value")).add(step.multiply(BigDecimal.valueOf(steps)));
            return next.signum() < 0 ? "0" : next.toPlainString();
        } catch (EarleafException notANumber) {
            return from;
        }
    }

    /** The reading meant; refused with what to do when it is not one. */
    Reading reading(Zone zone, Farm farm, LocalDate today) {
        return ReadingEntry.of(draft(zone), Plots.of(farm), Optional.of(today)).orThrow();
    }

    /** The boxes of the kind that is asked for; those of another kind are not looked at. */
    private Draft draft(Zone zone) {
        Reading.Kind what = kindRead();
        Draft draft = Draft.of(
                "field", zone.field(),
                "zone", zone.zone(),
                "kind", what.word(),
                "value", text(value),
                "unit", what == Reading.Kind.STAGE ? "" : text(unit),
                "date", text(date),
                "note", text(note));
        if (what.isOfSoil()) {
            String[] ends = (text(depth).isEmpty() ? ReadingKinds.USUAL_DEPTH : text(depth)).split("-", 2);
            return Draft.of(
                            "top", ends[0] + " mm",
                            "bottom", (ends.length > 1 ? ends[1] : "") + " mm",
                            "position", text(position))
                    .or(draft);
        }
        Draft counted = Draft.of("found", text(found), "positive", text(positive), "plants", text(plants));
        Draft insects = Draft.of(
                "lady_beetles", text(ladyBeetles),
                "lacewings", text(lacewings),
                "mummies", text(mummies),
                "above_threshold", text(aboveThreshold));
        return switch (what) {
            case LESIONS -> counted.with("leaf", text(leaf)).or(draft);
            case INSECTS -> counted.or(insects).or(draft);
            default -> draft;
        };
    }
}
