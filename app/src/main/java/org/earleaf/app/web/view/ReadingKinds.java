// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.app.web.text.Format;
import org.earleaf.field.Disease;
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
            case NITRATE -> "Soil nitrate";
            case AMMONIUM -> "Soil ammonium";
            case STAGE -> "Stage";
            case HEIGHT -> "Height";
            case STAND -> "Stand";
            case LESIONS -> "Lesions";
            case INSECTS -> "Insects";
            case RAIN -> "Rain in the gauge";
            case MOISTURE -> "Soil moisture";
            case COVER -> "Ground covered";
        };
    }

    /** "Lesions, 58 of 100 plants, gray leaf spot". */
    static String said(Reading r) {
        Scouted seen = r.scouted();
        String counted = seen.counted().map(Object::toString).orElse("");
        String found = seen.disease().map(Disease::word).orElse(seen.insect());
        return Stream.of(name(r.kind()), r.entered(), counted.equals(r.entered()) ? "" : counted, found)
                .filter(part -> !part.isEmpty())
                .collect(Collectors.joining(", "));
    }

    /** "A soil test", as the headline calls it. */
    static String headline(Kind kind) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> "A soil test";
            case STAGE -> "The stage of the corn";
            case HEIGHT -> "The height of the corn";
            case STAND -> "A stand count";
            case LESIONS -> "A lesion count";
            case INSECTS -> "An insect count";
            case RAIN -> "Rain in the gauge";
            case MOISTURE -> "A soil moisture reading";
            case COVER -> "A look at the ground cover";
        };
    }

    /** The unit that stands beside the box. */
    public static String unit(Kind kind, Format format) {
        return switch (kind) {
            case NITRATE, AMMONIUM -> "ppm";
            case STAGE -> "";
            case HEIGHT -> format.lengthUnit();
            case STAND -> format.isMetric() ? "plants/m2" : "plants/ac";
            case LESIONS, INSECTS -> "per plant";
            case RAIN -> format.rainUnit();
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
            case NITRATE, AMMONIUM ->
                "Fifteen cores, walked as a W, every fifth at the row and the rest across the middle. Mix, bag, keep"
                        + " cold. Skip the headlands.";
            case STAGE ->
                "Ten plants in a row that looks like the field. Count leaves whose collar shows; from tassel on, look at"
                        + " the silks and kernels.";
            case HEIGHT -> "Ten plants. From the ground to where the top leaf bends over.";
            case STAND -> "A thousandth of an acre of row (17 ft 5 in at 30 in rows), five places, mean times 1,000.";
            case LESIONS ->
                "Walk a W: five stops, twenty plants each. On each plant find the highest leaf with lesions, counted from"
                        + " the ear leaf; name the disease. Skip the headlands.";
            case INSECTS ->
                "Walk a W: five stops, twenty plants each. Count on tassel, upper leaves and ear; note lady beetles,"
                        + " lacewings and mummies a plant, too.";
            case RAIN -> "Read at the same hour each morning, and write it under the day that has passed.";
            case MOISTURE -> "Water by volume. At the depth given, away from tracks.";
            case COVER -> "Share of the ground covered by residue, seen from above, five places.";
        };
    }
}
