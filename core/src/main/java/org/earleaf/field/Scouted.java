// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Locale;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;

/**
 * What was counted on plants beside the value of a reading of lesions or insects. Nothing of it is ever read from a note.
 *
 * @param disease of lesions; empty: not named
 * @param insect as the person named it; empty: not named
 * @param leaf highest leaf with lesions, counted from the ear leaf (0), -3 the third below it; empty: not noted
 * @param counted plants that show it, of how many; empty: not counted
 * @param by what the reading's value counts
 * @param enemies of aphids, on a plant
 * @param aboveThreshold whether the person found that insect above its threshold
 */
public record Scouted(
        Optional<Disease> disease,
        String insect,
        OptionalInt leaf,
        Optional<Incidence> counted,
        By by,
        Enemies enemies,
        boolean aboveThreshold) {
    /** Corn seldom bears more leaves than these below and above the ear leaf. */
    public static final int LOWEST_LEAF = -14;

    public static final int HIGHEST_LEAF = 8;

    /** Nothing counted. */
    public static final Scouted NOTHING =
            new Scouted(Optional.empty(), "", OptionalInt.empty(), Optional.empty(), By.PER_PLANT, Enemies.NONE, false);

    private static final Set<String> APHIDS = Set.of("aphid", "aphids", "corn leaf aphid", "corn leaf aphids");

    /** What the value of a reading counts. */
    public enum By {
        /** Lesions, or insects, on a plant. */
        PER_PLANT,
        /** The share of plants that show it. */
        OF_PLANTS,
        /** The share of the leaf that is diseased. */
        OF_LEAF
    }

    /** Natural enemies of aphids on a plant; mummies are aphids killed by parasitoids. */
    public record Enemies(double ladyBeetles, double lacewings, double mummies) {
        public static final Enemies NONE = new Enemies(0, 0, 0);
    }

    public boolean isAphids() {
        return isAphids(insect);
    }

    public static boolean isAphids(String insect) {
        return APHIDS.contains(insect.strip().toLowerCase(Locale.ROOT));
    }
}
