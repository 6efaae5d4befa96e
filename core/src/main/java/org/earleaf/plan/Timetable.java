// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The jobs of one shift in time.
 *
 * @param stops in their order
 */
public record Timetable(List<Stop> stops) {
    /**
     * One job.
     *
     * @param travel_s on the road and cleaning before it
     * @param wait_s until its window opens
     * @param start_s from the begin of the shift
     */
    public record Stop(int job, double travel_s, double wait_s, double start_s, double end_s) {}

    public Timetable {
        stops = List.copyOf(stops);
    }

    /** Every job as early as its place in the order and its window allow. */
    public static Timetable of(PlanProblem problem, Shift shift, List<Integer> route) {
        List<Stop> stops = new ArrayList<>();
        double now_s = 0;
        int last = -1;
        for (int j : route) {
            Job job = problem.jobs().get(j);
            double travel_s = problem.travel_s(shift, last, j);
            double start_s = Math.max(now_s + travel_s, shift.window(job).from_s());
            double end_s = start_s + job.work_s().get(shift.rig());
            stops.add(new Stop(j, travel_s, start_s - now_s - travel_s, start_s, end_s));
            now_s = end_s;
            last = j;
        }
        return new Timetable(stops);
    }

    public double end_s() {
        return stops.isEmpty() ? 0 : stops.get(stops.size() - 1).end_s();
    }

    /** Working and travelling, which costs; waiting does not. */
    public double busy_s() {
        return stops.stream()
                .mapToDouble(s -> s.end_s() - s.start_s() + s.travel_s())
                .sum();
    }
}
