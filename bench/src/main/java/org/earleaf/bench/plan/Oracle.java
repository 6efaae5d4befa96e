// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import com.google.ortools.Loader;
import com.google.ortools.sat.BoolVar;
import com.google.ortools.sat.CircuitConstraint;
import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverSolutionCallback;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.sat.LinearExprBuilder;
import com.google.ortools.sat.Literal;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.plan.Job;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;

/** The same problem to CP-SAT: a circuit a shift over the jobs it may do, arcs carrying the road, all in minutes and cents. */
final class Oracle {
    /** What the solver came to; costs in $, the times at which each better plan stood in s. */
    record Answer(Plan plan, double best_usd, double bound_usd, boolean proven, double took_s, List<double[]> trace) {}

    private final PlanProblem p;
    private final CpModel model = new CpModel();
    private final LinearExprBuilder cost = LinearExpr.newBuilder();
    private final BoolVar[][] does;
    private final List<Map<Integer, BoolVar>> arcs = new ArrayList<>();

    private Oracle(PlanProblem p) {
        this.p = p;
        does = new BoolVar[p.jobs().size()][p.shifts().size()];
    }

    static Answer solve(PlanProblem problem, double seconds, int workers) {
        Loader.loadNativeLibraries();
        return new Oracle(problem).solve(seconds, workers);
    }

    private boolean may(int j, Shift s) {
        Job job = p.jobs().get(j);
        return job.canBeDoneBy(s.rig())
                && s.day() >= job.release()
                && s.day() <= job.lastDay().get(s.rig());
    }

    private void jobs() {
        for (int j = 0; j < p.jobs().size(); j++) {
            List<Literal> one = new ArrayList<>();
            for (int s = 0; s < p.shifts().size(); s++) {
                Shift shift = p.shifts().get(s);
                if (may(j, shift)) {
                    does[j][s] = model.newBoolVar("x" + j + "_" + s);
                    one.add(does[j][s]);
                    long perMin = Whole.cents(p.rigs().get(shift.rig()).cost_usdS() * 60);
                    long work = Whole.minutes(p.jobs().get(j).work_s().get(shift.rig()));
                    cost.addTerm(
                            does[j][s],
                            Whole.cents(p.jobs().get(j).loss_usd(shift.rig(), shift.day())) + perMin * work);
                }
            }
            BoolVar undone = model.newBoolVar("u" + j);
            one.add(undone);
            cost.addTerm(undone, Whole.cents(p.jobs().get(j).undone_usd()));
            model.addExactlyOne(one);
        }
    }

    /** Node 0 is the yard; a job that the shift does not do loops to itself. */
    private void shift(int s) {
        Shift shift = p.shifts().get(s);
        Map<Integer, BoolVar> mine = new HashMap<>();
        arcs.add(mine);
        List<Integer> able = new ArrayList<>();
        for (int j = 0; j < p.jobs().size(); j++) {
            if (does[j][s] != null) {
                able.add(j);
            }
        }
        if (able.isEmpty()) {
            return;
        }
        long perMin = Whole.cents(p.rigs().get(shift.rig()).cost_usdS() * 60);
        CircuitConstraint circuit = model.addCircuit();
        LinearExprBuilder time = LinearExpr.newBuilder();
        BoolVar idle = model.newBoolVar("idle" + s);
        circuit.addArc(0, 0, idle);
        for (int j : able) {
            circuit.addArc(j + 1, j + 1, does[j][s].not());
            model.addImplication(does[j][s], idle.not()); // else a ring of jobs could leave the yard out
            time.addTerm(does[j][s], Whole.minutes(p.jobs().get(j).work_s().get(shift.rig())));
            BoolVar home = model.newBoolVar("home");
            circuit.addArc(j + 1, 0, home);
            time.addTerm(home, Whole.minutes(p.home_s(shift, j)));
            cost.addTerm(home, perMin * Whole.minutes(p.home_s(shift, j)));
            for (int before = -1; before < p.jobs().size(); before++) {
                if (before != j && (before < 0 || does[before][s] != null)) {
                    BoolVar arc = model.newBoolVar("a");
                    circuit.addArc(before + 1, j + 1, arc);
                    mine.put((before + 1) * 1000 + j, arc);
                    long road = Whole.minutes(p.travel_s(shift, before, j));
                    time.addTerm(arc, road);
                    cost.addTerm(arc, perMin * road);
                }
            }
        }
        model.addLessOrEqual(time, Whole.minutes(shift.length_s()));
    }

    private void rules() {
        for (SharedRule rule : SharedRule.of(p)) {
            LinearExprBuilder counted = LinearExpr.newBuilder();
            for (int j = 0; j < does.length; j++) {
                for (int s = 0; s < does[j].length; s++) {
                    long count = Math.round(rule.counts()[j][s]);
                    if (does[j][s] != null && count != 0) {
                        counted.addTerm(does[j][s], count);
                    }
                }
            }
            model.addLessOrEqual(counted, Math.round(rule.most()));
        }
    }

    private Answer solve(double seconds, int workers) {
        jobs();
        for (int s = 0; s < p.shifts().size(); s++) {
            shift(s);
        }
        rules();
        model.minimize(cost);
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setMaxTimeInSeconds(seconds)
                .setNumWorkers(workers)
                .setRandomSeed(1);
        List<double[]> trace = new ArrayList<>();
        long start = System.nanoTime();
        CpSolverStatus status = solver.solve(model, new CpSolverSolutionCallback() {
            @Override
            public void onSolutionCallback() {
                trace.add(new double[] {(System.nanoTime() - start) / 1e9, objectiveValue() / 100});
            }
        });
        double took = (System.nanoTime() - start) / 1e9;
        boolean any = status == CpSolverStatus.OPTIMAL || status == CpSolverStatus.FEASIBLE;
        return new Answer(
                any ? plan(solver) : Plan.empty(p),
                any ? solver.objectiveValue() / 100 : Double.POSITIVE_INFINITY,
                solver.bestObjectiveBound() / 100,
                status == CpSolverStatus.OPTIMAL,
                took,
                trace);
    }

    private Plan plan(CpSolver solver) {
        List<List<Integer>> routes = new ArrayList<>();
        for (Map<Integer, BoolVar> mine : arcs) {
            Map<Integer, Integer> next = new HashMap<>();
            mine.forEach((key, arc) -> {
                if (solver.booleanValue(arc)) {
                    next.put(key / 1000 - 1, key % 1000);
                }
            });
            List<Integer> route = new ArrayList<>();
            for (Integer at = next.get(-1); at != null; at = next.get(at)) {
                route.add(at);
            }
            routes.add(route);
        }
        return new Plan(routes);
    }
}
