// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.List;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Timetable;
import org.earleaf.plan.WhyLeftOut;

/**
 * The best plan found.
 *
 * @param steps taken
 * @param cutShort whether it was stopped before the steps asked for
 */
public record Found(PlanProblem problem, Plan plan, PlanCost cost, long steps, boolean cutShort) {
    static Found of(PlanProblem problem, Plan plan, long steps, boolean cutShort) {
        return new Found(problem, plan, PlanCost.of(problem, plan), steps, cutShort);
    }

    /** Every shift in time. */
    public List<Timetable> timetables() {
        return Timetable.all(problem, plan);
    }

    /** Every job left out, with its reason; worked out when asked for. */
    public List<WhyLeftOut> leftOut() {
        return plan.leftOut(problem).stream()
                .map(j -> WhyLeftOut.of(problem, plan, j))
                .toList();
    }
}
