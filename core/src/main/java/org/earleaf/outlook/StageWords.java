// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import org.earleaf.season.GrainStage;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Said;

/** Stage of corn in the words of the trade: leaf-collar method, then VT and R1 to R6 (extension stage guides). */
public final class StageWords {
    private StageWords() {}

    public static Said of(SeasonTrace trace, int day, java.time.LocalDate planted, double silkGdd) {
        if (trace.date(day).isBefore(planted)) {
            return Said.of("stage.before-planting");
        }
        double collars = trace.at(day, Daily.COLLARS);
        if (trace.at(day, Daily.LAI) <= 0 && collars <= 0) {
            return Said.of("stage.planted");
        }
        double rep = trace.at(day, Daily.REP);
        if (rep > 0) {
            return Said.text("R" + GrainStage.of(rep));
        }
        if (trace.at(day, Daily.GDD) >= silkGdd - StageDays.TASSEL_BEFORE_SILK_F) {
            return Said.text("VT");
        }
        return Said.text(collars < 1 ? "VE" : "V" + (int) Math.floor(collars));
    }
}
