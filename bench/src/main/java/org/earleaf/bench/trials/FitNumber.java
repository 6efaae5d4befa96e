// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.List;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;

/**
 * A number of the model that is fitted, with where it is thought to lie.
 *
 * @param centre likeliest before any data
 * @param sd how far from there is still likely
 */
record FitNumber(Parameter parameter, double centre, double sd) {
    private static final String TABLE = "fit.tsv";

    static List<FitNumber> all() {
        return Rows.bundled(TABLE).stream()
                .map(row ->
                        new FitNumber(Parameter.valueOf(row.text("parameter")), row.number("centre"), row.number("sd")))
                .toList();
    }

    /** Usual parameters with these at so many standard deviations from their centres, kept in their ranges. */
    static ParameterSet at(List<FitNumber> numbers, double[] off) {
        ParameterSet set = ParameterSet.usual();
        for (int k = 0; k < off.length; k++) {
            FitNumber number = numbers.get(k);
            set = set.clamped(number.parameter(), number.centre + number.sd * off[k]);
        }
        return set;
    }
}
