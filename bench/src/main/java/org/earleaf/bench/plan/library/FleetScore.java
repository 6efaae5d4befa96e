// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan.library;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.score.calculator.IncrementalScoreCalculator;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.earleaf.plan.Gap;
import org.earleaf.plan.Job;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Supply;
import org.earleaf.plan.Window;

/**
 * Cents lost, and how far rules are broken, anew for the shift that changed alone. Hard: seconds too long, litres too
 * much, and {@link #REFUSED} for a job where it may not be or too near another.
 */
public final class FleetScore implements IncrementalScoreCalculator<Fleet, HardSoftLongScore> {
    private static final long REFUSED = 3600;

    /** What a problem says, laid out in arrays once. */
    private record Facts(
            PlanProblem of,
            boolean[][] allowed,
            long[][] charge_c,
            long[] undone_c,
            double[][] work_s,
            double[][] fromYard_s,
            double[][] between_s,
            double[][] opens_s,
            double[][] closes_s,
            int[] day,
            double[] most_m3,
            List<List<Gap>> gaps) {}

    private Facts facts = facts(new PlanProblem(List.of(), List.of(), List.of(), new org.earleaf.plan.Roads(0, 0)));
    private int[] where = {};
    private long[] late = {};
    private long[] cost_c = {};
    private double[] used_m3 = {};
    private long over;
    private long near;
    private long hard;
    private long soft_c;

    private static Facts facts(PlanProblem p) {
        int jobs = p.jobs().size();
        int shifts = p.shifts().size();
        Facts f = new Facts(
                p,
                new boolean[jobs][shifts],
                new long[jobs][shifts],
                p.jobs().stream().mapToLong(j -> cents(j.undone_usd())).toArray(),
                new double[jobs][shifts],
                new double[shifts][jobs],
                new double[jobs][jobs],
                new double[jobs][shifts],
                new double[jobs][shifts],
                p.shifts().stream().mapToInt(Shift::day).toArray(),
                new double[1 + p.shifts().stream().mapToInt(Shift::day).max().orElse(0)],
                new ArrayList<>());
        Arrays.fill(f.most_m3, Double.POSITIVE_INFINITY);
        for (Supply s : p.supply()) {
            if (s.day() < f.most_m3.length) {
                f.most_m3[s.day()] = s.most_m3();
            }
        }
        for (int j = 0; j < jobs; j++) {
            int job = j;
            f.gaps.add(p.gaps().stream()
                    .filter(g -> g.first() == job || g.second() == job)
                    .toList());
            for (int s = 0; s < shifts; s++) {
                cell(f, j, s);
            }
            for (int to = 0; to < jobs && shifts > 0; to++) {
                f.between_s[j][to] = p.travel_s(p.shifts().get(0), j, to);
            }
        }
        return f;
    }

    private static void cell(Facts f, int j, int s) {
        Job job = f.of.jobs().get(j);
        Shift shift = f.of.shifts().get(s);
        Window window = shift.window(job);
        f.opens_s[j][s] = window.from_s();
        f.closes_s[j][s] = window.to_s();
        f.fromYard_s[s][j] = f.of.travel_s(shift, -1, j);
        f.allowed[j][s] = Rules.allow(f.of, j, s);
        f.work_s[j][s] = job.canBeDoneBy(shift.rig()) ? job.work_s().get(shift.rig()) : 0;
        f.charge_c[j][s] = cents(job.loss_usd(shift.rig(), shift.day()));
    }

    static long cents(double usd) {
        return Math.round(usd * 100);
    }

    @Override
    public void resetWorkingSolution(Fleet fleet) {
        PlanProblem problem = Objects.requireNonNull(fleet.getProblem());
        if (facts.of != problem) {
            facts = facts(problem);
        }
        where = new int[problem.jobs().size()];
        Arrays.fill(where, -1);
        late = new long[problem.shifts().size()];
        cost_c = new long[problem.shifts().size()];
        used_m3 = new double[facts.most_m3.length];
        over = 0;
        near = 0;
        hard = 0;
        soft_c = Arrays.stream(facts.undone_c).sum();
        for (Route r : fleet.getRoutes()) {
            for (Task t : r.getTasks()) {
                add(t.job(), r.getShift());
            }
            time(r);
        }
    }

    @Override
    public void beforeListVariableChanged(Object entity, String variable, int from, int to) {
        List<Task> tasks = ((Route) entity).getTasks();
        for (int k = from; k < to; k++) {
            remove(tasks.get(k).job());
        }
    }

    @Override
    public void afterListVariableChanged(Object entity, String variable, int from, int to) {
        Route route = (Route) entity;
        for (int k = from; k < to; k++) {
            add(route.getTasks().get(k).job(), route.getShift());
        }
        time(route);
    }

    private boolean isLeftOut(int shift) {
        return shift == late.length;
    }

    private void add(int job, int shift) {
        if (isLeftOut(shift)) {
            return;
        }
        where[job] = shift;
        near += near(job);
        soft_c += facts.charge_c[job][shift] - facts.undone_c[job];
        hard += facts.allowed[job][shift] ? 0 : REFUSED;
        supply(facts.day[shift], facts.of.jobs().get(job).supply_m3());
    }

    private void remove(int job) {
        int shift = where[job];
        if (shift < 0) {
            return;
        }
        near -= near(job);
        where[job] = -1;
        soft_c -= facts.charge_c[job][shift] - facts.undone_c[job];
        hard -= facts.allowed[job][shift] ? 0 : REFUSED;
        supply(facts.day[shift], -facts.of.jobs().get(job).supply_m3());
    }

    private void supply(int day, double more_m3) {
        over -= litresOver(day);
        used_m3[day] += more_m3;
        over += litresOver(day);
    }

    private long litresOver(int day) {
        double over_m3 = used_m3[day] - facts.most_m3[day];
        return over_m3 > 1e-6 ? 1 + Math.round(1000 * over_m3) : 0;
    }

    /** Jobs nearer to this one than a gap allows. */
    private long near(int job) {
        long found = 0;
        for (Gap g : facts.gaps.get(job)) {
            int a = where[g.first()];
            int b = where[g.second()];
            found += a >= 0 && b >= 0 && g.shortBy(facts.day[a], facts.day[b]) > 0 ? 1 : 0;
        }
        return found;
    }

    /** A shift from its begin. */
    private void time(Route route) {
        int s = route.getShift();
        if (isLeftOut(s)) {
            return;
        }
        double now_s = 0;
        double busy_s = 0;
        double late_s = 0;
        int last = -1;
        for (Task t : route.getTasks()) {
            int j = t.job();
            double road_s = last < 0 ? facts.fromYard_s[s][j] : facts.between_s[last][j];
            busy_s += road_s + facts.work_s[j][s];
            now_s = Math.max(now_s + road_s, facts.opens_s[j][s]) + facts.work_s[j][s];
            late_s += Math.max(0, now_s - facts.closes_s[j][s] - 1e-3);
            last = j;
        }
        double home_s = facts.of.home_s(facts.of.shifts().get(s), last);
        busy_s += home_s;
        late_s += Math.max(0, now_s + home_s - facts.of.shifts().get(s).length_s() - 1e-3) * (home_s > 0 ? 1 : 0);
        hard -= late[s];
        late[s] = (long) Math.ceil(late_s);
        hard += late[s];
        soft_c -= cost_c[s];
        cost_c[s] = cents(
                busy_s * facts.of.rigs().get(facts.of.shifts().get(s).rig()).cost_usdS());
        soft_c += cost_c[s];
    }

    @Override
    public HardSoftLongScore calculateScore() {
        return HardSoftLongScore.of(-(hard + over + REFUSED * near), -soft_c);
    }

    @Override
    public void beforeEntityAdded(Object entity) {}

    @Override
    public void afterEntityAdded(Object entity) {}

    @Override
    public void beforeVariableChanged(Object entity, String variable) {}

    @Override
    public void afterVariableChanged(Object entity, String variable) {}

    @Override
    public void beforeEntityRemoved(Object entity) {}

    @Override
    public void afterEntityRemoved(Object entity) {}
}
