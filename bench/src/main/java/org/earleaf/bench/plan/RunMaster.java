// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.plan.PlanProblem;

/** The choice of runs in shares: every job in one run or undone, every shift one run, rules over shifts kept. In cents. */
final class RunMaster {
    private final MPSolver lp = MPSolver.createSolver("GLOP");
    private final MPObjective cost = lp.objective();
    private final MPConstraint[] once;
    private final MPConstraint[] oneRun;
    private final List<SharedRule> rules;
    private final List<MPConstraint> shared = new ArrayList<>();
    private final List<ShiftRuns.Run> runs = new ArrayList<>();
    private final List<MPVariable> shares = new ArrayList<>();

    RunMaster(PlanProblem p) {
        cost.setMinimization();
        once = new MPConstraint[p.jobs().size()];
        oneRun = new MPConstraint[p.shifts().size()];
        for (int j = 0; j < once.length; j++) {
            once[j] = lp.makeConstraint(1, 1);
            MPVariable undone = lp.makeNumVar(0, 1, "");
            once[j].setCoefficient(undone, 1);
            cost.setCoefficient(undone, Whole.cents(p.jobs().get(j).undone_usd()));
        }
        Arrays.setAll(oneRun, s -> lp.makeConstraint(-MPSolver.infinity(), 1));
        rules = SharedRule.of(p);
        rules.forEach(rule -> shared.add(lp.makeConstraint(-MPSolver.infinity(), rule.most())));
    }

    void add(ShiftRuns.Run run) {
        MPVariable share = lp.makeNumVar(0, MPSolver.infinity(), "");
        runs.add(run);
        shares.add(share);
        cost.setCoefficient(share, run.cents());
        oneRun[run.shift()].setCoefficient(share, 1);
        for (int j : run.jobs()) {
            once[j].setCoefficient(share, 1);
        }
        for (int k = 0; k < rules.size(); k++) {
            double count = rules.get(k).of(run.shift(), run.jobs());
            if (count != 0) {
                shared.get(k).setCoefficient(share, count);
            }
        }
    }

    /** Least cost in shares. */
    double solve() {
        if (lp.solve() != MPSolver.ResultStatus.OPTIMAL) {
            throw new IllegalStateException("the choice in shares was not solved");
        }
        return cost.value();
    }

    /** What one run more of each shift is worth, 0 or below. */
    double[] ofShifts() {
        return Arrays.stream(oneRun).mapToDouble(MPConstraint::dualValue).toArray();
    }

    /** By shift and job: what a run may cost for doing it there. */
    double[][] prices() {
        double[] job = Arrays.stream(once).mapToDouble(MPConstraint::dualValue).toArray();
        double[][] price = new double[oneRun.length][];
        Arrays.setAll(price, s -> job.clone());
        for (int k = 0; k < rules.size(); k++) {
            double dual = shared.get(k).dualValue();
            for (int s = 0; s < price.length; s++) {
                for (int j = 0; j < job.length; j++) {
                    price[s][j] += rules.get(k).counts()[j][s] * dual;
                }
            }
        }
        return price;
    }

    List<ShiftRuns.Run> runs() {
        return runs;
    }

    double[] shares() {
        return shares.stream().mapToDouble(MPVariable::solutionValue).toArray();
    }

    double[] reduced() {
        return shares.stream().mapToDouble(MPVariable::reducedCost).toArray();
    }

    /** Of three jobs at most one run may do two: no plan breaks it, shares do. Source: Jepsen et al. 2008, Oper. Res. 56:497. */
    void cut(int a, int b, int c) {
        MPConstraint cut = lp.makeConstraint(-MPSolver.infinity(), 1);
        for (int r = 0; r < runs.size(); r++) {
            int met = 0;
            for (int j : runs.get(r).jobs()) {
                met += j == a || j == b || j == c ? 1 : 0;
            }
            if (met >= 2) {
                cut.setCoefficient(shares.get(r), 1);
            }
        }
    }
}
