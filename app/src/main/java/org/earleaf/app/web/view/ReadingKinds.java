// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.words.Words;
import org.earleaf.field.Reading;
import org.earleaf.field.Reading.Kind;
import org.earleaf.field.Scouted;

/** How each kind of reading is asked for: its name, units, step, and how it is taken (common practice, no source). */
public final class ReadingKinds {
    /** 0 to 12 in, the depth of a spring nitrate test. */
    public static final String USUAL_DEPTH = "0-304.8";

    private ReadingKinds() {}

    /** In the order in which they are offered. */
    static final List<Kind> OFFERED = List.of(
            Kind.NITRATE,
            Kind.STAGE,
            Kind.HEIGHT,
            Kind.RAIN,
            Kind.STAND,
            Kind.LESIONS,
            Kind.INSECTS,
            Kind.AMMONIUM,
            Kind.MOISTURE,
            Kind.COVER);

    static String name(Kind kind) {
        return switch (kind) {
            case NITRATE -> tell("page.reading-kinds.soil-nitrate");
            case AMMONIUM -> tell("page.reading-kinds.soil-ammonium");
            case STAGE -> tell("page.reading-kinds.stage");
            case HEIGHT -> tell("page.reading-kinds.height");
            case STAND -> tell("page.reading-kinds.stand");
            case LESIONS -> tell("page.reading-kinds.lesions");
            case INSECTS -> tell("page.reading-kinds.insects");
            case RAIN -> tell("page.reading-kinds.rain-in-the-gauge");
            case MOISTURE -> tell("page.reading-kinds.soil-moisture");
            case COVER -> tell("page.reading-kinds.ground-covered");
        };
    }

    /** "Lesions, 58 of 100 plants, gray leaf spot". */
    static String said(Reading r) {
        Scouted seen = r.scouted();
        String counted = seen.counted()
                .map(c -> tell("page.reading-kinds.counted", "shows", c.shows(), "plants", c.plants()))
                .orElse("");
        String found = seen.disease().map(Words.here()::say).orElse(seen.insect());
        return Stream.of(name(r.kind()), r.entered(), counted.equals(r.entered()) ? "" : counted, found)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** "A soil test", as the headline calls it. */
    static String headline(Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> tell("page.reading-kinds.a-soil-test");
            case STAGE -> tell("page.reading-kinds.the-stage-of-the-corn");
            case HEIGHT -> tell("page.reading-kinds.the-height-of-the-corn");
            case STAND -> tell("page.reading-kinds.a-stand-count");
            case LESIONS -> tell("page.reading-kinds.a-lesion-count");
            case INSECTS -> tell("page.reading-kinds.an-insect-count");
            case RAIN -> tell("page.reading-kinds.rain-in-the-gauge");
            case MOISTURE -> tell("page.reading-kinds.a-soil-moisture-reading");
            case COVER -> tell("page.reading-kinds.a-look-at-the-ground");
        };
    }

    /** The unit that stands beside the box. */
    public static String unit(Kind kind, Format format) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> tell("unit.ppm");
            case STAGE -> "";
            case HEIGHT -> format.typed("in", "cm");
            case STAND -> format.typed("plants/ac", "plants/m2");
            case LESIONS, INSECTS -> tell("page.reading-kinds.per-plant");
            case RAIN -> format.typed("in", "mm");
            case MOISTURE, COVER -> "%";
        };
    }

    /** One press of a stepper, in the unit beside the box. */
    public static String step(Kind kind, String unit) {
        return switch (kind) {
            case HEIGHT -> "cm".equals(unit) ? "2" : "1";
            case STAND -> "plants/ac".equals(unit) ? "500" : ".1";
            case RAIN -> "mm".equals(unit) ? "1" : "0.1";
            case MOISTURE -> "1";
            case COVER -> "5";
            default -> "1";
        };
    }

    static String howTo(Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> tell("page.reading-kinds.fifteen-cores-walked-as");
            case STAGE -> tell("page.reading-kinds.ten-plants-in-a-row");
            case HEIGHT -> tell("page.reading-kinds.ten-plants-from-the-ground");
            case STAND -> tell("page.reading-kinds.a-thousandth-of-an-acre");
            case LESIONS -> tell("page.reading-kinds.walk-a-w-five-stops");
            case INSECTS -> tell("page.reading-kinds.walk-a-w-five-stops-2");
            case RAIN -> tell("page.reading-kinds.read-at-the-same-hour");
            case MOISTURE -> tell("page.reading-kinds.water-by-volume-at-the");
            case COVER -> tell("page.reading-kinds.share-of-the-ground-covered");
        };
    }
}
