// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Arrays;
import java.util.Optional;

/** Where a pass puts its product; the word is the one that people write and read. */
public enum Placement {
    BROADCAST("broadcast"),
    ROW_BASE("row-base dribble"),
    MID_DRIBBLE("mid-row dribble"),
    MID_INJECT("mid-row coulter"),
    ROW_INJECT("row-side coulter"),
    INCORPORATED("incorporated"),
    AMMONIA("knifed"),
    OVER_THE_TOP("over the top"),
    UNDER_CANOPY("under canopy"),
    BOTH("both"),
    BY_AIR("by air");

    private final String word;

    Placement(String word) {
        this.word = word;
    }

    public String word() {
        return word;
    }

    /** Whether it wets leaves with a product against weeds, disease or insects. */
    public boolean isSpray() {
        return this == OVER_THE_TOP || this == UNDER_CANOPY || this == BOTH;
    }

    /** Whether nitrogen lies in a band, so that cores at random may miss it or hit it. */
    public boolean isBand() {
        return switch (this) {
            case ROW_BASE, MID_DRIBBLE, MID_INJECT, ROW_INJECT, AMMONIA -> true;
            case BROADCAST, INCORPORATED, OVER_THE_TOP, UNDER_CANOPY, BOTH, BY_AIR -> false;
        };
    }

    public static Optional<Placement> findByWord(String word) {
        return Arrays.stream(values())
                .filter(p -> p.word.equalsIgnoreCase(word.trim()))
                .findFirst();
    }

    public static String words() {
        return String.join(", ", Arrays.stream(values()).map(Placement::word).toList());
    }
}
