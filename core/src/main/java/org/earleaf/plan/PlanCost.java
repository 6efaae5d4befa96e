// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/**
 * What a plan costs.
 *
 * <pre>
 * cost = sum of losses of the days on which jobs are done + sum of what undone jobs lose + rig time x its cost
 *
 * loss    LossByDay of each job done            [$]
 * undone  of each job that no shift does        [$]
 * rig     working, travelling, cleaning, waiting for a tender   [$]
 * Range   0 or more
 * Source  weighted losses and machine time as in any fleet schedule; the seven-field instance is worked by hand
 * Check   FleetInstanceTest
 * </pre>
 */
public record PlanCost(double loss_usd, double undone_usd, double rig_usd) {
    public static PlanCost of(PlanProblem problem, Plan plan) {
        double loss = 0;
        double rig = 0;
        java.util.List<Timetable> tables = Timetable.all(problem, plan);
        for (int s = 0; s < plan.routes().size(); s++) {
            Shift shift = problem.shifts().get(s);
            for (int j : plan.routes().get(s)) {
                loss += problem.jobs().get(j).loss_usd(shift.rig(), shift.day());
            }
            rig += problem.rigs().get(shift.rig()).cost_usdS() * tables.get(s).busy_s();
        }
        double undone = plan.leftOut(problem).stream()
                .mapToDouble(j -> problem.jobs().get(j).undone_usd())
                .sum();
        return new PlanCost(loss, undone, rig);
    }

    public double total_usd() {
        return loss_usd + undone_usd + rig_usd;
    }
}
