// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Codes of what a product is. Two-letter codes follow the international catalogue of formulation types (technical
 * monograph 2, 7th edition, 2017); words used in the US for the same are understood and turned into them.
 */
final class Formulation {
    private static final Set<String> LIQUID =
            Set.of("SC", "CS", "ZC", "ZE", "SE", "SL", "OD", "EW", "ME", "DC", "EC", "EO", "UL", "SU");
    private static final Set<String> DRY = Set.of("WP", "WG", "SP", "SG", "WP-SB", "WG-SB", "WT", "ST", "TB", "GR");
    /** Classes of adjuvants: water conditioner, surfactant, oils, antifoam, compatibility and drift agent. */
    private static final Set<String> ADJUVANT =
            Set.of("WC", "AMS", "NIS", "HSOC", "COC", "MSO", "ANTIFOAM", "COMPATIBILITY", "DRIFT");

    private static final Map<String, String> US = Map.ofEntries(
            Map.entry("WDG", "WG"),
            Map.entry("DF", "WG"),
            Map.entry("DG", "WG"),
            Map.entry("F", "SC"),
            Map.entry("FL", "SC"),
            Map.entry("S", "SL"),
            Map.entry("AS", "SL"),
            Map.entry("E", "EC"),
            Map.entry("WSB", "WP-SB"),
            Map.entry("G", "GR"));

    private Formulation() {}

    static Optional<String> find(String word) {
        String code = word.toUpperCase(Locale.ROOT);
        String known = US.getOrDefault(code, code);
        boolean any = LIQUID.contains(known) || DRY.contains(known) || ADJUVANT.contains(known);
        return any ? Optional.of(known) : Optional.empty();
    }

    static boolean isLiquid(String code) {
        return LIQUID.contains(code);
    }

    static String words() {
        List<String> all = new ArrayList<>();
        for (Set<String> some : List.of(LIQUID, DRY, ADJUVANT)) {
            some.stream().sorted().forEach(all::add);
        }
        return String.join(" ", all);
    }
}
