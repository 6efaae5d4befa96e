// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.util.function.BooleanSupplier;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;

/** Gives a search the clock that core does not have. */
public final class Search {
    public static final double USUAL_S = 10;
    private static final double NANOS = 1e9;

    private Search() {}

    public static Found forPlan(PlanProblem problem, double seconds, long seed) {
        return Planner.plan(problem, effort(problem, seconds, seed));
    }

    static Effort effort(PlanProblem problem, double seconds, long seed) {
        return new Effort(seed, Effort.usualSteps(problem.jobs().size()), after(seconds), plan -> {});
    }

    static BooleanSupplier after(double seconds) {
        long start = System.nanoTime();
        return () -> (System.nanoTime() - start) / NANOS >= seconds;
    }
}
