// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.earleaf.plan.Gap;
import org.earleaf.plan.Job;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Supply;
import org.earleaf.plan.Window;

/** A problem laid out in arrays, by job and shift, for the inner loops of the search. */
final class Ground {
    /** One end of a gap as the job at the other end sees it. */
    record Apart(int other, boolean otherIsFirst, Gap gap) {}

    final PlanProblem problem;
    final int jobs;
    final int shifts;
    final int days;
    final boolean[][] allowed;
    final double[][] work_s;
    /** Everything a job in a shift costs but the road: loss of the day, rig at work, a change to what was told. */
    final double[][] charge_usd;

    final double[] undone_usd;
    final double[] cost_usdS;
    final double[][] fromYard_s;
    final double[][] between_s;
    final double[][] home_s;
    final boolean waits;
    final double[] length_s;
    final boolean[] windowed;
    final double[][] opens_s;
    final double[][] closes_s;
    final int[] day;
    final double[] most_m3;
    final double[] supply_m3;
    final List<List<Apart>> apart;
    final int[][] near;
    final int[] choices;
    final boolean cleaned;

    Ground(PlanProblem problem, Changes changes) {
        this.problem = problem;
        jobs = problem.jobs().size();
        shifts = problem.shifts().size();
        allowed = new boolean[jobs][shifts];
        work_s = new double[jobs][shifts];
        charge_usd = new double[jobs][shifts];
        undone_usd = IntStream.range(0, jobs)
                .mapToDouble(j -> problem.jobs().get(j).undone_usd() + changes.leftOut_usd(j))
                .toArray();
        supply_m3 = problem.jobs().stream().mapToDouble(Job::supply_m3).toArray();
        cost_usdS = new double[shifts];
        fromYard_s = new double[shifts][jobs];
        between_s = new double[jobs][jobs];
        home_s = new double[shifts][jobs];
        waits = problem.hasTenders();
        length_s = new double[shifts];
        windowed = new boolean[shifts];
        opens_s = new double[jobs][shifts];
        closes_s = new double[jobs][shifts];
        List<Integer> dates =
                problem.shifts().stream().map(Shift::day).distinct().sorted().toList();
        days = dates.size();
        day = problem.shifts().stream().mapToInt(s -> dates.indexOf(s.day())).toArray();
        most_m3 = supplied(problem, dates);
        apart = gaps(problem);
        cleaned = !problem.cleanout().from_to_s().isEmpty();
        for (int s = 0; s < shifts; s++) {
            fillShift(s, changes);
        }
        fillRoads();
        near = IntStream.range(0, jobs).mapToObj(this::byNearness).toArray(int[][]::new);
        choices = IntStream.range(0, jobs)
                .map(j -> (int)
                        IntStream.range(0, shifts).filter(s -> allowed[j][s]).count())
                .toArray();
    }

    /** By day, what comes to the farm at most. */
    private static double[] supplied(PlanProblem problem, List<Integer> dates) {
        double[] most_m3 = new double[dates.size()];
        java.util.Arrays.fill(most_m3, Double.POSITIVE_INFINITY);
        for (Supply s : problem.supply()) {
            if (dates.contains(s.day())) {
                most_m3[dates.indexOf(s.day())] = s.most_m3();
            }
        }
        return most_m3;
    }

    private static List<List<Apart>> gaps(PlanProblem problem) {
        List<List<Apart>> all = new ArrayList<>();
        problem.jobs().forEach(j -> all.add(new ArrayList<>()));
        for (Gap g : problem.gaps()) {
            all.get(g.first()).add(new Apart(g.second(), false, g));
            all.get(g.second()).add(new Apart(g.first(), true, g));
        }
        return all;
    }

    private void fillShift(int s, Changes changes) {
        Shift shift = problem.shifts().get(s);
        cost_usdS[s] = problem.rigs().get(shift.rig()).cost_usdS();
        length_s[s] = shift.length_s();
        for (int j = 0; j < jobs; j++) {
            Job job = problem.jobs().get(j);
            Window window = shift.window(job);
            opens_s[j][s] = window.from_s();
            closes_s[j][s] = window.to_s();
            windowed[s] |= window.from_s() > 0 || window.to_s() < shift.length_s();
            allowed[j][s] = Rules.allow(problem, j, s);
            if (allowed[j][s]) {
                work_s[j][s] = job.work_s().get(shift.rig());
                charge_usd[j][s] =
                        job.loss_usd(shift.rig(), shift.day()) + work_s[j][s] * cost_usdS[s] + changes.moved_usd(j, s);
            }
        }
    }

    private void fillRoads() {
        for (int s = 0; s < shifts; s++) {
            for (int j = 0; j < jobs; j++) {
                fromYard_s[s][j] = problem.travel_s(problem.shifts().get(s), -1, j);
                home_s[s][j] = problem.home_s(problem.shifts().get(s), j);
            }
        }
        for (int a = 0; a < jobs && shifts > 0; a++) {
            for (int b = 0; b < jobs; b++) {
                between_s[a][b] = problem.travel_s(problem.shifts().get(0), a, b);
            }
        }
    }

    private int[] byNearness(int job) {
        return IntStream.range(0, jobs)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer k) -> k == job ? -1 : between_s[job][k])
                        .thenComparingInt(k -> k))
                .mapToInt(k -> k)
                .toArray();
    }

    /** From the job before (below 0: the yard) to a job. */
    double road_s(int shift, int from, int to) {
        return from < 0 ? fromYard_s[shift][to] : between_s[from][to];
    }
}
