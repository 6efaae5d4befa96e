// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.function.Predicate;
import org.earleaf.exchange.PlanInstance;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Planner;
import org.junit.jupiter.api.Test;

/**
 * Optima of the seven-field example, proved by counting all assignments and by a constraint solver: 3908.00; without the
 * third day 4176.00; without the first rig 16,977.00.
 */
class ColumnBoundTest {
    private static final PlanProblem SEVEN =
            PlanInstance.read(Path.of("..", "docs", "plan-example")).problem();

    private static PlanProblem without(Predicate<Shift> gone) {
        return SEVEN.withShifts(SEVEN.shifts().stream()
                .map(s -> gone.test(s) ? new Shift(s.rig(), s.day(), 0) : s)
                .toList());
    }

    private static void proves(PlanProblem p, double optimum_usd) {
        Plan ours = Planner.plan(p, Effort.of(1, 20_000)).plan();
        for (Plan known : new Plan[] {ours, Plan.empty(p)}) {
            ColumnBound.Bound bound = ColumnBound.of(p, known, 30);
            assertThat(bound.proven()).isTrue();
            assertThat(bound.bound_usd()).isCloseTo(optimum_usd, within(.011));
            assertThat(bound.best_usd()).isCloseTo(optimum_usd, within(.011));
        }
    }

    @Test
    void proves_the_optimum_of_the_example_and_of_its_changes() {
        proves(SEVEN, 3908);
        proves(without(s -> s.day() == 3), 4176);
        proves(without(s -> s.rig() == 0), 16_977);
    }

    @Test
    void a_bound_cut_short_is_none_too_high() {
        PlanProblem p = Draw.of(2);
        Plan ours = Planner.plan(p, Effort.of(1, 50_000)).plan();
        ColumnBound.Bound whole = ColumnBound.of(p, ours, 60);
        ColumnBound.Bound cut = ColumnBound.of(p, ours, 0);
        assertThat(whole.proven()).isTrue();
        assertThat(cut.bound_usd()).isLessThanOrEqualTo(whole.best_usd() + .01);
    }
}
