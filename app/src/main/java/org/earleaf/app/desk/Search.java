// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.desk;

import java.util.concurrent.ForkJoinPool;
import java.util.function.BooleanSupplier;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.earleaf.units.SideBySide;

/** Gives a search the clock that core does not have. */
public final class Search {
    public static final double USUAL_S = 10;
    /** Searches with seeds of their own: as many as even a small machine has processors. */
    private static final int SIDE_BY_SIDE = 2;

    private static final double NANOS = 1e9;

    private Search() {}

    public static Found forPlan(PlanProblem problem, double seconds, long seed) {
        ForkJoinPool pool = new ForkJoinPool(SIDE_BY_SIDE);
        try {
            return Planner.best(problem, effort(problem, seconds, seed).by(SideBySide.in(pool)), SIDE_BY_SIDE);
        } finally {
            pool.shutdown();
        }
    }

    static Effort effort(PlanProblem problem, double seconds, long seed) {
        return new Effort(seed, Effort.usualSteps(problem.jobs().size()), after(seconds), plan -> {});
    }

    static BooleanSupplier after(double seconds) {
        long start = System.nanoTime();
        return () -> (System.nanoTime() - start) / NANOS >= seconds;
    }
}
