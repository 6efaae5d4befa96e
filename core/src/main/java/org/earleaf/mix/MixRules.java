// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.units.BundledTable;

/** Known quarrels between products in one tank, as a table; labels say more and win. */
public final class MixRules {
    private static final String HISTORY = "history ";

    private MixRules() {}

    /** The quarrels, by their names in the table. */
    public enum Rule {
        C02,
        C03,
        C04,
        C05,
        C06,
        C07,
        C08,
        C10,
        C11,
        C15
    }

    /** How much a rule weighs. */
    public enum Weight {
        STOP,
        MIND,
        NOTE
    }

    /**
     * What was found.
     *
     * @param mayOverride who may set a stop aside; empty: nobody
     */
    public record Found(Rule rule, Weight weight, String mayOverride) {
        /** By which people name it, "C02". */
        public String id() {
            return rule.name();
        }

        public boolean isStop() {
            return weight == Weight.STOP;
        }
    }

    /**
     * Rules that a mix meets, in the order of the table.
     *
     * @param parts of each product: its form, class, kind, groups, salts
     * @param earlier words of what went on this ground this season
     * @param stage of the crop on its scale
     */
    public static List<Found> of(List<Set<String>> parts, Set<String> earlier, String crop, double stage) {
        List<Set<String>> mix = parts.stream().map(MixRules::plain).toList();
        List<Found> found = new ArrayList<>();
        for (BundledTable.Row row : BundledTable.rows("mix-rules.csv")) {
            if (isInTime(row, crop, stage) && meets(row, mix, plain(earlier))) {
                Weight weight = Weight.valueOf(row.text("weight").toUpperCase(Locale.ROOT));
                found.add(new Found(Rule.valueOf(row.text("id")), weight, row.text("override")));
            }
        }
        return found;
    }

    private static boolean isInTime(BundledTable.Row row, String crop, double stage) {
        return row.text("from").isEmpty()
                || crop.equalsIgnoreCase("corn") && stage >= row.number("from") && stage <= row.number("to");
    }

    private static boolean meets(BundledTable.Row row, List<Set<String>> mix, Set<String> earlier) {
        Set<String> first = words(row.text("first"));
        String second = row.text("second");
        for (int k = 0; k < mix.size(); k++) {
            if (!shares(mix.get(k), first)) {
                continue;
            }
            if (second.isEmpty()
                    || second.startsWith(HISTORY) && shares(earlier, words(second.substring(HISTORY.length())))) {
                return true;
            }
            for (int other = 0; other < mix.size(); other++) {
                if (other != k && shares(mix.get(other), words(second))) {
                    return true;
                }
            }
        }
        return false;
    }

    private static Set<String> words(String cell) {
        return plain(Stream.of(cell.split(";")).collect(Collectors.toSet()));
    }

    private static Set<String> plain(Set<String> words) {
        return words.stream()
                .map(w -> w.strip().toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static boolean shares(Set<String> some, Set<String> others) {
        return some.stream().anyMatch(others::contains);
    }
}
