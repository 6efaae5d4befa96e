// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The shifts of a plan in time with what waits at the tenders, each day run event by event ({@link TenderDay}).
 *
 * <pre>
 * loads = ceil(supply / tank), all alike;  a load is worked off in (work - loads fill) / loads
 *
 * supply  carrier and product of the job        [m3]
 * tank    of the rig; not known: it draws on no tender
 * Range   a load larger than every tender is filled as if it just went in
 * Source  own construct
 * Check   AtTenderTest
 * </pre>
 */
final class AtTender {
    private static final double ROUNDING = 1e-9;

    private final PlanProblem problem;
    private final Plan plan;
    private final double mostHeld_m3;

    private AtTender(PlanProblem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
        mostHeld_m3 =
                problem.tenders().stream().mapToDouble(Tender::holds_m3).max().orElse(0);
    }

    /** Of the shifts of one day, by their place in the problem. */
    static List<Timetable> ofDay(PlanProblem problem, Plan plan, int day) {
        Timetable[] tables = new Timetable[problem.shifts().size()];
        new AtTender(problem, plan).day(day, tables);
        return Arrays.stream(tables).filter(java.util.Objects::nonNull).toList();
    }

    /** By shift. */
    static List<Timetable> tables(PlanProblem problem, Plan plan) {
        AtTender all = new AtTender(problem, plan);
        Timetable[] tables = new Timetable[problem.shifts().size()];
        problem.shifts().stream().mapToInt(Shift::day).distinct().forEach(d -> all.day(d, tables));
        return Arrays.asList(tables);
    }

    private void day(int day, Timetable[] tables) {
        int[] shifts = IntStream.range(0, tables.length)
                .filter(s -> problem.shifts().get(s).day() == day)
                .toArray();
        List<List<TenderDay.Load>> loads =
                Arrays.stream(shifts).mapToObj(this::loads).toList();
        List<Double> deadlines = Arrays.stream(shifts).mapToObj(this::deadline).toList();
        TenderDay.Day run = TenderDay.of(problem.tenders(), loads, deadlines);
        for (int k = 0; k < shifts.length; k++) {
            tables[shifts[k]] = table(shifts[k], run.of(k));
        }
    }

    private List<TenderDay.Load> loads(int s) {
        Shift shift = problem.shifts().get(s);
        PlanRig rig = problem.rigs().get(shift.rig());
        int place = shiftPlace(s);
        List<TenderDay.Load> all = new ArrayList<>();
        int last = -1;
        for (int j : plan.routes().get(s)) {
            Job job = problem.jobs().get(j);
            int n = loads(rig, job);
            double work_s = job.work_s().get(shift.rig());
            double fill_s = n == 0 ? 0 : rig.fill_s();
            double spray_s = Math.max(0, work_s - n * fill_s) / Math.max(1, n);
            double volume_m3 = n == 0 ? 0 : Math.min(job.supply_m3() / n, mostHeld_m3);
            for (int k = 0; k < Math.max(1, n); k++) {
                double before_s = k == 0 ? problem.travel_s(shift, last, j) : 0;
                double opens_s = k == 0 ? shift.window(job).from_s() : 0;
                all.add(new TenderDay.Load(place, j, volume_m3, before_s, Math.min(fill_s, work_s), spray_s, opens_s));
            }
            last = j;
        }
        return all;
    }

    /** Place of a shift among those of its day, as which the day knows its rig. */
    private int shiftPlace(int s) {
        int day = problem.shifts().get(s).day();
        return (int) IntStream.range(0, s)
                .filter(k -> problem.shifts().get(k).day() == day)
                .count();
    }

    private static int loads(PlanRig rig, Job job) {
        boolean draws = rig.tank_m3() > 0 && job.supply_m3() > 0;
        return draws ? (int) Math.ceil(job.supply_m3() / rig.tank_m3() - ROUNDING) : 0;
    }

    /** The earliest last day of what a shift does. */
    private double deadline(int s) {
        int rig = problem.shifts().get(s).rig();
        return plan.routes().get(s).stream()
                .mapToDouble(j -> problem.jobs().get(j).lastDay().get(rig))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private Timetable table(int s, List<TenderDay.Fill> fills) {
        Shift shift = problem.shifts().get(s);
        List<Timetable.Stop> stops = new ArrayList<>();
        double now_s = 0;
        int last = -1;
        for (int j : plan.routes().get(s)) {
            List<TenderDay.Fill> own = fills.stream()
                    .filter(f -> f.load().job() == j)
                    .sorted(Comparator.comparingDouble(TenderDay.Fill::end_s))
                    .toList();
            double travel_s = problem.travel_s(shift, last, j);
            double start_s = Math.max(
                    now_s + travel_s, shift.window(problem.jobs().get(j)).from_s());
            double end_s = own.get(own.size() - 1).end_s();
            stops.add(new Timetable.Stop(j, travel_s, start_s - now_s - travel_s, start_s, end_s, own));
            now_s = end_s;
            last = j;
        }
        return new Timetable(stops, problem.home_s(shift, last));
    }
}
