// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Said;

/**
 * Anything observed in a field.
 *
 * @param id made by the store or, for files, from file and row
 * @param value in the inside unit of the kind: mg/kg for nitrate and ammonium, leaf collars for stage (VT 30, R1 31 to
 *     R6 36), cm for height, plants/m2 for stand, lesions or insects as {@link Scouted#by()} says, mm for rain, volume share for moisture, share of ground for cover
 * @param entered number and unit as entered
 * @param sampled where soil was taken
 * @param note anything to add, for people alone: no answer depends on it
 * @param scouted what was counted on plants
 */
public record Reading(
        String id,
        FieldPart part,
        LocalDate date,
        Kind kind,
        double value,
        String entered,
        Sampled sampled,
        String note,
        Scouted scouted) {
    /** A sample may miss the foot by so much and still be one of the top foot [mm]. */
    private static final double ABOUT_MM = 55;

    /**
     * Where soil was taken.
     *
     * @param top_mm upper depth [mm], NaN where depth has no meaning
     * @param bottom_mm lower depth [mm], NaN likewise
     * @param position of the cores; RANDOM where it has no meaning
     */
    public record Sampled(double top_mm, double bottom_mm, Position position) {
        /** Of what has no depth. */
        public static final Sampled NO_SOIL = new Sampled(Double.NaN, Double.NaN, Position.RANDOM);
    }

    public String field() {
        return part.field();
    }

    public String zone() {
        return part.zone();
    }

    public double top_mm() {
        return sampled.top_mm();
    }

    public double bottom_mm() {
        return sampled.bottom_mm();
    }

    public Position position() {
        return sampled.position();
    }

    /** The same, kept under an id. */
    public Reading withId(String other) {
        return new Reading(other, part, date, kind, value, entered, sampled, note, scouted);
    }

    /** The same, with what was counted on plants. */
    public Reading with(Scouted counted) {
        return new Reading(id, part, date, kind, value, entered, sampled, note, counted);
    }

    /** What was observed. */
    public enum Kind {
        NITRATE,
        AMMONIUM,
        STAGE,
        HEIGHT,
        STAND,
        LESIONS,
        INSECTS,
        RAIN,
        MOISTURE,
        COVER;

        /** Whether soil was sampled, so that depth and position mean something. */
        public boolean isOfSoil() {
            return this == NITRATE || this == AMMONIUM || this == MOISTURE;
        }

        /** Whether plants are looked at for disease or insects. */
        public boolean isOfPlants() {
            return this == LESIONS || this == INSECTS;
        }

        public String word() {
            return name().toLowerCase(Locale.ROOT);
        }

        public static Optional<Kind> findByWord(String word) {
            return Arrays.stream(values())
                    .filter(k -> k.word().equalsIgnoreCase(word.trim()))
                    .findFirst();
        }

        public static String words() {
            return String.join(", ", Arrays.stream(values()).map(Kind::word).toList());
        }
    }

    /** Where soil cores were taken. */
    public enum Position {
        RANDOM,
        ROW,
        MIDDLE
    }

    public boolean isOn(Zone z) {
        return part.holds(z);
    }

    /** Whether it is a nitrate test of the top foot; without depths it is taken as one. */
    public boolean isOfTopFoot() {
        boolean top = Double.isNaN(top_mm()) || top_mm() <= ABOUT_MM;
        boolean bottom = Double.isNaN(bottom_mm()) || Math.abs(bottom_mm() - SoilProfile.FOOT_MM) <= ABOUT_MM;
        return kind == Kind.NITRATE && top && bottom;
    }

    /** What it is called in remarks: "Home Eighty, height of 2026-06-29". */
    public Said title() {
        return Said.of("where.reading", "field", field(), "kind", kind, "day", date);
    }
}
