// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.app.web.view.ReadingKinds;
import org.earleaf.field.Incidence;
import org.earleaf.field.Observed;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.ScoutingCount;
import org.earleaf.field.Zone;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.EarleafException;
import org.jspecify.annotations.Nullable;

/**
 * A reading as it stands in the form: text, until {@link #reading} makes sense of it.
 *
 * @param value number, or a stage; a unit written behind the number goes before {@code unit}
 * @param depth "0-305", upper and lower depth in mm, for soil
 * @param found disease or insect; this and the next three for a count of plants
 * @param leaf highest leaf with lesions, from the ear leaf
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
        @Nullable String leaf) {
    private static final Pattern NUMBER_UNIT = Pattern.compile("\\s*([-+]?[\\d.,]+)\\s*([^\\d\\s].*?)?\\s*");
    private static final Pattern STAGE = Pattern.compile("(?i)\\s*V?(\\d{1,2})\\s*");

    private static final double[] NO_DEPTH = {Double.NaN, Double.NaN};

    /** Text of a field, empty when it was not sent. */
    static String text(@Nullable String sent) {
        return sent == null ? "" : sent.strip();
    }

    /** The same form for another field and kind. */
    ReadingForm of(String elsewhere, String other) {
        return new ReadingForm(
                elsewhere, other, value, unit, date, depth, position, note, found, positive, plants, leaf);
    }

    Reading.Kind kindRead() {
        return Reading.Kind.findByWord(text(kind)).orElse(Reading.Kind.NITRATE);
    }

    /** The same form with its number one step up or down; from {@code start} when it is empty. */
    ReadingForm stepped(int steps, String start) {
        String from = text(value).isEmpty() ? start : text(value);
        String next = kindRead() == Reading.Kind.STAGE ? steppedStage(from, steps) : steppedNumber(from, steps);
        return new ReadingForm(place, kind, next, unit, date, depth, position, note, found, positive, plants, leaf);
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
            BigDecimal next = new BigDecimal(from.replace(",", "")).add(step.multiply(BigDecimal.valueOf(steps)));
            return next.signum() < 0 ? "0" : next.toPlainString();
        } catch (NumberFormatException notANumber) {
            return from;
        }
    }

    /** The reading meant; refused with what to do when it is not one. */
    Reading reading(Zone zone, LocalDate today) {
        Reading.Kind what = kindRead();
        Matcher m = NUMBER_UNIT.matcher(text(value));
        boolean hasUnit = m.matches() && m.group(2) != null;
        String number = m.matches() ? m.group(1).replace(",", "") : text(value);
        String written = hasUnit ? m.group(2) : text(unit);
        String noted = count(what).note(what, text(note));
        if (counts(what)) {
            Scouted.of(noted);
        }
        Optional<Incidence> counted =
                what == Reading.Kind.LESIONS && text(value).isEmpty()
                        ? count(what).incidence()
                        : Optional.empty();
        if (counted.isPresent()) {
            Incidence seen = counted.get();
            return reading(zone, what, today, seen.share(), seen.toString(), NO_DEPTH, noted);
        }
        if (text(value).isEmpty()) {
            throw EarleafException.of(what.word(), "nothing", ReadingKinds.example(what), "Write what you found.");
        }
        double[] depth_mm = ReadingKinds.isOfSoil(what) ? depths() : NO_DEPTH;
        double inside = Observed.inside(
                what,
                what == Reading.Kind.STAGE ? text(value) : number,
                what == Reading.Kind.STAGE ? "" : written,
                depth_mm[1] - depth_mm[0],
                density(zone.soil(), depth_mm));
        String entered =
                what == Reading.Kind.STAGE ? text(value).toUpperCase(Locale.ROOT) : (number + " " + written).strip();
        return reading(zone, what, today, inside, entered, depth_mm, noted);
    }

    private Reading reading(
            Zone zone,
            Reading.Kind what,
            LocalDate today,
            double inside,
            String entered,
            double[] depth_mm,
            String written) {
        return new Reading(
                "",
                zone.field(),
                zone.zone(),
                day(today),
                what,
                inside,
                entered,
                depth_mm[0],
                depth_mm[1],
                where(what),
                written);
    }

    static boolean counts(Reading.Kind what) {
        return what == Reading.Kind.LESIONS || what == Reading.Kind.INSECTS;
    }

    /** What was counted; boxes of another kind are not looked at. */
    private ScoutingCount count(Reading.Kind what) {
        return counts(what)
                ? new ScoutingCount(text(found), text(positive), text(plants), text(leaf))
                : ScoutingCount.NONE;
    }

    private LocalDate day(LocalDate today) {
        if (text(date).isEmpty()) {
            return today;
        }
        try {
            LocalDate day = LocalDate.parse(text(date));
            if (day.isAfter(today)) {
                throw EarleafException.of("day", day.toString(), "a day up to " + today, "Give the day it was taken.");
            }
            return day;
        } catch (DateTimeParseException unreadable) {
            throw EarleafException.of(
                    "day", "\"" + date + "\"", "a date like 2026-06-30", "Give the day it was taken.");
        }
    }

    private double[] depths() {
        String[] ends = (text(depth).isEmpty() ? ReadingKinds.USUAL_DEPTH : text(depth)).split("-", 2);
        try {
            return new double[] {Double.parseDouble(ends[0]), Double.parseDouble(ends[1])};
        } catch (NumberFormatException | ArrayIndexOutOfBoundsException unreadable) {
            throw EarleafException.of("depth", "\"" + depth + "\"", "one of the depths offered", "Choose one.");
        }
    }

    private static double density(SoilProfile soil, double[] depth_mm) {
        double sum = 0;
        int layers = 0;
        for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
            if (SoilProfile.bottom_mm(layer) > depth_mm[0] && SoilProfile.top_mm(layer) < depth_mm[1]) {
                sum += soil.bulkDensity_gcm3().get(layer);
                layers++;
            }
        }
        return layers == 0 ? Observed.USUAL_BULK_DENSITY_GCM3 : sum / layers;
    }

    private Reading.Position where(Reading.Kind what) {
        if (!ReadingKinds.isOfSoil(what)) {
            return Reading.Position.RANDOM;
        }
        return switch (text(position)) {
            case "row" -> Reading.Position.ROW;
            case "middle" -> Reading.Position.MIDDLE;
            default -> Reading.Position.RANDOM;
        };
    }
}
