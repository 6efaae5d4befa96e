// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import com.google.ortools.Loader;
import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.earleaf.plan.Gap;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Supply;
import org.earleaf.units.Units;

/**
 * A cost below which no plan lies: whole runs of shifts are chosen in shares, and new runs are priced until none helps.
 *
 * <p>Any prices give a bound: what the choice in shares costs, plus what the cheapest run of each shift would still save.
 * Runs are priced exactly, so the bound holds whenever it is stopped. Source: Dantzig and Wolfe 1960, Oper. Res. 8:101;
 * for routes Desrochers, Desrosiers and Solomon 1992, Oper. Res. 40:342.
 */
final class ColumnBound {
    private static final int A_SHIFT = 30;
    private static final double DONE = 1e-5;

    private final PlanProblem p;
    private final MPSolver lp;
    private final MPObjective cost;
    private final MPConstraint[] once;
    private final MPConstraint[] oneRun;
    private final List<Row> rows = new ArrayList<>();
    private final List<ShiftRuns> pricing = new ArrayList<>();
    private final Set<String> known = new HashSet<>();

    /** A rule over several shifts: what a job in a shift counts to it. */
    private record Row(MPConstraint constraint, double[][] counts) {}

    /** What came out; prices and runs serve to prove a plan. */
    record Bound(double bound_usd, int runs, double took_s, boolean closed) {}

    private ColumnBound(PlanProblem p) {
        this.p = p;
        lp = MPSolver.createSolver("GLOP");
        cost = lp.objective();
        cost.setMinimization();
        once = new MPConstraint[p.jobs().size()];
        oneRun = new MPConstraint[p.shifts().size()];
        for (int j = 0; j < once.length; j++) {
            once[j] = lp.makeConstraint(1, 1);
            MPVariable undone = lp.makeNumVar(0, 1, "");
            once[j].setCoefficient(undone, 1);
            cost.setCoefficient(undone, Whole.cents(p.jobs().get(j).undone_usd()));
        }
        for (int s = 0; s < oneRun.length; s++) {
            oneRun[s] = lp.makeConstraint(-MPSolver.infinity(), 1);
            pricing.add(new ShiftRuns(p, s));
        }
        supply();
        gaps();
    }

    /** @param known a plan, whose runs are there from the start */
    static Bound of(PlanProblem p, Plan known, double seconds) {
        Loader.loadNativeLibraries();
        return new ColumnBound(p).solve(known, seconds);
    }

    private void supply() {
        for (Supply supply : p.supply()) {
            double[][] counts = new double[p.jobs().size()][p.shifts().size()];
            for (int j = 0; j < counts.length; j++) {
                for (int s = 0; s < p.shifts().size(); s++) {
                    if (p.shifts().get(s).day() == supply.day()) {
                        counts[j][s] = Math.round(p.jobs().get(j).supply_m3() / Units.M3_PER_GAL);
                    }
                }
            }
            rows.add(new Row(
                    lp.makeConstraint(-MPSolver.infinity(), Math.round(supply.most_m3() / Units.M3_PER_GAL)), counts));
        }
    }

    /** By each day: the second job up to it, or the first so late that the second must wait beyond it, not both. */
    private void gaps() {
        int[] days = p.shifts().stream().mapToInt(Shift::day).distinct().toArray();
        for (Gap g : p.gaps()) {
            for (int day : days) {
                double[][] counts = new double[p.jobs().size()][p.shifts().size()];
                for (int s = 0; s < p.shifts().size(); s++) {
                    int at = p.shifts().get(s).day();
                    counts[g.second()][s] = at <= day && g.shortBy(day, at) > 0 ? 1 : 0;
                    counts[g.first()][s] = g.shortBy(at, day) > 0 ? 1 : 0;
                }
                if (isClique(g, counts)) {
                    rows.add(new Row(lp.makeConstraint(-MPSolver.infinity(), 1), counts));
                }
            }
        }
    }

    private boolean isClique(Gap g, double[][] counts) {
        for (int a = 0; a < p.shifts().size(); a++) {
            for (int b = 0; b < p.shifts().size(); b++) {
                boolean both = counts[g.first()][a] > 0 && counts[g.second()][b] > 0;
                if (both && g.shortBy(p.shifts().get(a).day(), p.shifts().get(b).day()) <= 0) {
                    return false;
                }
            }
        }
        return true;
    }

    private void add(int shift, int[] jobs, long cents) {
        if (!known.add(shift + Arrays.toString(jobs))) {
            return;
        }
        MPVariable run = lp.makeNumVar(0, MPSolver.infinity(), "");
        cost.setCoefficient(run, cents);
        oneRun[shift].setCoefficient(run, 1);
        for (int j : jobs) {
            once[j].setCoefficient(run, 1);
        }
        for (Row row : rows) {
            double count = 0;
            for (int j : jobs) {
                count += row.counts()[j][shift];
            }
            if (count != 0) {
                row.constraint().setCoefficient(run, count);
            }
        }
    }

    private Bound solve(Plan plan, double seconds) {
        long start = System.nanoTime();
        for (int s = 0; s < plan.routes().size(); s++) {
            List<Integer> route = plan.routes().get(s);
            if (!route.isEmpty()) {
                add(
                        s,
                        route.stream().mapToInt(Integer::intValue).toArray(),
                        pricing.get(s).cents(route));
            }
        }
        double best = 0;
        while (true) {
            if (lp.solve() != MPSolver.ResultStatus.OPTIMAL) {
                throw new IllegalStateException("the choice in shares was not solved");
            }
            // Prices are read before any run is added: the solver forgets them with the first.
            double shares = cost.value();
            double[] own = duals(oneRun);
            double[][] prices = prices();
            double saves = 0;
            for (ShiftRuns of : pricing) {
                int s = of.shift();
                List<ShiftRuns.Run> runs = of.below(prices[s], own[s] - DONE, A_SHIFT);
                if (!runs.isEmpty()) {
                    saves += runs.get(0).reduced() - own[s];
                }
                runs.forEach(r -> add(s, r.jobs(), r.cents()));
            }
            best = Math.max(best, (shares + saves) / 100);
            double took = (System.nanoTime() - start) / 1e9;
            boolean closed = saves > -.5;
            if (closed || took > seconds) {
                return new Bound(best, known.size(), took, closed);
            }
        }
    }

    private static double[] duals(MPConstraint[] of) {
        return Arrays.stream(of).mapToDouble(MPConstraint::dualValue).toArray();
    }

    /** By shift and job. */
    private double[][] prices() {
        double[][] price = new double[oneRun.length][];
        double[] job = duals(once);
        Arrays.setAll(price, s -> job.clone());
        for (Row row : rows) {
            double dual = row.constraint().dualValue();
            for (int j = 0; j < job.length; j++) {
                for (int s = 0; s < price.length; s++) {
                    price[s][j] += row.counts()[j][s] * dual;
                }
            }
        }
        return price;
    }

    /** Tries it on farms: {@code first last seconds}. */
    public static void main(String[] args) {
        for (long seed = Long.parseLong(args[0]); seed <= Long.parseLong(args[1]); seed++) {
            PlanProblem p = Draw.of(seed);
            var ours = org.earleaf.plan.search.Planner.plan(
                    p,
                    new org.earleaf.plan.search.Effort(
                            1,
                            org.earleaf.plan.search.Effort.usualSteps(p.jobs().size()),
                            () -> false,
                            plan -> {}));
            Bound b = of(p, ours.plan(), Double.parseDouble(args[2]));
            double usd = ours.cost().total_usd();
            System.out.printf(
                    "%d jobs %d shifts %d ours %.2f bound %.2f gap %.3f %% runs %d took %.1f s closed %s%n",
                    seed,
                    p.jobs().size(),
                    p.shifts().size(),
                    usd,
                    b.bound_usd(),
                    100 * (usd / b.bound_usd() - 1),
                    b.runs(),
                    b.took_s(),
                    b.closed());
        }
    }
}
