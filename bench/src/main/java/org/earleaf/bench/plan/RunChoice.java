// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;

/** Chooses among listed runs: first in shares with cuts, which drops most of them, then whole ones by CP-SAT. In cents. */
final class RunChoice {
    private static final int ROUNDS = 60;
    private static final int CUTS_A_ROUND = 60;
    private static final double BROKEN_BY = .02;
    private static final int WORKERS = 2;

    private final PlanProblem p;
    private final double best;
    private List<ShiftRuns.Run> runs;
    private double bound;

    /** @param best infinite when nothing as good as the plan known was met in time */
    record Chosen(double bound, double best) {}

    private record Cut(int a, int b, int c, double broken) {}

    private RunChoice(PlanProblem p, List<ShiftRuns.Run> runs, double best) {
        this.p = p;
        this.runs = runs;
        this.best = best;
    }

    static Chosen of(PlanProblem p, List<ShiftRuns.Run> runs, Plan known, double best, double seconds) {
        long start = System.nanoTime();
        RunChoice choice = new RunChoice(p, runs, best);
        choice.tighten(seconds / 2);
        double left = seconds - (System.nanoTime() - start) / 1e9;
        return choice.choose(known, Math.max(1, left));
    }

    /** Raises the bound by cuts; runs that lie above the best plan's room are dropped. */
    private void tighten(double seconds) {
        long start = System.nanoTime();
        RunMaster master = new RunMaster(p);
        runs.forEach(master::add);
        Set<List<Integer>> made = new HashSet<>();
        for (int round = 0; round < ROUNDS; round++) {
            bound = master.solve();
            List<Cut> cuts = broken(master, made);
            if (cuts.isEmpty() || (System.nanoTime() - start) / 1e9 > seconds) {
                break;
            }
            cuts.forEach(cut -> master.cut(cut.a(), cut.b(), cut.c()));
        }
        bound = master.solve();
        double[] reduced = master.reduced();
        List<ShiftRuns.Run> left = new ArrayList<>();
        for (int r = 0; r < reduced.length; r++) {
            if (bound + reduced[r] < best + 1) {
                left.add(master.runs().get(r));
            }
        }
        runs = left;
    }

    private List<Cut> broken(RunMaster master, Set<List<Integer>> made) {
        int n = p.jobs().size();
        double[][] two = new double[n][n];
        double[] shares = master.shares();
        List<Integer> some = new ArrayList<>();
        for (int r = 0; r < shares.length; r++) {
            if (shares[r] > 1e-9 && shares[r] < 1 - 1e-9) {
                some.add(r);
                int[] jobs = master.runs().get(r).jobs();
                for (int a : jobs) {
                    for (int b : jobs) {
                        two[a][b] += shares[r];
                    }
                }
            }
        }
        List<Cut> cuts = new ArrayList<>();
        for (int a = 0; a < n; a++) {
            for (int b = a + 1; b < n; b++) {
                for (int c = b + 1; c < n; c++) {
                    double pairs = two[a][b] + two[a][c] + two[b][c];
                    if (pairs > 1 + BROKEN_BY) {
                        double sum = pairs - 2 * three(master, shares, some, a, b, c);
                        if (sum > 1 + BROKEN_BY && !made.contains(List.of(a, b, c))) {
                            cuts.add(new Cut(a, b, c, sum));
                        }
                    }
                }
            }
        }
        cuts.sort((x, y) -> Double.compare(y.broken(), x.broken()));
        List<Cut> worst = cuts.subList(0, Math.min(CUTS_A_ROUND, cuts.size()));
        worst.forEach(cut -> made.add(List.of(cut.a(), cut.b(), cut.c())));
        return worst;
    }

    private static double three(RunMaster master, double[] shares, List<Integer> some, int a, int b, int c) {
        double sum = 0;
        for (int r : some) {
            int met = 0;
            for (int j : master.runs().get(r).jobs()) {
                met += j == a || j == b || j == c ? 1 : 0;
            }
            sum += met == 3 ? shares[r] : 0;
        }
        return sum;
    }

    private Chosen choose(Plan known, double seconds) {
        CpModel model = new CpModel();
        LinearExprBuilder total = LinearExpr.newBuilder();
        List<List<Literal>> byJob = new ArrayList<>();
        List<List<Literal>> byShift = new ArrayList<>();
        p.shifts().forEach(s -> byShift.add(new ArrayList<>()));
        boolean[] done = new boolean[p.jobs().size()];
        known.routes().forEach(route -> route.forEach(j -> done[j] = true));
        for (int j = 0; j < done.length; j++) {
            BoolVar undone = model.newBoolVar("");
            model.addHint(undone, !done[j]);
            total.addTerm(undone, Whole.cents(p.jobs().get(j).undone_usd()));
            byJob.add(new ArrayList<>(List.of(undone)));
        }
        List<SharedRule> rules = SharedRule.of(p);
        LinearExprBuilder[] counts = new LinearExprBuilder[rules.size()];
        Arrays.setAll(counts, k -> LinearExpr.newBuilder());
        for (ShiftRuns.Run r : runs) {
            BoolVar chosen = model.newBoolVar("");
            Set<Integer> jobs = new HashSet<>(Arrays.stream(r.jobs()).boxed().toList());
            model.addHint(chosen, jobs.equals(new HashSet<>(known.routes().get(r.shift()))));
            total.addTerm(chosen, r.cents());
            byShift.get(r.shift()).add(chosen);
            jobs.forEach(j -> byJob.get(j).add(chosen));
            for (int k = 0; k < counts.length; k++) {
                long count = Math.round(rules.get(k).of(r.shift(), r.jobs()));
                if (count != 0) {
                    counts[k].addTerm(chosen, count);
                }
            }
        }
        byJob.forEach(model::addExactlyOne);
        byShift.forEach(model::addAtMostOne);
        for (int k = 0; k < counts.length; k++) {
            model.addLessOrEqual(counts[k], Math.round(rules.get(k).most()));
        }
        model.minimize(total);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumWorkers(WORKERS)
                .setRandomSeed(1);
        CpSolverStatus status = solver.solve(model);
        if (status == CpSolverStatus.INFEASIBLE || status == CpSolverStatus.MODEL_INVALID) {
            throw new IllegalStateException("the plan known is not among the runs: " + status);
        }
        boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Chosen(
                Math.max(bound, solver.bestObjectiveBound()), any ? solver.objectiveValue() : Double.POSITIVE_INFINITY);
    }
}
