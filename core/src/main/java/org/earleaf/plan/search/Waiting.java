// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.nio.IntBuffer;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Timetable;

/**
 * What waiting for tenders does to a plan. The search itself counts no waiting: every plan that would be the best is run
 * through the day's events first, and what no longer fits its day by waiting is taken out of it. A day is run once for the
 * same work in the same order: from plan to plan most days stay as they were.
 */
final class Waiting {
    /** Days kept; then the cupboard is emptied. */
    private static final int MOST_KEPT = 20_000;

    private final Ground ground;
    /** Shifts of each day. */
    private final int[][] shifts;

    private final Map<IntBuffer, Ran> ran = new HashMap<>();

    /** @param late the first shift that overflows; -1: none */
    private record Ran(int late, double waited_usd) {}

    Waiting(Ground ground) {
        this.ground = ground;
        shifts = IntStream.range(0, ground.days)
                .mapToObj(d -> IntStream.range(0, ground.shifts)
                        .filter(s -> ground.day[s] == d)
                        .toArray())
                .toArray(int[][]::new);
    }

    /** Takes out the last job of every shift that overflows, until none does; what is left and its waiting cost [$]. */
    double settle_usd(State state) {
        while (ground.waits) {
            int late = -1;
            double waited_usd = 0;
            for (int[] day : shifts) {
                Ran run = day.length == 0 ? new Ran(-1, 0) : run(state, day);
                waited_usd += run.waited_usd();
                late = run.late() >= 0 && (late < 0 || run.late() < late) ? run.late() : late;
            }
            if (late < 0) {
                return state.cost_usd + waited_usd;
            }
            state.remove(state.route[late][state.count[late] - 1]);
            state.dropWhatNoLongerFits();
        }
        return state.cost_usd;
    }

    private Ran run(State state, int[] day) {
        IntBuffer work = work(state, day);
        Ran known = ran.get(work);
        if (known == null) {
            known = read(state, day);
            if (ran.size() >= MOST_KEPT) {
                ran.clear();
            }
            ran.put(work, known);
        }
        return known;
    }

    /** Who does what in which order on a day, which tells the day by itself: its first shift stands in front. */
    private static IntBuffer work(State state, int[] day) {
        int n = 1 + day.length + IntStream.of(day).map(s -> state.count[s]).sum();
        IntBuffer work = IntBuffer.allocate(n).put(day[0]);
        for (int s : day) {
            work.put(state.count[s]).put(state.route[s], 0, state.count[s]);
        }
        return work.flip();
    }

    private Ran read(State state, int[] day) {
        List<Timetable> tables = Timetable.ofDay(
                ground.problem,
                state.plan(),
                ground.problem.shifts().get(day[0]).day());
        int late = -1;
        double usd = 0;
        for (int k = 0; k < day.length; k++) {
            late = late < 0 && isLate(day[k], tables.get(k)) ? day[k] : late;
            for (Timetable.Stop stop : tables.get(k).stops()) {
                usd += stop.tender_s() * ground.cost_usdS[day[k]];
            }
        }
        return new Ran(late, usd);
    }

    private boolean isLate(int shift, Timetable table) {
        return table.end_s() > ground.length_s[shift] + Rules.ROUNDING_S
                || table.stops().stream()
                        .anyMatch(stop -> stop.end_s() > ground.closes_s[stop.job()][shift] + Rules.ROUNDING_S);
    }
}
