// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** An infeasible farm says which field, which window, which rule, by how much; figures worked by hand. */
class WhyLeftOutTest {
    private static WhyLeftOut only(PlanProblem p) {
        Found found = Planner.plan(p, Effort.of(1, 500));
        assertThat(found.leftOut()).hasSize(1);
        return found.leftOut().get(0);
    }

    private static PlanProblem one(String job, int shiftDay, int minutes, int rig) {
        PlanProblem p = FleetInstance.usual();
        List<Job> jobs = p.jobs().stream().filter(j -> j.name().equals(job)).toList();
        return p.withJobs(jobs).withShifts(List.of(new Shift(rig, shiftDay, 60 * minutes)));
    }

    @Test
    void too_late_for_the_only_rig() {
        WhyLeftOut why = only(one("F3", 4, 480, 1));
        assertThat(why.rule()).contains(Rule.DEADLINE);
        assertThat(why.by()).isEqualTo(3);
        assertThat(why.said().code()).isEqualTo("plan.left-no-day");
        assertThat(why.said().values())
                .containsEntry("first", day(1))
                .containsEntry("rigs", List.of(through("R1", 4), through("R2", 1)))
                .containsEntry("lost", Measure.MONEY.of(5400));
        assertThat(nearest(why).code()).isEqualTo("plan.too-late");
        assertThat(nearest(why).values()).containsEntry("last", day(1)).containsEntry("late", Measure.DAYS.of(3));
    }

    @Test
    void too_long_for_any_shift() {
        WhyLeftOut why = only(one("F5", 1, 300, 1));
        // 30 min of road and 340 of work against 300.
        assertThat(why.rule()).contains(Rule.SHIFT);
        assertThat(why.by()).isEqualTo(70 * 60);
        assertThat(why.said().code()).isEqualTo("plan.left-alone");
        assertThat(why.said().values()).containsEntry("lost", Measure.MONEY.of(7500));
        assertThat(nearest(why).code()).isEqualTo("plan.shift-short");
        assertThat(nearest(why).values())
                .containsEntry("needs", Measure.DURATION.of(370 * 60))
                .containsEntry("has", Measure.DURATION.of(300 * 60))
                .containsEntry("over", Measure.DURATION.of(70 * 60));
    }

    @Test
    void not_worth_the_rig() {
        PlanProblem p = one("F4", 1, 420, 0);
        Job f4 = p.jobs().get(0);
        Job poor = new Job(
                f4.name(),
                f4.area_m2(),
                f4.at(),
                f4.work_s(),
                new Job.Loss(f4.loss().byDay(), 100),
                1,
                f4.lastDay(),
                "",
                0);
        WhyLeftOut why = only(p.withJobs(List.of(poor)));
        // 50 min of road and 89 of work at $3 a minute.
        assertThat(why.rule()).isEmpty();
        assertThat(why.said().code()).isEqualTo("plan.left-too-dear");
        assertThat(((Measured) why.said().values().get("cost")).value())
                .isCloseTo(417, org.assertj.core.api.Assertions.within(.005));
        assertThat(why.said().values()).containsEntry("lost", Measure.MONEY.of(100));
    }

    @Test
    void no_shift_at_all() {
        PlanProblem p = FleetInstance.usual().withShifts(new ArrayList<>());
        Found found = Planner.plan(p, Effort.of(1, 100));
        assertThat(found.leftOut()).hasSize(7);
        assertThat(nearest(found.leftOut().get(0))).isEqualTo(Said.of("plan.no-shift"));
    }

    private static Said nearest(WhyLeftOut why) {
        return (Said) java.util.Objects.requireNonNull(why.said().values().get("nearest"));
    }

    private static Said day(int n) {
        return Said.of("plan.numbered-day", "n", n);
    }

    private static Said through(String rig, int last) {
        return Said.of("plan.rig-through", "rig", rig, "last", day(last));
    }
}
