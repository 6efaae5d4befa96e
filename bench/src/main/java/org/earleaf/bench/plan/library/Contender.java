// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan.library;

import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import ai.timefold.solver.core.api.solver.Solver;
import ai.timefold.solver.core.api.solver.SolverFactory;
import ai.timefold.solver.core.config.constructionheuristic.ConstructionHeuristicPhaseConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.composite.UnionMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.ListSwapMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.SubListChangeMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.SubListSwapMoveSelectorConfig;
import ai.timefold.solver.core.config.heuristic.selector.move.generic.list.kopt.KOptListMoveSelectorConfig;
import ai.timefold.solver.core.config.localsearch.LocalSearchPhaseConfig;
import ai.timefold.solver.core.config.localsearch.decider.acceptor.LocalSearchAcceptorConfig;
import ai.timefold.solver.core.config.localsearch.decider.forager.LocalSearchForagerConfig;
import ai.timefold.solver.core.config.score.director.ScoreDirectorFactoryConfig;
import ai.timefold.solver.core.config.solver.EnvironmentMode;
import ai.timefold.solver.core.config.solver.SolverConfig;
import ai.timefold.solver.core.config.solver.termination.TerminationConfig;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;

/** A general local-search library on the same problem, on one thread. */
public final class Contender {
    /** What it came to; costs in $, the times at which each better plan stood in s. */
    public record Answer(Plan plan, double best_usd, List<double[]> trace) {}

    /** Of worse plans taken at first; of a few tried, that which came nearest on three farms. */
    private static final String HEAT = "0hard/30000soft";

    private Contender() {}

    public static Answer solve(PlanProblem problem, double seconds, long seed) {
        Solver<Fleet> solver =
                SolverFactory.<Fleet>create(config(seconds, seed)).buildSolver();
        List<double[]> trace = new ArrayList<>();
        long start = System.nanoTime();
        solver.addEventListener(event -> {
            HardSoftLongScore score = (HardSoftLongScore) event.getNewBestScore();
            if (score.isFeasible()) {
                trace.add(new double[] {(System.nanoTime() - start) / 1e9, -score.softScore() / 100.0});
            }
        });
        Fleet best = solver.solve(new Fleet(problem));
        HardSoftLongScore score = Objects.requireNonNull(best.getScore());
        return new Answer(
                best.plan(), score.isFeasible() ? -score.softScore() / 100.0 : Double.POSITIVE_INFINITY, trace);
    }

    private static SolverConfig config(double seconds, long seed) {
        return new SolverConfig()
                .withSolutionClass(Fleet.class)
                .withEntityClasses(Route.class)
                .withEnvironmentMode(EnvironmentMode.NO_ASSERT)
                .withRandomSeed(seed)
                .withScoreDirectorFactory(
                        new ScoreDirectorFactoryConfig().withIncrementalScoreCalculatorClass(FleetScore.class))
                .withTerminationConfig(new TerminationConfig().withMillisecondsSpentLimit((long) (1000 * seconds)))
                .withPhases(new ConstructionHeuristicPhaseConfig(), search());
    }

    /**
     * Its moves of one and of many jobs, its k-opt, and annealing by the time that is left. Its moves by nearness are no part
     * of the free library. Its ruin and recreate cannot leave a job out (1.32.0 throws), and with the jobs left out held as
     * one more list it made plans 0 to 55 % dearer than without.
     */
    private static LocalSearchPhaseConfig search() {
        return new LocalSearchPhaseConfig()
                .withMoveSelectorConfig(new UnionMoveSelectorConfig(List.of(
                        new ListChangeMoveSelectorConfig().withFixedProbabilityWeight(3.0),
                        new ListSwapMoveSelectorConfig().withFixedProbabilityWeight(3.0),
                        new SubListChangeMoveSelectorConfig().withFixedProbabilityWeight(1.0),
                        new SubListSwapMoveSelectorConfig().withFixedProbabilityWeight(1.0),
                        new KOptListMoveSelectorConfig().withFixedProbabilityWeight(1.0))))
                .withAcceptorConfig(new LocalSearchAcceptorConfig().withSimulatedAnnealingStartingTemperature(HEAT))
                .withForagerConfig(new LocalSearchForagerConfig().withAcceptedCountLimit(1));
    }
}
