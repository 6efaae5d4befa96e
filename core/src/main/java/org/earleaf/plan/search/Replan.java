// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.earleaf.units.Units;

/**
 * A plan anew after rain, a breakdown, a field done early or a pin, with few changes to what drivers were told.
 *
 * <pre>
 * first   only what can no longer stand is planned anew, everything else stays
 * second  all is free, a change costing $0.25 an acre
 * the second is taken when it changes at most a fifth of what could stay, or gains more than 1 %;
 * else changes are made dearer until it does, and at last the first is taken
 *
 * Range   any plan of the same jobs and shifts
 * Source  own construct; price and limits of a change are common practice, no source
 * Check   ReplanTest
 * </pre>
 */
public final class Replan {
    private static final double CHANGE_USDM2 = .25 / Units.M2_PER_AC;
    private static final double MOST_CHANGED = .2;
    private static final double WORTH_IT = .01;
    private static final double NEVER_USD = 1e7;
    private static final double DEARER = 6;
    private static final int TRIES = 3;

    private final PlanProblem problem;
    private final Plan told;
    private final Effort effort;
    private final int[] stays;

    /**
     * The new plan.
     *
     * @param couldStay jobs told that the change alone does not touch
     * @param changed those of them that are on another rig or day now, or left out
     * @param fewest the plan that changes none of them
     */
    public record Replanned(Found found, int couldStay, List<Integer> changed, Found fewest) {
        public double changedShare() {
            return couldStay == 0 ? 0 : (double) changed.size() / couldStay;
        }
    }

    private Replan(PlanProblem problem, Plan told, Effort effort) {
        this.problem = problem;
        this.told = told;
        this.effort = effort;
        Plan kept = Planner.kept(problem, told);
        stays = new int[problem.jobs().size()];
        Arrays.setAll(stays, kept::shiftOf);
    }

    /**
     * @param problem as it is now; its shifts in the order that {@code told} knows, those that fall away of length 0
     * @param told the plan that drivers know
     * @param effort steps of each of the searches; a stop ends them all
     */
    public static Replanned of(PlanProblem problem, Plan told, Effort effort) {
        return new Replan(problem, told, effort).run();
    }

    /** Steps enough for an answer while somebody waits. */
    public static Effort quick(long seed, int jobs) {
        return Effort.of(seed, 400 + 60_000L / (20 + jobs));
    }

    private Replanned run() {
        Found fewest = search(told, j -> NEVER_USD);
        double factor = 1;
        for (int k = 0; k < TRIES; k++) {
            double by = factor;
            Found free = search(
                    fewest.plan(),
                    j -> by * CHANGE_USDM2 * problem.jobs().get(j).area_m2());
            Replanned next = replanned(free, fewest);
            boolean few = next.changedShare() <= MOST_CHANGED;
            boolean gains =
                    free.cost().total_usd() < (1 - WORTH_IT) * fewest.cost().total_usd();
            if (gains || few && free.cost().total_usd() < fewest.cost().total_usd()) {
                return next;
            }
            factor *= DEARER;
        }
        return replanned(fewest, fewest);
    }

    private Found search(Plan from, java.util.function.IntToDoubleFunction usd) {
        double[] changes = new double[stays.length];
        Arrays.setAll(changes, usd);
        return Planner.search(problem, from, new Changes(stays, changes), effort);
    }

    private Replanned replanned(Found found, Found fewest) {
        List<Integer> changed = new ArrayList<>();
        int couldStay = 0;
        for (int j = 0; j < stays.length; j++) {
            couldStay += stays[j] >= 0 ? 1 : 0;
            if (stays[j] >= 0 && found.plan().shiftOf(j) != stays[j]) {
                changed.add(j);
            }
        }
        return new Replanned(found, couldStay, changed, fewest);
    }
}
