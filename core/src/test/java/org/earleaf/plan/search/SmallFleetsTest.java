// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.plan.ExactPlans;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.RandomFleet;
import org.earleaf.plan.Roads;
import org.junit.jupiter.api.Test;

/** Two hundred made-up fleets of up to eight jobs against the optimum by dynamic programming. */
class SmallFleetsTest {
    @Test
    void the_optimum_is_reached_on_nearly_every_small_fleet_and_never_undercut() {
        int reached = 0;
        int near = 0;
        for (int seed = 0; seed < 200; seed++) {
            PlanProblem p = RandomFleet.of(seed, 1 + seed % 3, 1 + seed % 2, 4 + seed % 5, false);
            double exact = ExactPlans.optimum_usd(p);
            double found = Planner.plan(p, Effort.of(seed, 1_500)).cost().total_usd();
            assertThat(found).isGreaterThanOrEqualTo(exact - 1e-6);
            reached += found < exact + .005 ? 1 : 0;
            near += found < exact * 1.01 ? 1 : 0;
        }
        System.out.println(
                "200 tried, " + (200 - near) + " failed (more than 1 % above the optimum); " + reached + " reached it");
        assertThat(near).isGreaterThanOrEqualTo(198);
    }

    @Test
    void the_same_where_the_way_home_is_counted() {
        int near = 0;
        for (int seed = 0; seed < 100; seed++) {
            PlanProblem p = RandomFleet.of(seed, 1 + seed % 3, 1 + seed % 2, 4 + seed % 4, false)
                    .withRoads(new Roads(360, .15, true));
            double exact = ExactPlans.optimum_usd(p);
            double found = Planner.plan(p, Effort.of(seed, 1_500)).cost().total_usd();
            assertThat(found).isGreaterThanOrEqualTo(exact - 1e-6);
            near += found < exact * 1.01 ? 1 : 0;
        }
        assertThat(near).isGreaterThanOrEqualTo(99);
    }

    @Test
    void a_search_that_is_stopped_at_once_still_gives_a_plan() {
        PlanProblem p = RandomFleet.of(3, 4, 4, 60, true);
        Found found = Planner.plan(p, new Effort(1, 1_000_000, () -> true, plan -> {}));
        assertThat(found.cutShort()).isTrue();
        assertThat(found.leftOut()).hasSizeLessThan(60);
    }

    @Test
    void a_longer_search_is_no_dearer_on_the_whole() {
        PlanProblem p = RandomFleet.of(8, 3, 4, 40, true);
        double brief = Planner.plan(p, Effort.of(1, 500)).cost().total_usd();
        double longer = Planner.plan(p, Effort.of(1, 8_000)).cost().total_usd();
        assertThat(longer).isLessThanOrEqualTo(brief + 1e-6);
        assertThat(brief).isCloseTo(longer, within(.5 * longer));
    }
}
