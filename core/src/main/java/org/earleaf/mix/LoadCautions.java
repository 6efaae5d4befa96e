// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** What to mind at the tank, by what is in it. Which go with what is a table that comes with Earleaf. */
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

    private static final double OUTER_M = 30.48;
    private static final double INNER_M = 7.62;
    private static final double HEIGHT_M = .3048;
    private static final double LINES_M = 3.048;

    /** What to mind. */
    public enum Caution {
        LABEL,
        RESTRICTED,
        PPE,
        DRIFT,
        SETBACK,
        UAN,
        SALT,
        CHLORINE,
        N_CARRIER,
        JAR,
        MANY,
        STAND,
        HOSES,
        TANK,
        LINES,
        PEOPLE,
        TIRED;

        public Said said() {
            return switch (this) {
                case DRIFT ->
                    Said.of(
                            "caution.drift",
                            "outer",
                            Measure.LENGTH.of(OUTER_M),
                            "inner",
                            Measure.LENGTH.of(INNER_M),
                            "height",
                            Measure.SPAN.of(HEIGHT_M));
                case SALT ->
                    Said.of(
                            "caution.salt",
                            "uan28",
                            Measure.TEMPERATURE.of(Units.celsius(0)),
                            "uan30",
                            Measure.TEMPERATURE.of(-10),
                            "uan32",
                            Measure.TEMPERATURE.of(0));
                case LINES -> Said.of("caution.lines", "least", Measure.LENGTH.of(LINES_M));
                default -> Said.of("caution.plain", "caution", this);
            };
        }
    }

    private LoadCautions() {}

    /** Cautions for a recipe that goes on at a rate with a boom or bar, in the order to show. */
    public static List<Caution> of(List<MixLine> lines, double rate_m3m2) {
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
                .map(row ->
                        Caution.valueOf(row.text("id").toUpperCase(Locale.ROOT).replace('-', '_')))
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
