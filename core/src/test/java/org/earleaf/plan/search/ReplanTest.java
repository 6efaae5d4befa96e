// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.plan.FleetInstance;
import org.earleaf.plan.Pin;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.RandomFleet;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.junit.jupiter.api.Test;

class ReplanTest {
    private static PlanProblem without(PlanProblem p, int rig, int fromDay) {
        return p.withShifts(p.shifts().stream()
                .map(s -> s.rig() == rig && s.day() >= fromDay
                        ? new Shift(s.rig(), s.day(), 0, s.begins_s(), s.windows())
                        : s)
                .toList());
    }

    @Test
    void nothing_changed_changes_nothing() {
        PlanProblem p = FleetInstance.usual();
        Plan told = Planner.plan(p, Effort.of(1, 4_000)).plan();
        Replan.Replanned again = Replan.of(p, told, Replan.quick(1, 7));
        assertThat(again.changed()).isEmpty();
        assertThat(again.couldStay()).isEqualTo(7);
        assertThat(again.found().plan()).isEqualTo(told);
    }

    @Test
    void a_day_of_rain_ends_at_the_new_optimum_when_that_gains_more_than_a_hundredth() {
        PlanProblem p = FleetInstance.usual();
        Plan told = Planner.plan(p, Effort.of(1, 4_000)).plan();
        PlanProblem rain = p.withShifts(p.shifts().stream()
                .map(s -> s.day() == 3 ? new Shift(s.rig(), s.day(), 0) : s)
                .toList());
        Replan.Replanned after = Replan.of(rain, told, Effort.of(1, 4_000));
        // Optimum with the third day cancelled, by enumeration.
        assertThat(after.found().cost().total_usd()).isCloseTo(4176.00, within(.005));
        assertThat(after.changedShare()).isLessThanOrEqualTo(.2);
    }

    @Test
    void a_breakdown_moves_few_of_the_others_unless_that_gains() {
        for (int seed = 0; seed < 25; seed++) {
            PlanProblem p = RandomFleet.of(seed, 3, 4, 30, true);
            Plan told = Planner.plan(p, Effort.of(seed, 2_000)).plan();
            PlanProblem broken = without(p, 0, 2);
            Replan.Replanned after = Replan.of(broken, told, Replan.quick(seed, 30));
            assertThat(Rules.broken(broken, after.found().plan())).isEmpty();
            double fewest = after.fewest().cost().total_usd();
            assertThat(after.found().cost().total_usd()).isLessThanOrEqualTo(fewest + 1e-6);
            assertThat(after.changedShare() <= .2 || after.found().cost().total_usd() < .99 * fewest)
                    .isTrue();
        }
    }

    @Test
    void the_plan_with_the_fewest_changes_keeps_all_that_could_stay() {
        PlanProblem p = RandomFleet.of(5, 3, 4, 30, false);
        Plan told = Planner.plan(p, Effort.of(5, 2_000)).plan();
        PlanProblem broken = without(p, 1, 1);
        Replan.Replanned after = Replan.of(broken, told, Replan.quick(5, 30));
        for (int s = 0; s < p.shifts().size(); s++) {
            if (p.shifts().get(s).rig() != 1) {
                assertThat(after.fewest().plan().routes().get(s))
                        .containsAll(told.routes().get(s));
            }
        }
    }

    @Test
    void a_pinned_job_goes_where_it_is_pinned_and_its_price_is_told() {
        PlanProblem p = FleetInstance.usual();
        Found before = Planner.plan(p, Effort.of(1, 4_000));
        PlanProblem pinned = p.withPins(List.of(new Pin(0, 0, 1)));
        Replan.Replanned after = Replan.of(pinned, before.plan(), Effort.of(1, 4_000));
        List<String> onDay1 = new ArrayList<>();
        after.found()
                .plan()
                .routes()
                .get(0)
                .forEach(j -> onDay1.add(p.jobs().get(j).name()));
        assertThat(onDay1).contains("F1");
        assertThat(PlanCost.of(p, after.found().plan()).total_usd())
                .isGreaterThan(before.cost().total_usd());
    }
}
