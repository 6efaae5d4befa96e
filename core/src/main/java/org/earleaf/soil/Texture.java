// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** USDA texture class of a horizon (Soil Survey Manual, texture triangle; limits from memory). */
public enum Texture {
    SAND,
    LOAMY_SAND,
    SANDY_LOAM,
    LOAM,
    SILT_LOAM,
    SILT,
    SANDY_CLAY_LOAM,
    CLAY_LOAM,
    SILTY_CLAY_LOAM,
    SANDY_CLAY,
    SILTY_CLAY,
    CLAY;

    /** As files keep it: the class in small letters. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Texture> findByWord(String word) {
        return Arrays.stream(values()).filter(t -> t.word().equals(word)).findFirst();
    }

    public boolean isSandy() {
        return this == SAND || this == LOAMY_SAND || this == SANDY_LOAM;
    }

    /** The three clays proper. */
    public boolean isClay() {
        return this == SANDY_CLAY || this == SILTY_CLAY || this == CLAY;
    }

    public boolean isClayLoam() {
        return this == SANDY_CLAY_LOAM || this == CLAY_LOAM || this == SILTY_CLAY_LOAM;
    }

    static Texture of(Horizon h) {
        double sand = h.sand_pct();
        double clay = h.clay_pct();
        double silt = 100 - sand - clay;
        if (clay >= 40) {
            return silt >= 40 ? SILTY_CLAY : sand > 45 ? SANDY_CLAY : CLAY;
        }
        if (clay >= 35 && sand > 45) {
            return SANDY_CLAY;
        }
        if (clay >= 27) {
            return sand <= 20 ? SILTY_CLAY_LOAM : sand <= 45 ? CLAY_LOAM : SANDY_CLAY_LOAM;
        }
        if (clay >= 20 && silt < 28 && sand > 45) {
            return SANDY_CLAY_LOAM;
        }
        return withLittleClay(sand, clay, silt);
    }

    private static Texture withLittleClay(double sand, double clay, double silt) {
        if (silt >= 80 && clay < 12) {
            return SILT;
        }
        if (silt >= 50) {
            return SILT_LOAM;
        }
        if (silt + 1.5 * clay < 15) {
            return SAND;
        }
        if (silt + 2 * clay < 30) {
            return LOAMY_SAND;
        }
        return sand > 52 || (clay < 7 && silt < 50) ? SANDY_LOAM : LOAM;
    }
}
