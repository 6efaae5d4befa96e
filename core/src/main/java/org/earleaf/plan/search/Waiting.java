// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.List;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Timetable;

/**
 * What waiting for tenders does to a plan. The search itself counts no waiting: every plan that would be the best is run
 * through the day's events first, and what no longer fits its day by waiting is taken out of it.
 */
final class Waiting {
    private final Ground ground;

    Waiting(Ground ground) {
        this.ground = ground;
    }

    /** Takes out the last job of every shift that overflows, until none does; what is left and its waiting cost [$]. */
    double settle_usd(State state) {
        while (ground.waits) {
            List<Timetable> tables = Timetable.all(ground.problem, state.plan());
            int late = firstLate(tables);
            if (late < 0) {
                return state.cost_usd + waited_usd(tables);
            }
            state.remove(state.route[late][state.count[late] - 1]);
            state.dropWhatNoLongerFits();
        }
        return state.cost_usd;
    }

    private int firstLate(List<Timetable> tables) {
        for (int s = 0; s < tables.size(); s++) {
            if (tables.get(s).end_s() > ground.length_s[s] + Rules.ROUNDING_S) {
                return s;
            }
            for (Timetable.Stop stop : tables.get(s).stops()) {
                if (stop.end_s() > ground.closes_s[stop.job()][s] + Rules.ROUNDING_S) {
                    return s;
                }
            }
        }
        return -1;
    }

    private double waited_usd(List<Timetable> tables) {
        double usd = 0;
        for (int s = 0; s < tables.size(); s++) {
            for (Timetable.Stop stop : tables.get(s).stops()) {
                usd += stop.tender_s() * ground.cost_usdS[s];
            }
        }
        return usd;
    }
}
