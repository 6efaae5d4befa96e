// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
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
        assertThat(why.sentence())
                .isEqualTo("No rig has a shift on a day on which it may do it (from day 1 on; R1 until day 4, R2 until"
                        + " day 1). Nearest: R2 may do F3 until day 1; day 4 is 3 days too late. Left out it loses"
                        + " $5400.00.");
    }

    @Test
    void too_long_for_any_shift() {
        WhyLeftOut why = only(one("F5", 1, 300, 1));
        // 30 min of road and 340 of work against 300.
        assertThat(why.rule()).contains(Rule.SHIFT);
        assertThat(why.by()).isEqualTo(70 * 60);
        assertThat(why.sentence())
                .isEqualTo("Even alone it does not fit: R2 needs 370 min on day 1 and has 300 min: 70 min short. Left"
                        + " out it loses $7500.00.");
    }

    @Test
    void not_worth_the_rig() {
        PlanProblem p = one("F4", 1, 420, 0);
        Job f4 = p.jobs().get(0);
        Job poor = new Job(f4.name(), f4.area_m2(), f4.at(), f4.work_s(), f4.loss(), 100, 1, f4.lastDay(), "", 0);
        WhyLeftOut why = only(p.withJobs(List.of(poor)));
        // 50 min of road and 89 of work at $3 a minute.
        assertThat(why.rule()).isEmpty();
        assertThat(why.sentence())
                .isEqualTo("There is room, but doing it would cost $417.00, more than it brings. Left out it loses"
                        + " $100.00.");
    }

    @Test
    void no_shift_at_all() {
        PlanProblem p = FleetInstance.usual().withShifts(new ArrayList<>());
        Found found = Planner.plan(p, Effort.of(1, 100));
        assertThat(found.leftOut()).hasSize(7);
        assertThat(found.leftOut().get(0).sentence()).contains("There is no shift at all.");
    }
}
