// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.List;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.WhyLeftOut;

/**
 * The best plan found.
 *
 * @param steps taken
 * @param cutShort whether it was stopped before the steps asked for
 */
public record Found(Plan plan, PlanCost cost, List<WhyLeftOut> leftOut, long steps, boolean cutShort) {
    static Found of(PlanProblem problem, Plan plan, long steps, boolean cutShort) {
        List<WhyLeftOut> leftOut = plan.leftOut(problem).stream()
                .map(j -> WhyLeftOut.of(problem, plan, j))
                .toList();
        return new Found(plan, PlanCost.of(problem, plan), leftOut, steps, cutShort);
    }
}
