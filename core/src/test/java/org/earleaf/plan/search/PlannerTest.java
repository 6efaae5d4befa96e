// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.RandomFleet;
import org.earleaf.plan.Rules;
import org.earleaf.units.SideBySide;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.Test;

class PlannerTest {
    private static final ForkJoinPool POOL = new ForkJoinPool(3);

    @AfterAll
    static void stop() {
        POOL.shutdown();
    }

    @Test
    void searches_side_by_side_give_the_best_of_what_each_finds_alone() {
        for (int seed = 0; seed < 5; seed++) {
            PlanProblem p = RandomFleet.of(seed, 3, 4, 40, true);
            Found together = Planner.best(p, Effort.of(seed, 1_500).by(SideBySide.in(POOL)), 4);
            assertThat(together).isEqualTo(Planner.best(p, Effort.of(seed, 1_500), 4));
            Found best = Planner.plan(p, Effort.of(seed, 1_500));
            for (int k = 1; k < 4; k++) {
                Found alone = Planner.plan(p, Effort.of(seed + k, 1_500));
                best = alone.cost().total_usd() < best.cost().total_usd() - 1e-6 ? alone : best;
            }
            assertThat(together.plan()).isEqualTo(best.plan());
            assertThat(together.steps()).isEqualTo(4 * 1_500);
            assertThat(Rules.broken(p, together.plan())).isEmpty();
        }
    }

    @Test
    void only_better_plans_are_told_whichever_search_finds_them() {
        PlanProblem p = RandomFleet.of(9, 3, 4, 40, true);
        List<Double> told = Collections.synchronizedList(new ArrayList<>());
        Found best = Planner.best(
                p,
                new Effort(
                        1,
                        2_000,
                        () -> false,
                        plan -> told.add(PlanCost.of(p, plan).total_usd()),
                        SideBySide.in(POOL)),
                4);
        assertThat(told).hasSizeGreaterThan(3).isSortedAccordingTo(Collections.reverseOrder());
        assertThat(told.get(told.size() - 1)).isEqualTo(best.cost().total_usd());
    }
}
