// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * Anything observed in a field.
 *
 * @param id made by the store or, for files, from file and row
 * @param zone empty: the whole field
 * @param value in the inside unit of the kind: mg/kg for nitrate and ammonium, leaf collars for stage (VT 30, R1 31 to
 *     R6 36), cm for height, plants/m2 for stand, lesions per plant, insects per plant, ears per plant or as noted, mm
 *     for rain, volume share for moisture, share of ground for cover
 * @param entered number and unit as entered
 * @param top_mm upper depth [mm], NaN where depth has no meaning
 * @param bottom_mm lower depth [mm], NaN likewise
 * @param position where the cores were taken; RANDOM where it has no meaning
 */
public record Reading(
        String id,
        String field,
        String zone,
        LocalDate date,
        Kind kind,
        double value,
        String entered,
        double top_mm,
        double bottom_mm,
        Position position,
        String note) {
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
        return field.equals(z.field()) && (zone.isEmpty() || zone.equals(z.zone()));
    }

    /** What it is called in remarks: "Home Eighty, height of 2026-06-29". */
    public String title() {
        return field + ", " + kind.word() + " of " + date;
    }
}
