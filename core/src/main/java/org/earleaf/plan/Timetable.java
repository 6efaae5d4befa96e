// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.List;

/**
 * The jobs of one shift in time.
 *
 * @param stops in their order
 * @param home_s the way home, where it is counted
 */
public record Timetable(List<Stop> stops, double home_s) {
    /**
     * One job.
     *
     * @param travel_s on the road and cleaning before it
     * @param wait_s until its window opens
     * @param start_s from the begin of the shift
     * @param end_s with what was waited for a tender in between
     * @param fills its loads as they came about; empty: no tender was asked
     */
    public record Stop(
            int job, double travel_s, double wait_s, double start_s, double end_s, List<TenderDay.Fill> fills) {
        public Stop {
            fills = List.copyOf(fills);
        }

        /** Waited at the tender. */
        public double tender_s() {
            return fills.stream().mapToDouble(TenderDay.Fill::wait_s).sum();
        }
    }

    public Timetable {
        stops = List.copyOf(stops);
    }

    /** Every shift of a plan, with what is waited for tenders. */
    public static List<Timetable> all(PlanProblem problem, Plan plan) {
        if (problem.hasTenders()) {
            return AtTender.tables(problem, plan);
        }
        List<Timetable> all = new ArrayList<>();
        for (int s = 0; s < plan.routes().size(); s++) {
            all.add(of(problem, problem.shifts().get(s), plan.routes().get(s)));
        }
        return all;
    }

    /** Of the shifts of one day, by their place in the problem, with what is waited for tenders. */
    public static List<Timetable> ofDay(PlanProblem problem, Plan plan, int day) {
        return AtTender.ofDay(problem, plan, day);
    }

    /** Of one shift, as if nobody waited for a tender: every job as early as its place in the order and its window allow. */
    public static Timetable of(PlanProblem problem, Shift shift, List<Integer> route) {
        List<Stop> stops = new ArrayList<>();
        double now_s = 0;
        int last = -1;
        for (int j : route) {
            Job job = problem.jobs().get(j);
            double travel_s = problem.travel_s(shift, last, j);
            double start_s = Math.max(now_s + travel_s, shift.window(job).from_s());
            double end_s = start_s + job.work_s().get(shift.rig());
            stops.add(new Stop(j, travel_s, start_s - now_s - travel_s, start_s, end_s, List.of()));
            now_s = end_s;
            last = j;
        }
        return new Timetable(stops, problem.home_s(shift, last));
    }

    /** End of the last job, or being home where the way home is counted. */
    public double end_s() {
        return stops.isEmpty() ? 0 : stops.get(stops.size() - 1).end_s() + home_s;
    }

    /** Working, travelling and waiting for a tender, which cost; waiting for fit hours does not. */
    public double busy_s() {
        return home_s
                + stops.stream()
                        .mapToDouble(s -> s.end_s() - s.start_s() + s.travel_s())
                        .sum();
    }
}
