// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.earleaf.units.BundledTable;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A formulation code or adjuvant class with its place in the mixing order.
 *
 * @param code "SC", "EC", "NIS" ...
 * @param state "dry", "liquid" or "any"
 * @param rank place in the order; {@link #NEVER} for what may not be in a spray tank
 * @param within place among those of the same rank
 * @param how what the hand does
 * @param why what the order is good for
 */
public record MixForm(String code, String state, int rank, int within, MixHow how, MixWhy why) {
    public static final int NEVER = -1;

    /** Words used in the US for the same, and long forms of classes. */
    private static final Map<String, String> SAME = Map.ofEntries(
            Map.entry("WDG", "WG"),
            Map.entry("DF", "WG"),
            Map.entry("DG", "WG"),
            Map.entry("F", "SC"),
            Map.entry("FL", "SC"),
            Map.entry("S", "SL"),
            Map.entry("AS", "SL"),
            Map.entry("E", "EC"),
            Map.entry("WSB", "WP-SB"),
            Map.entry("WSP", "WP-SB"),
            Map.entry("G", "GR"),
            Map.entry("COMPAT", "COMPATIBILITY"),
            Map.entry("DEFOAMER", "ANTIFOAM"),
            Map.entry("MICRO", "MICRONUTRIENT"),
            Map.entry("FERTILISER", "FERTILIZER"));

    private static final List<MixForm> TABLE =
            BundledTable.rows("mixing-order.csv").stream().map(MixForm::of).toList();

    private static MixForm of(BundledTable.Row row) {
        int rank = row.text("rank").equals("X") ? NEVER : (int) row.number("rank");
        return new MixForm(
                row.text("code"),
                row.text("state"),
                rank,
                (int) row.number("within"),
                MixHow.valueOf(row.text("how")),
                MixWhy.valueOf(row.text("why")));
    }

    public static List<MixForm> listAll() {
        return TABLE;
    }

    /** By code or class, upper and lower case being one; US words for the same are understood. */
    public static Optional<MixForm> find(String word) {
        String upper = word.trim().toUpperCase(Locale.ROOT);
        String code = SAME.getOrDefault(upper, upper);
        return TABLE.stream().filter(form -> form.code.equals(code)).findFirst();
    }

    /** As {@link #find}, refusing what is unknown and what may not be in a spray tank. */
    public static MixForm parse(String word, Said where) {
        MixForm form = find(word)
                .orElseThrow(() ->
                        new EarleafException(Problem.of("form.unknown", where, Said.text(word), "codes", codes())));
        if (form.isNever()) {
            Said found = Said.of("found.form-never", "form", form.code);
            throw new EarleafException(Problem.of("form.never", where, found, "codes", codes(), "how", form.how));
        }
        return form;
    }

    /** Codes that may go in the tank, in mixing order. */
    public static List<String> codes() {
        return TABLE.stream().filter(f -> !f.isNever()).map(MixForm::code).toList();
    }

    public boolean isNever() {
        return rank == NEVER;
    }

    public boolean isDry() {
        return state.equals("dry");
    }

    public boolean isLiquid() {
        return state.equals("liquid");
    }

    /** Whether it is a class of helpers and no formulation of a product. */
    public boolean isAdjuvant() {
        return rank == 0 || rank == 1 || rank == 8 || rank == 9;
    }
}
