// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/**
 * USDA texture class of a horizon, each with the middle of its part of the triangle, for soil that is known by its class
 * alone.
 *
 * <pre>
 * sand, clay = centroid of the class [% of the fine earth, by mass]; silt is the rest
 *
 * Range  a horizon known by its class; in the widest class sand and clay lie up to 40 % from the middle
 * Source Soil Survey Manual, chapter 3, texture triangle (limits from memory); the centroids follow from them
 * Check  TextureTest
 * </pre>
 */
public enum Texture {
    SAND(91.7, 3.3),
    LOAMY_SAND(81.7, 5.8),
    SANDY_LOAM(64.6, 10.4),
    LOAM(41.1, 18.3),
    SILT_LOAM(21.5, 13.2),
    SILT(7.4, 5.1),
    SANDY_CLAY_LOAM(59.8, 27.1),
    CLAY_LOAM(32.5, 33.5),
    SILTY_CLAY_LOAM(10.0, 33.5),
    SANDY_CLAY(51.7, 41.7),
    SILTY_CLAY(6.7, 46.7),
    CLAY(19.5, 62.9);

    private final double sand_pct;
    private final double clay_pct;

    Texture(double sand_pct, double clay_pct) {
        this.sand_pct = sand_pct;
        this.clay_pct = clay_pct;
    }

    /** Sand in the middle of the class [%]. */
    public double sand_pct() {
        return sand_pct;
    }

    /** Clay in the middle of the class [%]. */
    public double clay_pct() {
        return clay_pct;
    }

    /** As files keep it: the class in small letters. */
    public String word() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /** By its word, however it is written in blanks, hyphens and case. */
    public static Optional<Texture> findByWord(String word) {
        String plain = word.trim().toLowerCase(Locale.ROOT).replaceAll("[\\s_-]+", " ");
        return Arrays.stream(values()).filter(t -> t.word().equals(plain)).findFirst();
    }

    public static String words() {
        return String.join(", ", Arrays.stream(values()).map(Texture::word).toList());
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
