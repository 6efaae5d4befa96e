// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.function.ToDoubleFunction;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.earleaf.plan.search.Replan;

/** Made-up farms, ours on one thread and CP-SAT on two, one after the other. */
final class PlanBench {
    private static final double OURS_S = 30;
    private static final int WORKERS = 2;
    private static final double NEAR = 1.01;

    private PlanBench() {}

    /** Arguments: farms, seconds for the solver, folder of results, first seed. */
    public static void main(String[] args) throws IOException {
        int farms = Integer.parseInt(args[0]);
        double limit_s = Double.parseDouble(args[1]);
        Path folder = Files.createDirectories(Path.of(args[2]));
        long first = Long.parseLong(args[3]);
        List<Outcome> all = new ArrayList<>();
        print(
                "farm  rigs jobs shifts      ours $    solver $     bound $ proven  out gap %%  near: ours s solver s  first ms"
                        + "  replan ms changed %%%n");
        for (long seed = first; seed < first + farms; seed++) {
            Path file = Outcome.file(folder, seed, limit_s);
            Outcome o = Files.exists(file) ? Outcome.read(file) : run(seed, limit_s);
            o.write(file);
            all.add(o);
            row(o);
        }
        sum(all, limit_s);
        long differing = all.stream().filter(o -> o.of("differs") > 0).count();
        System.exit(differing > 0 ? 1 : 0);
    }

    private static void print(String format, Object... values) {
        System.out.printf(Locale.ROOT, format, values);
        System.out.flush();
    }

    private static void row(Outcome o) {
        print(
                "%4.0f %5.0f %4.0f %6.0f %11.2f %11.2f %11.2f %6s %4.0f %5.2f %12.2f %8.2f %9.0f %10.0f %9.0f%n",
                o.of("seed"),
                o.of("rigs"),
                o.of("jobs"),
                o.of("shifts"),
                o.of("ours_usd"),
                o.of("solver_usd"),
                o.of("bound_usd"),
                o.proven() ? "yes" : "no",
                o.of("ours_left_out"),
                o.gap_pct(),
                o.of("ours_near_s"),
                o.of("solver_near_s"),
                o.of("first_ms"),
                o.of("replan_ms"),
                100 * o.of("replan_changed"));
    }

    private static Outcome run(long seed, double limit_s) {
        PlanProblem p = Draw.of(seed);
        long start = System.nanoTime();
        List<double[]> trace = new ArrayList<>();
        List<Plan> plans = new ArrayList<>();
        Effort effort = new Effort(
                1, Effort.usualSteps(p.jobs().size()), () -> (System.nanoTime() - start) / 1e9 > OURS_S, plan -> {
                    trace.add(new double[] {(System.nanoTime() - start) / 1e9, 0});
                    plans.add(plan);
                });
        Found ours = Planner.plan(p, effort);
        double took = (System.nanoTime() - start) / 1e9;
        for (int k = 0; k < plans.size(); k++) {
            trace.get(k)[1] = PlanCost.of(p, plans.get(k)).total_usd();
        }
        Oracle.Answer solver = Oracle.solve(p, limit_s, WORKERS);
        double ours_usd = ours.cost().total_usd();
        double near_usd = NEAR * Math.min(ours_usd, solver.best_usd());
        boolean differs = ours_usd < solver.bound_usd() - .01
                || !Rules.broken(p, solver.plan()).isEmpty()
                || solver.best_usd() < Double.POSITIVE_INFINITY
                        && Math.abs(PlanCost.of(p, solver.plan()).total_usd() - solver.best_usd()) > .01;
        if (differs) {
            System.err.printf(
                    "farm %d: the solver says %.2f, its plan costs %.2f and breaks %s%n",
                    seed, solver.best_usd(), PlanCost.of(p, solver.plan()).total_usd(), Rules.broken(p, solver.plan()));
        }
        Outcome o = new Outcome(new Properties())
                .with("seed", seed)
                .with("rigs", p.rigs().size())
                .with("jobs", p.jobs().size())
                .with("shifts", p.shifts().size())
                .with("ours_usd", ours_usd)
                .with("ours_s", took)
                .with("ours_left_out", ours.leftOut().size())
                .with("first_ms", 1000 * trace.get(0)[0])
                .with("solver_usd", solver.best_usd())
                .with("bound_usd", solver.bound_usd())
                .with("proven", solver.proven() ? 1 : 0)
                .with("solver_s", solver.took_s())
                .with("ours_near_s", reaches(trace, near_usd))
                .with("solver_near_s", reaches(solver.trace(), near_usd))
                .with("differs", differs ? 1 : 0);
        return replan(p, ours, o);
    }

    /** The first rig breaks down on the second day that has shifts. */
    private static Outcome replan(PlanProblem p, Found ours, Outcome o) {
        int[] days =
                p.shifts().stream().mapToInt(Shift::day).distinct().sorted().toArray();
        int from = days[Math.min(1, days.length - 1)];
        PlanProblem broken = p.withShifts(p.shifts().stream()
                .map(s -> s.rig() == 0 && s.day() >= from ? new Shift(0, s.day(), 0) : s)
                .toList());
        long start = System.nanoTime();
        Replan.Replanned after =
                Replan.of(broken, ours.plan(), Replan.quick(1, p.jobs().size()));
        double ms = (System.nanoTime() - start) / 1e6;
        double fewest = after.fewest().cost().total_usd();
        return o.with("replan_ms", ms)
                .with("replan_changed", after.changedShare())
                .with("replan_gain", 1 - after.found().cost().total_usd() / fewest);
    }

    private static double reaches(List<double[]> trace, double usd) {
        for (double[] t : trace) {
            if (t[1] <= usd) {
                return t[0];
            }
        }
        return Double.POSITIVE_INFINITY;
    }

    private static double[] sorted(List<Outcome> all, ToDoubleFunction<Outcome> figure) {
        return all.stream().mapToDouble(figure).sorted().toArray();
    }

    private static double quantile(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1, Math.ceil(share * sorted.length) - (share < 1 ? 1 : 0))];
    }

    private static String spread(double[] sorted) {
        return String.format(
                Locale.ROOT,
                "{\"median\":%.4f,\"p95\":%.4f,\"worst\":%.4f}",
                quantile(sorted, .5),
                quantile(sorted, .95),
                sorted[sorted.length - 1]);
    }

    private static void sum(List<Outcome> all, double limit_s) {
        // Where the solver never came near, its whole limit stands for its time: that flatters it.
        double[] ratio = sorted(all, o -> o.of("ours_near_s") / Math.min(limit_s, o.of("solver_near_s")));
        List<Outcome> proven = all.stream().filter(Outcome::proven).toList();
        long tooMany = all.stream()
                .filter(o -> o.of("replan_changed") > .2 && o.of("replan_gain") <= .01)
                .count();
        print("%nGap above the solver's bound, %%: %s%n", spread(sorted(all, Outcome::gap_pct)));
        print("Gap above the better of the two plans, %%: %s%n", spread(sorted(all, Outcome::behind_pct)));
        if (!proven.isEmpty()) {
            print("Gap where the optimum is proven, %%: %s%n", spread(sorted(proven, Outcome::gap_pct)));
        }
        print("Seconds to within 1 %% of the better plan, ours over the solver's: %s%n", spread(ratio));
        print(
                "%d farms ran, %d proven, solver %.0f s on %d threads, ours one thread%n%n",
                all.size(), proven.size(), limit_s, WORKERS);
        List<String> json = new ArrayList<>(Arrays.asList(
                "\"bench\":\"plan\"",
                "\"farms\":" + all.size(),
                "\"solver_s\":" + Math.round(limit_s),
                "\"proven\":" + proven.size(),
                "\"differing\":" + all.stream().filter(o -> o.of("differs") > 0).count(),
                "\"gap_to_bound_pct\":" + spread(sorted(all, Outcome::gap_pct)),
                "\"gap_to_better_plan_pct\":" + spread(sorted(all, Outcome::behind_pct)),
                "\"solver_gap_to_better_plan_pct\":"
                        + spread(sorted(
                                all,
                                o -> 100 * (o.of("solver_usd") / Math.min(o.of("ours_usd"), o.of("solver_usd")) - 1))),
                "\"near_time_ratio\":" + spread(ratio),
                "\"ours_near_s\":" + spread(sorted(all, o -> o.of("ours_near_s"))),
                "\"ours_s\":" + spread(sorted(all, o -> o.of("ours_s"))),
                "\"first_plan_ms\":" + spread(sorted(all, o -> o.of("first_ms"))),
                "\"replan_ms\":" + spread(sorted(all, o -> o.of("replan_ms"))),
                "\"replan_changed_share\":" + spread(sorted(all, o -> o.of("replan_changed"))),
                "\"replan_too_many_changes\":" + tooMany));
        if (!proven.isEmpty()) {
            json.add("\"gap_where_proven_pct\":" + spread(sorted(proven, Outcome::gap_pct)));
        }
        print("{%s}%n", String.join(",", json));
    }
}
