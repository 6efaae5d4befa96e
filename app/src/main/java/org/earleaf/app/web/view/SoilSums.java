// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.soil.SoilProfile;

/** Sums over cells of a trace, per area of field [kg N/ha]. */
final class SoilSums {
    private SoilSums() {}

    /** One kind in one column, layers from (inclusive) to (exclusive). */
    static double of(SeasonTrace trace, int day, Cell kind, int column, int from, int to) {
        double sum = 0;
        for (int layer = from; layer < to; layer++) {
            sum += trace.field(day, kind, column, layer);
        }
        return sum;
    }

    /** One kind in both columns and all layers. */
    static double of(SeasonTrace trace, int day, Cell kind) {
        return of(trace, day, kind, SeasonTrace.ROW, 0, SoilProfile.LAYERS)
                + of(trace, day, kind, SeasonTrace.MIDDLE, 0, SoilProfile.LAYERS);
    }

    /** What lies on the ground. */
    static double surface(SeasonTrace trace, int day) {
        return trace.surface(day, SeasonTrace.ROW) + trace.surface(day, SeasonTrace.MIDDLE);
    }

    /** Nitrate, ammonium and urea in the soil. */
    static double mineral(SeasonTrace trace, int day) {
        return of(trace, day, Cell.NITRATE) + of(trace, day, Cell.AMMONIUM) + of(trace, day, Cell.UREA);
    }
}
