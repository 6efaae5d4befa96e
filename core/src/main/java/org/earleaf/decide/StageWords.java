// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;

/** Stage of corn in the words of the trade: leaf-collar method, then VT and R1 to R6 (extension stage guides). */
final class StageWords {
    private static final double[] ONSET = {0.20, 0.33, 0.43, 0.63, 1.00};

    private StageWords() {}

    static String of(SeasonTrace trace, int day, java.time.LocalDate planted, double silkGdd) {
        if (trace.date(day).isBefore(planted)) {
            return "before planting";
        }
        double collars = trace.at(day, Daily.COLLARS);
        if (trace.at(day, Daily.LAI) <= 0 && collars <= 0) {
            return "planted";
        }
        double rep = trace.at(day, Daily.REP);
        if (rep > 0) {
            int stage = 1;
            for (double onset : ONSET) {
                if (rep >= onset) {
                    stage++;
                }
            }
            return "R" + stage;
        }
        // Tassel shows about 25 °F d before silk (common practice, no source).
        if (trace.at(day, Daily.GDD) >= silkGdd - 25) {
            return "VT";
        }
        return collars < 1 ? "VE" : "V" + (int) Math.floor(collars);
    }
}
