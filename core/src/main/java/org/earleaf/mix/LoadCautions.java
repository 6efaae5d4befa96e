// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.earleaf.units.BundledTable;

/** What to mind at the tank, by what is in it. The sentences are a table that comes with Earleaf. */
public final class LoadCautions {
    /** Solutions from this count of products on may clot. */
    private static final int MANY = 4;

    /** What sets a caution off. */
    private enum When {
        ALWAYS,
        LABEL,
        LIQUID_N,
        MIX,
        MANY,
        BOOM,
        N_CARRIER
    }

    private LoadCautions() {}

    /** Cautions for a recipe that goes on at a rate with a boom or bar, in the order to show. */
    public static List<String> of(List<MixLine> lines, double rate_m3m2) {
        Set<When> on = EnumSet.of(When.ALWAYS, When.BOOM);
        boolean solution = lines.stream().anyMatch(MixLine::isNitrogenSolution);
        add(on, When.LABEL, lines.stream().anyMatch(MixLine::isLabelled));
        add(on, When.LIQUID_N, solution);
        add(on, When.MIX, lines.size() > 1);
        add(on, When.MANY, lines.size() >= MANY);
        boolean carries = lines.stream().anyMatch(line -> line.carries(rate_m3m2));
        add(on, When.N_CARRIER, carries && lines.size() > 1);
        return BundledTable.rows("load-cautions.csv").stream()
                .filter(row -> on.contains(when(row.text("when"))))
                .map(row -> row.text("text"))
                .toList();
    }

    private static void add(Set<When> on, When when, boolean set) {
        if (set) {
            on.add(when);
        }
    }

    private static When when(String word) {
        return When.valueOf(word.toUpperCase(Locale.ROOT).replace('-', '_'));
    }
}
