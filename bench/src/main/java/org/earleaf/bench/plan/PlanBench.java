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
import java.util.concurrent.ForkJoinPool;
import java.util.function.ToDoubleFunction;
import org.earleaf.bench.plan.library.Contender;
import org.earleaf.plan.Breach;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.earleaf.plan.search.Replan;
import org.earleaf.units.SideBySide;

/**
 * Made-up farms: a general local-search library on one thread, ours, CP-SAT and {@link ColumnBound} on two, one
 * after the other.
 */
final class PlanBench {
    private static final int WORKERS = 2;
    /** As many as the command runs. */
    private static final int SIDE_BY_SIDE = 2;

    private static final double NEAR = 1.01;

    private PlanBench() {}

    /** Arguments: farms, seconds for each, folder of results, first seed. Ours is also told at its usual steps. */
    public static void main(String[] args) throws IOException {
        int farms = Integer.parseInt(args[0]);
        double limit_s = Double.parseDouble(args[1]);
        Path folder = Files.createDirectories(Path.of(args[2]));
        long first = Long.parseLong(args[3]);
        List<Outcome> all = new ArrayList<>();
        print(
                "farm  rigs jobs shifts usual steps $ usual s      ours $   library $    solver $     bound $ proven  out gap %%"
                        + "  near: ours s library s solver s  first ms  replan ms changed %%%n");
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
                "%4.0f %5.0f %4.0f %6.0f %13.2f %7.1f %11.2f %11.2f %11.2f %11.2f %6s %4.0f %5.2f %13.2f %9.2f %8.2f %9.0f %10.0f %9.0f%n",
                o.of("seed"),
                o.of("rigs"),
                o.of("jobs"),
                o.of("shifts"),
                o.of("usual_usd"),
                o.of("usual_s"),
                o.of("ours_usd"),
                o.of("library_usd"),
                o.of("solver_usd"),
                o.bound_usd(),
                o.proven() ? "yes" : "no",
                o.of("ours_left_out"),
                o.gap_pct("ours_usd"),
                o.of("ours_near_s"),
                o.of("library_near_s"),
                o.of("solver_near_s"),
                o.of("first_ms"),
                o.of("replan_ms"),
                100 * o.of("replan_changed"));
    }

    /** A search of ours with what each better plan cost and when it stood. */
    private record Ours(Found found, double took_s, List<double[]> trace) {
        static Ours of(PlanProblem p, long steps, double limit_s, int searches) {
            long start = System.nanoTime();
            List<Double> at_s = new ArrayList<>();
            List<Plan> plans = new ArrayList<>();
            Effort effort = new Effort(1, steps, () -> (System.nanoTime() - start) / 1e9 > limit_s, plan -> {
                at_s.add((System.nanoTime() - start) / 1e9);
                plans.add(plan);
            });
            Found found = Planner.best(p, effort.by(SideBySide.in(ForkJoinPool.commonPool())), searches);
            double took_s = (System.nanoTime() - start) / 1e9;
            List<double[]> trace = new ArrayList<>();
            for (int k = 0; k < plans.size(); k++) {
                trace.add(
                        new double[] {at_s.get(k), PlanCost.of(p, plans.get(k)).total_usd()});
            }
            return new Ours(found, took_s, trace);
        }

        double usd() {
            return found.cost().total_usd();
        }
    }

    private static Outcome run(long seed, double limit_s) {
        PlanProblem p = Draw.of(seed);
        Ours usual = Ours.of(p, Effort.usualSteps(p.jobs().size()), limit_s, SIDE_BY_SIDE);
        Ours ours = Ours.of(p, Long.MAX_VALUE, limit_s, WORKERS);
        Contender.Answer library = Contender.solve(p, limit_s, 1);
        Oracle.Answer solver = Oracle.solve(p, limit_s, WORKERS);
        Plan best = ours.usd() <= library.best_usd() ? ours.found().plan() : library.plan();
        ColumnBound.Bound runs = ColumnBound.of(p, best, limit_s);
        double near_usd = NEAR * Math.min(Math.min(ours.usd(), library.best_usd()), solver.best_usd());
        boolean differs = ours.usd() < Math.max(solver.bound_usd(), runs.bound_usd()) - .01
                || solver.proven() && runs.proven() && Math.abs(solver.best_usd() - runs.best_usd()) > .01
                || differs(seed, p, library.plan(), library.best_usd())
                || differs(seed, p, solver.plan(), solver.best_usd());
        Outcome o = new Outcome(new Properties())
                .with("seed", seed)
                .with("rigs", p.rigs().size())
                .with("jobs", p.jobs().size())
                .with("shifts", p.shifts().size())
                .with("usual_usd", usual.usd())
                .with("usual_s", usual.took_s())
                .with("first_ms", 1000 * usual.trace().get(0)[0])
                .with("ours_usd", ours.usd())
                .with("ours_left_out", ours.found().leftOut().size())
                .with("ours_near_s", reaches(ours.trace(), near_usd))
                .with("library_usd", library.best_usd())
                .with("library_near_s", reaches(library.trace(), near_usd))
                .with("solver_usd", solver.best_usd())
                .with("bound_usd", solver.bound_usd())
                .with("runs_bound_usd", runs.bound_usd())
                .with("runs_s", runs.took_s())
                .with("proven", solver.proven() || runs.proven() ? 1 : 0)
                .with("solver_proven", solver.proven() ? 1 : 0)
                .with("solver_s", solver.took_s())
                .with("solver_near_s", reaches(solver.trace(), near_usd))
                .with("differs", differs ? 1 : 0);
        return replan(p, usual.found(), o);
    }

    /** Whether another's plan breaks a rule, or costs something else than it says. */
    private static boolean differs(long seed, PlanProblem p, Plan plan, double said_usd) {
        double priced_usd = PlanCost.of(p, plan).total_usd();
        List<Breach> broken = Rules.broken(p, plan);
        boolean none = said_usd == Double.POSITIVE_INFINITY;
        if (none || broken.isEmpty() && Math.abs(priced_usd - said_usd) <= .01) {
            return false;
        }
        System.err.printf("farm %d: said to cost %.2f, costs %.2f and breaks %s%n", seed, said_usd, priced_usd, broken);
        return true;
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
        return "{\"median\":" + figure(quantile(sorted, .5)) + ",\"p95\":" + figure(quantile(sorted, .95))
                + ",\"worst\":" + figure(sorted[sorted.length - 1]) + "}";
    }

    /** Endless, where there was no plan or no bound, is null. */
    private static String figure(double value) {
        return Double.isInfinite(value) ? "null" : String.format(Locale.ROOT, "%.4f", value);
    }

    private static void sum(List<Outcome> all, double limit_s) {
        // Where the solver never came near, its whole limit stands for its time: that flatters it.
        double[] ratio = sorted(all, o -> o.of("ours_near_s") / Math.min(limit_s, o.of("solver_near_s")));
        List<Outcome> proven = all.stream().filter(Outcome::proven).toList();
        long tooMany = all.stream()
                .filter(o -> o.of("replan_changed") > .2 && o.of("replan_gain") <= .01)
                .count();
        print("%nGap above the larger bound, %%: %s%n", spread(sorted(all, o -> o.gap_pct("ours_usd"))));
        print("Gap above the best plan, %%: %s%n", spread(sorted(all, o -> o.behind_pct("ours_usd"))));
        if (!proven.isEmpty()) {
            print("Gap where the optimum is proven, %%: %s%n", spread(sorted(proven, o -> o.gap_pct("ours_usd"))));
        }
        print(
                "Gap of ours at its usual steps above the larger bound, %%: %s%n",
                spread(sorted(all, o -> o.gap_pct("usual_usd"))));
        print(
                "Gap above CP-SAT's own bound, %%: %s%n",
                spread(sorted(all, o -> 100 * (o.of("ours_usd") / o.of("bound_usd") - 1))));
        print("Seconds to within 1 %% of the best plan, ours over the solver's: %s%n", spread(ratio));
        print(
                "The same, of the library at the same seconds: %s%n",
                spread(sorted(all, o -> o.behind_pct("library_usd"))));
        print("The same, of CP-SAT at the same seconds: %s%n", spread(sorted(all, o -> o.behind_pct("solver_usd"))));
        print("The same, of ours at its usual steps: %s%n", spread(sorted(all, o -> o.behind_pct("usual_usd"))));
        print(
                "%d farms ran, %d proven, %.0f s each, Timefold on one thread, ours and CP-SAT on %d%n%n",
                all.size(), proven.size(), limit_s, WORKERS);
        List<String> json = new ArrayList<>(Arrays.asList(
                "\"bench\":\"plan\"",
                "\"farms\":" + all.size(),
                "\"each_s\":" + Math.round(limit_s),
                "\"proven\":" + proven.size(),
                "\"differing\":" + all.stream().filter(o -> o.of("differs") > 0).count(),
                "\"gap_to_bound_pct\":" + spread(sorted(all, o -> o.gap_pct("ours_usd"))),
                "\"usual_steps_gap_to_bound_pct\":" + spread(sorted(all, o -> o.gap_pct("usual_usd"))),
                "\"gap_to_best_plan_pct\":" + spread(sorted(all, o -> o.behind_pct("ours_usd"))),
                "\"library_gap_to_best_plan_pct\":" + spread(sorted(all, o -> o.behind_pct("library_usd"))),
                "\"solver_gap_to_best_plan_pct\":" + spread(sorted(all, o -> o.behind_pct("solver_usd"))),
                "\"usual_steps_gap_to_best_plan_pct\":" + spread(sorted(all, o -> o.behind_pct("usual_usd"))),
                "\"near_time_ratio\":" + spread(ratio),
                "\"ours_near_s\":" + spread(sorted(all, o -> o.of("ours_near_s"))),
                "\"usual_s\":" + spread(sorted(all, o -> o.of("usual_s"))),
                "\"first_plan_ms\":" + spread(sorted(all, o -> o.of("first_ms"))),
                "\"replan_ms\":" + spread(sorted(all, o -> o.of("replan_ms"))),
                "\"replan_changed_share\":" + spread(sorted(all, o -> o.of("replan_changed"))),
                "\"replan_too_many_changes\":" + tooMany));
        if (!proven.isEmpty()) {
            json.add("\"gap_where_proven_pct\":" + spread(sorted(proven, o -> o.gap_pct("ours_usd"))));
        }
        print("{%s}%n", String.join(",", json));
    }
}
