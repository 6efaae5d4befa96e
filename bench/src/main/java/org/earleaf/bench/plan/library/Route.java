// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan.library;

import ai.timefold.solver.core.api.domain.entity.PlanningEntity;
import ai.timefold.solver.core.api.domain.lookup.PlanningId;
import ai.timefold.solver.core.api.domain.variable.PlanningListVariable;
import java.util.ArrayList;
import java.util.List;

/** What a shift does, in its order. */
@PlanningEntity
public final class Route {
    @PlanningId
    private int shift;

    @PlanningListVariable
    private List<Task> tasks = new ArrayList<>();

    /** For the library. */
    public Route() {}

    Route(int shift) {
        this.shift = shift;
    }

    public int getShift() {
        return shift;
    }

    public List<Task> getTasks() {
        return tasks;
    }

    public void setTasks(List<Task> tasks) {
        this.tasks = tasks;
    }
}
