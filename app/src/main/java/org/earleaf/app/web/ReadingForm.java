// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
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
 * @param sent what stands in each box, by its name
 */
public record ReadingForm(Map<String, String> sent) {
    private static final Pattern STAGE = Pattern.compile("(?i)\\s*V?(\\d{1,2})\\s*");

    /** Text of a field, empty when it was not sent. */
    static String text(@Nullable String sent) {
        return sent == null ? "" : sent.strip();
    }

    public @Nullable String place() {
        return sent.get("place");
    }

    public @Nullable String kind() {
        return sent.get("kind");
    }

    /** A number, or a stage; a unit written behind the number goes before the one beside the box. */
    public @Nullable String value() {
        return sent.get("value");
    }

    public @Nullable String date() {
        return sent.get("date");
    }

    /** "0-305": upper and lower depth in mm, for soil. */
    public @Nullable String depth() {
        return sent.get("depth");
    }

    /** What stands in any other box. */
    public @Nullable String box(String name) {
        return sent.get(name);
    }

    private String said(String name) {
        return text(sent.get(name));
    }

    /** The same form for another field and kind. */
    ReadingForm of(String elsewhere, String other) {
        return with("place", elsewhere).with("kind", other);
    }

    private ReadingForm with(String name, String said) {
        Map<String, String> all = new HashMap<>(sent);
        all.put(name, said);
        return new ReadingForm(all);
    }

    Reading.Kind kindRead() {
        return Reading.Kind.findByWord(said("kind")).orElse(Reading.Kind.NITRATE);
    }

    /** The same form with its number one step up or down; from {@code start} when it is empty. */
    ReadingForm stepped(int steps, String start) {
        String from = said("value").isEmpty() ? start : said("value");
        boolean stage = kindRead() == Reading.Kind.STAGE;
        return with("value", stage ? steppedStage(from, steps) : steppedNumber(from, steps));
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
        BigDecimal step = new BigDecimal(ReadingKinds.step(kindRead(), said("unit")));
        try {
            BigDecimal next =
                    new BigDecimal(NumberText.plain(from, "value")).add(step.multiply(BigDecimal.valueOf(steps)));
            return next.signum() < 0 ? "0" : next.toPlainString();
        } catch (EarleafException notANumber) {
            return from;
        }
    }

    /** The reading meant; refused with what to do when it is not one. */
    Reading reading(Zone zone, Farm farm, LocalDate today) {
        return ReadingEntry.of(draft(zone), Plots.of(farm), Optional.of(today))
                .orThrow(said("sure").equals("yes"));
    }

    /** The boxes of the kind that is asked for; those of another kind are not looked at. */
    private Draft draft(Zone zone) {
        Reading.Kind what = kindRead();
        Draft draft = Draft.of(
                "field", zone.field(),
                "zone", zone.zone(),
                "kind", said("kind").isEmpty() ? what.word() : said("kind"),
                "value", said("value"),
                "unit", what == Reading.Kind.STAGE ? "" : said("unit"),
                "date", said("date"),
                "note", said("note"));
        if (what.isOfSoil()) {
            String[] ends = (said("depth").isEmpty() ? ReadingKinds.USUAL_DEPTH : said("depth")).split("-", 2);
            return Draft.of(
                            "top", ends[0] + " mm",
                            "bottom", (ends.length > 1 ? ends[1] : "") + " mm",
                            "position", said("position"))
                    .or(draft);
        }
        Draft counted = Draft.of("found", said("found"), "positive", said("positive"), "plants", said("plants"));
        Draft insects = Draft.of(
                "lady_beetles", said("ladyBeetles"),
                "lacewings", said("lacewings"),
                "mummies", said("mummies"),
                "above_threshold", said("aboveThreshold"));
        return switch (what) {
            case LESIONS -> counted.with("leaf", said("leaf")).or(draft);
            case INSECTS -> counted.or(insects).or(draft);
            default -> draft;
        };
    }
}
