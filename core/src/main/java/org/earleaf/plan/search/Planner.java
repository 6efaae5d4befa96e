// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;

/** Finds a plan that loses as few dollars as it can. */
public final class Planner {
    private Planner() {}

    public static Found plan(PlanProblem problem, Effort effort) {
        return search(problem, Plan.empty(problem), Changes.FREE, effort);
    }

    /** From a plan, what changes it costing something of its own. */
    static Found search(PlanProblem problem, Plan from, Changes changes, Effort effort) {
        Ground ground = new Ground(problem, changes);
        Annealing annealing = new Annealing(ground, effort);
        Plan plan = annealing.run(start(ground, from)).plan();
        if (!Rules.broken(problem, plan).isEmpty()) {
            throw new IllegalStateException("the search broke a rule: " + Rules.broken(problem, plan));
        }
        return Found.of(problem, plan, annealing.steps(), annealing.stopped());
    }

    /** As much of a plan as still keeps the rules. */
    static Plan kept(PlanProblem problem, Plan from) {
        return start(new Ground(problem, Changes.FREE), from).plan();
    }

    private static State start(Ground ground, Plan from) {
        State state = new State(ground);
        for (int s = 0; s < ground.shifts; s++) {
            for (int j : from.routes().get(s)) {
                int end = state.count[s];
                if (state.where[j] < 0 && state.mayTake(j, s) && state.fits(j, s, end, state.addedRoad_s(j, s, end))) {
                    state.insert(j, s, end);
                }
            }
        }
        return state;
    }
}
