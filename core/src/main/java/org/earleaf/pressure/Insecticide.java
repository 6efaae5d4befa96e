// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.Set;

/**
 * The insecticide of a pass.
 *
 * @param cost_usdHa product on a hectare
 * @param ownReason another insect that the grower scouted and that calls for it, in his words; empty: none. Its worth is
 *     not counted.
 */
public record Insecticide(String product, Reach reach, double cost_usdHa, String ownReason) {
    /** What else it kills. */
    public enum Reach {
        /** Spares most natural enemies (IRAC 4A, 4C, 4D, 9D, 29 and the like, where the label says so). */
        SELECTIVE,
        /** Kills lady beetles, lacewings and parasitoids, too (IRAC 3A, 1B and the like). */
        BROAD;

        private static final Set<String> SPARING = Set.of("4A", "4C", "4D", "9D", "29");

        /** By the IRAC numbers on the label; one that is not known counts as broad. */
        public static Reach ofGroups(Set<String> groups) {
            return !groups.isEmpty() && SPARING.containsAll(groups) ? SELECTIVE : BROAD;
        }
    }
}
