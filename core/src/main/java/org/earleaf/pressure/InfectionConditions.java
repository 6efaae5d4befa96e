// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.earleaf.field.Disease;
import org.earleaf.units.BundledTable;

/**
 * What a fungus needs to infect a leaf.
 *
 * <pre>
 * f(T) = (Tmax - T)/(Tmax - Topt) ((T - Tmin)/(Topt - Tmin))^((Topt - Tmin)/(Tmax - Topt)), 0 outside (Tmin, Tmax)
 * W(T) = Wmin/f(T); none when that is more than Wmax
 *
 * T      mean temperature of the wet hours             [°C]
 * W      hours of wetness needed                       [h]
 * Range  the rows of infection-conditions.csv
 * Source Magarey, Sutton & Thayer 2005, Phytopathology 95:92-100; cardinal values in the table, those assumed marked
 *        there.
 * Check  InfectionTest
 * </pre>
 *
 * @param dryGap_h a dry spell longer than this starts the count anew
 * @param saturatedAir wet means air of 95 % and more, not a wet leaf, and hours add up over days
 */
public record InfectionConditions(
        Disease disease,
        Warmth warmth,
        double wetMin_h,
        double wetMax_h,
        double dryGap_h,
        double latentMin_d,
        double latentMax_d,
        boolean saturatedAir) {
    /** Mean temperature of the wet hours between which it infects, and at which it does so fastest. */
    public record Warmth(double min_C, double best_C, double max_C) {
        /** How well a temperature suits it, 0 to 1. */
        double suits(double t_C) {
            if (!(t_C > min_C && t_C < max_C)) {
                return 0;
            }
            double up = best_C - min_C;
            double down = max_C - best_C;
            return (max_C - t_C) / down * Math.pow((t_C - min_C) / up, up / down);
        }
    }

    private static final List<InfectionConditions> TABLE = BundledTable.rows("infection-conditions.csv").stream()
            .map(row -> new InfectionConditions(
                    Disease.findByWord(row.text("disease")).orElseThrow(),
                    new Warmth(row.number("tmin_c"), row.number("topt_c"), row.number("tmax_c")),
                    row.number("wet_min_h"),
                    row.number("wet_max_h"),
                    row.number("dry_gap_h"),
                    row.number("latent_min_d"),
                    row.number("latent_max_d"),
                    row.text("wet_is").equals("saturated-air")))
            .toList();

    /** Empty for diseases without figures: tar spot, whose model is off, and common rust. */
    public static Optional<InfectionConditions> find(Disease disease) {
        return TABLE.stream().filter(c -> c.disease == disease).findFirst();
    }

    /** How well a temperature suits it, 0 to 1. */
    public double suits(double t_C) {
        return warmth.suits(t_C);
    }

    /** Hours of wetness needed; empty: it does not infect at this temperature. */
    public OptionalDouble wetNeeded_h(double t_C) {
        double needed = wetMin_h / suits(t_C);
        return needed <= wetMax_h ? OptionalDouble.of(needed) : OptionalDouble.empty();
    }
}
