// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import com.google.ortools.Loader;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;

/**
 * A cost below which no plan lies, often the optimum itself.
 *
 * <p>Whole runs of shifts are chosen in shares, and new runs priced exactly until none helps (Dantzig and Wolfe 1960,
 * Oper. Res. 8:101; for routes Desrochers, Desrosiers and Solomon 1992, Oper. Res. 40:342). What a run lies above its
 * prices, a plan that has it costs at least more than the bound: so only runs that lie less above than the best plan known
 * can be in a better one. Where these can be listed, {@link RunChoice} goes on with them alone (Baldacci, Christofides
 * and Mingozzi 2008, Math. Program. 115:351). All citations from memory.
 */
final class ColumnBound {
    private static final int A_SHIFT = 30;
    private static final int MOST_RUNS = 250_000;
    /** Parts of the room between bound and best plan, tried in turn until so few runs are left that they can be listed. */
    private static final double[] PARTS = {1, .7, .5, .35, .25};

    private static final double DONE_CENTS = .5;
    private static final double LEAST = 1e-5;

    private final List<ShiftRuns> pricing = new ArrayList<>();
    private final RunMaster master;
    private final PlanProblem p;
    private final long start = System.nanoTime();

    /**
     * What came out.
     *
     * @param proven whether the best plan is known to be an optimum
     * @param best_usd cost of the best plan met, the given one or a better one
     */
    record Bound(double bound_usd, double best_usd, boolean proven, double took_s) {}

    private ColumnBound(PlanProblem p) {
        this.p = p;
        master = new RunMaster(p);
        for (int s = 0; s < p.shifts().size(); s++) {
            pricing.add(new ShiftRuns(p, s));
        }
    }

    static Bound of(PlanProblem p, Plan known, double seconds) {
        Loader.loadNativeLibraries();
        return new ColumnBound(p).solve(known, seconds);
    }

    private double took_s() {
        return (System.nanoTime() - start) / 1e9;
    }

    private Bound solve(Plan plan, double seconds) {
        Set<String> known = new HashSet<>();
        for (int s = 0; s < plan.routes().size(); s++) {
            List<Integer> route = plan.routes().get(s);
            if (!route.isEmpty()) {
                int[] jobs = route.stream().mapToInt(Integer::intValue).toArray();
                known.add(s + Arrays.toString(jobs));
                master.add(new ShiftRuns.Run(s, jobs, pricing.get(s).cents(route), 0));
            }
        }
        double best = PlanCost.of(p, plan).total_usd() * 100;
        double bound = 0;
        while (true) {
            double shares = master.solve();
            double[] own = master.ofShifts();
            double[][] prices = master.prices();
            double saves = 0;
            for (ShiftRuns of : pricing) {
                int s = of.shift();
                List<ShiftRuns.Run> runs = of.below(prices[s], own[s] - LEAST, A_SHIFT);
                if (!runs.isEmpty()) {
                    saves += runs.get(0).reduced() - own[s];
                }
                runs.stream()
                        .filter(r -> known.add(s + Arrays.toString(r.jobs())))
                        .forEach(master::add);
            }
            bound = Math.max(bound, shares + saves);
            if (saves > -DONE_CENTS) {
                return finish(bound, best, own, prices, plan, seconds);
            }
            if (took_s() > seconds) {
                return new Bound(bound / 100, best / 100, false, took_s());
            }
        }
    }

    private Bound finish(double bound, double best, double[] own, double[][] prices, Plan plan, double seconds) {
        for (double part : PARTS) {
            // A cent more, so that the best plan known is among them when all are listed.
            double reach = part * (best - bound) + 1;
            Optional<List<ShiftRuns.Run>> runs = list(own, prices, reach);
            if (runs.isPresent()) {
                RunChoice.Chosen chosen = RunChoice.of(p, runs.get(), plan, best, seconds - took_s());
                double high = Math.min(best, chosen.best());
                double low = Math.max(bound, Math.min(Math.min(high, bound + reach), chosen.bound()));
                return new Bound(low / 100, high / 100, high - low < DONE_CENTS, took_s());
            }
        }
        return new Bound(bound / 100, best / 100, false, took_s());
    }

    /** Runs that lie less than so much above their prices: a plan with any other costs more than the bound and that. */
    private Optional<List<ShiftRuns.Run>> list(double[] own, double[][] prices, double reach) {
        List<ShiftRuns.Run> left = new ArrayList<>();
        for (ShiftRuns of : pricing) {
            int s = of.shift();
            Optional<List<ShiftRuns.Run>> some = of.all(prices[s], own[s] + reach, MOST_RUNS - left.size());
            if (some.isEmpty()) {
                return Optional.empty();
            }
            left.addAll(some.get());
        }
        return Optional.of(left);
    }
}
