// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.List;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;

/** Finds a plan that loses as few dollars as it can. */
public final class Planner {
    private static final double EQUAL_USD = 1e-7;

    private Planner() {}

    public static Found plan(PlanProblem problem, Effort effort) {
        return search(problem, Plan.empty(problem), Changes.FREE, effort);
    }

    /**
     * The best of several searches, with the seed given and those after it, in turn or side by side. It is the same plan
     * either way: of equal costs the first seed's.
     */
    public static Found best(PlanProblem problem, Effort effort, int searches) {
        Consumer<Plan> better = onlyBetter(problem, effort.better());
        List<Integer> seeds = IntStream.range(0, searches).boxed().toList();
        List<Found> all = effort.how()
                .each(seeds, k -> plan(problem, new Effort(effort.seed() + k, effort.steps(), effort.stop(), better)));
        Found best = all.get(0);
        for (Found found : all) {
            if (found.cost().total_usd() < best.cost().total_usd() - EQUAL_USD) {
                best = found;
            }
        }
        return new Found(
                problem,
                best.plan(),
                best.cost(),
                all.stream().mapToLong(Found::steps).sum(),
                all.stream().anyMatch(Found::cutShort));
    }

    /** Of plans told by several searches only those that are better than all before. */
    private static Consumer<Plan> onlyBetter(PlanProblem problem, Consumer<Plan> told) {
        double[] least_usd = {Double.POSITIVE_INFINITY};
        return plan -> {
            double usd = PlanCost.of(problem, plan).total_usd();
            synchronized (least_usd) {
                if (usd < least_usd[0]) {
                    least_usd[0] = usd;
                    told.accept(plan);
                }
            }
        };
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
