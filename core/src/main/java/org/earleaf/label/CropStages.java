// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Figure;
import org.earleaf.units.Said;

/** The stages of each crop as labels print them, on one scale a crop that only compares; corn's is that of readings. */
public final class CropStages {
    private static final Pattern STAGE = Pattern.compile("([A-Z]+)(\\d{0,2})");
    private static final List<Step> STEPS = BundledTable.rows("crop-stages.csv").stream()
            .map(r -> new Step(r.text("crop"), r.text("letters"), r.text("low"), r.text("high"), r.number("place")))
            .toList();

    private CropStages() {}

    private record Step(String crop, String letters, String low, String high, double place) {
        boolean isSingle() {
            return low.isEmpty();
        }

        Optional<Double> find(String said, String number) {
            if (!letters.equals(said) || isSingle() != number.isEmpty()) {
                return Optional.empty();
            }
            double count = isSingle() ? 0 : Double.parseDouble(number);
            boolean within = isSingle() || count >= Double.parseDouble(low) && count <= Double.parseDouble(high);
            return within ? Optional.of(place + count) : Optional.empty();
        }

        double first() {
            return place + Double.parseDouble(low);
        }

        Said said() {
            return isSingle()
                    ? Said.text(letters)
                    : Said.of("stage.range", "first", letters + low, "last", letters + high);
        }
    }

    /** Crops whose stages are known. */
    public static List<String> crops() {
        return STEPS.stream().map(Step::crop).distinct().toList();
    }

    /** Where a stage of a crop stands on its scale; empty when the crop has no such stage. */
    public static Optional<Double> find(String crop, String stage) {
        Matcher m = STAGE.matcher(stage.strip().toUpperCase(Locale.ROOT));
        if (!m.matches()) {
            return Optional.empty();
        }
        return of(crop).stream()
                .flatMap(step -> step.find(m.group(1), m.group(2)).stream())
                .findFirst();
    }

    /** The stage at a place of the scale, as people say it: "V8", "R2". */
    public static String word(String crop, double place) {
        return of(crop).stream()
                .filter(step -> step.isSingle() ? place == step.place() : place >= step.first())
                // Rows of a crop ascend.
                .reduce((before, after) -> after)
                .map(s -> s.isSingle() ? s.letters() : s.letters() + Figure.text(Math.floor(place - s.place()), 2))
                .orElse("");
    }

    /** What a crop's stages are called. */
    public static List<Said> said(String crop) {
        return of(crop).stream().map(Step::said).toList();
    }

    private static List<Step> of(String crop) {
        return STEPS.stream()
                .filter(step -> step.crop().equalsIgnoreCase(crop.strip()))
                .toList();
    }
}
