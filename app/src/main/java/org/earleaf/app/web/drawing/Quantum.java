// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.soil.SoilProfile;

/** What one dot stands for; the same on every day of a season, so that days can be compared by eye. */
final class Quantum {
    private Quantum() {}

    /** The smallest doubling of {@code start_kgHa} with at most so many marks on the fullest day. */
    static double of(SeasonTrace trace, double start_kgHa, int most) {
        double fullest = 0;
        for (int day = 0; day < trace.days(); day++) {
            fullest = Math.max(fullest, mineral_kgHa(trace, day));
        }
        double quantum = start_kgHa;
        while (fullest / quantum > most) {
            quantum *= 2;
        }
        return quantum;
    }

    private static double mineral_kgHa(SeasonTrace trace, int day) {
        double sum = 0;
        for (int column = 0; column < SeasonTrace.COLUMNS; column++) {
            sum += trace.surface(day, column);
            for (int layer = 0; layer < SoilProfile.LAYERS; layer++) {
                sum += trace.field(day, Cell.NITRATE, column, layer)
                        + trace.field(day, Cell.AMMONIUM, column, layer)
                        + trace.field(day, Cell.UREA, column, layer);
            }
        }
        return sum;
    }
}
