// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan.library;

import ai.timefold.solver.core.api.domain.solution.PlanningEntityCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.PlanningScore;
import ai.timefold.solver.core.api.domain.solution.PlanningSolution;
import ai.timefold.solver.core.api.domain.solution.ProblemFactCollectionProperty;
import ai.timefold.solver.core.api.domain.solution.ProblemFactProperty;
import ai.timefold.solver.core.api.domain.valuerange.ValueRangeProvider;
import ai.timefold.solver.core.api.score.buildin.hardsoftlong.HardSoftLongScore;
import java.util.List;
import java.util.stream.IntStream;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.jspecify.annotations.Nullable;

/** A plan as the library moves it about. */
@PlanningSolution
public final class Fleet {
    @ProblemFactProperty
    private @Nullable PlanProblem problem;

    @ProblemFactCollectionProperty
    @ValueRangeProvider
    private List<Task> tasks = List.of();

    @PlanningEntityCollectionProperty
    private List<Route> routes = List.of();

    @PlanningScore
    private @Nullable HardSoftLongScore score;

    /** For the library. */
    public Fleet() {}

    Fleet(PlanProblem problem) {
        this.problem = problem;
        tasks = IntStream.range(0, problem.jobs().size()).mapToObj(Task::new).toList();
        routes = IntStream.rangeClosed(0, problem.shifts().size())
                .mapToObj(Route::new)
                .toList();
    }

    public @Nullable PlanProblem getProblem() {
        return problem;
    }

    public List<Task> getTasks() {
        return tasks;
    }

    public List<Route> getRoutes() {
        return routes;
    }

    public @Nullable HardSoftLongScore getScore() {
        return score;
    }

    public void setScore(@Nullable HardSoftLongScore score) {
        this.score = score;
    }

    Plan plan() {
        return new Plan(routes.stream()
                .limit(routes.size() - 1L)
                .map(r -> r.getTasks().stream().map(Task::job).toList())
                .toList());
    }
}
