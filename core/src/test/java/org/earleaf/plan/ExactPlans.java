// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The optimum of a small problem, by dynamic programming and from the facts alone: the best order of every set of jobs in
 * every shift, then the best parting of the jobs among the shifts. Knows no search, no Timetable and no PlanCost. Without
 * windows, supply and gaps.
 */
public final class ExactPlans {
    private ExactPlans() {}

    public static double optimum_usd(PlanProblem p) {
        return kBest_usd(p, 1).get(0);
    }

    /** Cost of the cheapest plans that part the jobs differently among the shifts, cheapest first. */
    public static List<Double> kBest_usd(PlanProblem p, int k) {
        int n = p.jobs().size();
        double[][] best = new double[1 << n][0];
        best[0] = new double[] {0};
        for (int s = 0; s < p.shifts().size(); s++) {
            double[] shift = shiftCosts(p, s);
            double[][] next = new double[1 << n][];
            for (int all = 0; all < 1 << n; all++) {
                List<Double> found = new ArrayList<>();
                for (int part = all; ; part = (part - 1) & all) {
                    if (shift[part] < Double.POSITIVE_INFINITY) {
                        for (double v : best[all ^ part]) {
                            found.add(v + shift[part]);
                        }
                    }
                    if (part == 0) {
                        break;
                    }
                }
                next[all] = found.stream().sorted().limit(k).mapToDouble(v -> v).toArray();
            }
            best = next;
        }
        List<Double> ends = new ArrayList<>();
        for (int all = 0; all < 1 << n; all++) {
            double undone = 0;
            for (int j = 0; j < n; j++) {
                undone += (all >> j & 1) == 0 ? p.jobs().get(j).undone_usd() : 0;
            }
            for (double v : best[all]) {
                ends.add(v + undone);
            }
        }
        return ends.stream().sorted().limit(k).toList();
    }

    /** Of every set of jobs: loss and rig cost in its best order; infinite when the shift cannot do it. */
    private static double[] shiftCosts(PlanProblem p, int s) {
        int n = p.jobs().size();
        Shift shift = p.shifts().get(s);
        PlanRig rig = p.rigs().get(shift.rig());
        double[][] time = new double[1 << n][n];
        double[] cost = new double[1 << n];
        Arrays.fill(cost, Double.POSITIVE_INFINITY);
        cost[0] = 0;
        for (int set = 1; set < 1 << n; set++) {
            double least = Double.POSITIVE_INFINITY;
            double loss = 0;
            for (int last = 0; last < n; last++) {
                time[set][last] = Double.POSITIVE_INFINITY;
                if ((set >> last & 1) == 0) {
                    continue;
                }
                Job job = p.jobs().get(last);
                boolean may = !job.work_s().get(shift.rig()).isNaN()
                        && shift.day() >= job.release()
                        && shift.day() <= job.lastDay().get(shift.rig());
                loss += job.loss_usd(shift.rig(), shift.day());
                int rest = set & ~(1 << last);
                for (int before = -1; may && before < n; before++) {
                    boolean first = rest == 0 && before < 0;
                    if (first || before >= 0 && (rest >> before & 1) == 1) {
                        double from = first ? 0 : time[rest][before];
                        double t =
                                from + road(p, rig, before, last) + job.work_s().get(shift.rig());
                        time[set][last] = Math.min(time[set][last], t);
                    }
                }
                least = Math.min(least, time[set][last] + home(p, rig, last));
            }
            cost[set] = least <= shift.length_s() + 1e-6 ? loss + least * rig.cost_usdS() : Double.POSITIVE_INFINITY;
        }
        return cost;
    }

    private static double home(PlanProblem p, PlanRig rig, int last) {
        Spot a = p.jobs().get(last).at();
        Spot b = rig.yard();
        double far_m = Math.abs(a.x_m() - b.x_m()) + Math.abs(a.y_m() - b.y_m());
        return p.roads().countsWayHome() ? p.roads().fixed_s() + p.roads().slowness_sM() * far_m : 0;
    }

    private static double road(PlanProblem p, PlanRig rig, int from, int to) {
        Spot a = from < 0 ? rig.yard() : p.jobs().get(from).at();
        Spot b = p.jobs().get(to).at();
        double clean = from < 0
                ? 0
                : p.cleanout()
                        .between_s(
                                p.jobs().get(from).productClass(),
                                p.jobs().get(to).productClass());
        return p.roads().fixed_s()
                + p.roads().slowness_sM() * (Math.abs(a.x_m() - b.x_m()) + Math.abs(a.y_m() - b.y_m()))
                + clean;
    }
}
