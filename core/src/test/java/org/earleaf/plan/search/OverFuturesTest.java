// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.earleaf.plan.ExactPlans;
import org.earleaf.plan.Job;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.RandomFleet;
import org.earleaf.plan.Shift;
import org.earleaf.units.SideBySide;
import org.junit.jupiter.api.Test;

/**
 * Against counting: every possible first day of small fleets, each completed to the optimum of every course by dynamic
 * programming, with none of the search's own code.
 */
class OverFuturesTest {
    private static final int FLEETS = 25;

    private static PlanProblem fleet(int seed) {
        return RandomFleet.of(seed, 1 + seed % 2, 3, 4, false);
    }

    /** Dry, wet on the second day, wet on both. */
    private static List<Course> courses(PlanProblem p) {
        return List.of(
                new Course(.5, p.shifts()), new Course(.3, wet(p, List.of(2))), new Course(.2, wet(p, List.of(2, 3))));
    }

    private static List<Shift> wet(PlanProblem p, List<Integer> days) {
        return p.shifts().stream()
                .map(s -> days.contains(s.day()) ? s.lasting(0) : s)
                .toList();
    }

    /** The cheapest of all first days: each job to one rig of day 1, or to none. */
    private static double counted_usd(PlanProblem p, List<Course> courses) {
        int rigs = p.rigs().size();
        int n = p.jobs().size();
        double best = Double.POSITIVE_INFINITY;
        for (int code = 0; code < Math.pow(rigs + 1, n); code++) {
            List<Job> jobs = new ArrayList<>();
            int rest = code;
            for (Job j : p.jobs()) {
                jobs.add(rest % (rigs + 1) == rigs ? j.notBefore(2) : only(j, rest % (rigs + 1)));
                rest /= rigs + 1;
            }
            double mean = 0;
            for (Course c : courses) {
                mean += c.share() * ExactPlans.optimum_usd(p.withJobs(jobs).withShifts(c.shifts()));
            }
            best = Math.min(best, mean);
        }
        return best;
    }

    /** A job for one rig on day 1 and nobody else. */
    private static Job only(Job j, int rig) {
        List<Double> work = new ArrayList<>(Collections.nCopies(j.work_s().size(), Double.NaN));
        work.set(rig, j.work_s().get(rig));
        List<Integer> last = new ArrayList<>(
                Collections.nCopies(work.size(), Math.min(1, j.lastDay().get(rig))));
        return new Job(
                j.name(), j.area_m2(), j.at(), work, j.loss(), j.release(), last, j.productClass(), j.supply_m3());
    }

    @Test
    void the_first_day_is_nearly_always_the_best_of_all_first_days_and_never_better_than_counted() {
        int reached = 0;
        double worst = 1;
        for (int seed = 0; seed < FLEETS; seed++) {
            PlanProblem p = fleet(seed);
            OverFutures.Robust found = OverFutures.of(p, courses(p), Effort.of(1, 6_000));
            double counted = counted_usd(p, courses(p));
            assertThat(found.mean_usd()).isGreaterThanOrEqualTo(counted - 1e-6);
            reached += found.mean_usd() < counted + .005 ? 1 : 0;
            worst = Math.max(worst, found.mean_usd() / counted);
        }
        System.out.println(FLEETS + " tried, " + (FLEETS - reached) + " failed to reach the best first day; worst "
                + Math.round(1000 * (worst - 1)) / 10.0 + " % above");
        assertThat(reached).isGreaterThanOrEqualTo(FLEETS * 9 / 10);
        assertThat(worst).isLessThan(1.05);
    }

    @Test
    void looking_at_the_futures_is_never_dearer_than_looking_at_the_likely_days() {
        double saved = 0;
        for (int seed = 0; seed < FLEETS; seed++) {
            PlanProblem p = fleet(seed);
            OverFutures.Robust found = OverFutures.of(p, courses(p), Effort.of(1, 6_000));
            assertThat(found.mean_usd()).isLessThanOrEqualTo(found.likely_usd() + 1e-6);
            assertThat(found.p10_usd()).isLessThanOrEqualTo(found.p90_usd());
            saved += found.likely_usd() - found.mean_usd();
        }
        assertThat(saved).isPositive();
    }

    @Test
    void with_one_course_it_is_the_plan_itself() {
        PlanProblem p = fleet(4);
        OverFutures.Robust found = OverFutures.of(p, List.of(new Course(1, p.shifts())), Effort.of(1, 6_000));
        assertThat(found.mean_usd()).isCloseTo(found.found().cost().total_usd(), within(1e-6));
        for (int j = 0; j < p.jobs().size(); j++) {
            assertThat(found.chanceDone().get(j)).isEqualTo(found.found().plan().shiftOf(j) >= 0 ? 1.0 : 0.0);
        }
    }

    @Test
    void courses_weighed_side_by_side_give_the_same_to_the_bit() {
        ForkJoinPool pool = new ForkJoinPool(3);
        try {
            for (int seed = 0; seed < 5; seed++) {
                PlanProblem p = fleet(seed);
                Effort inTurn = Effort.of(1, 2_000);
                assertThat(OverFutures.of(p, courses(p), inTurn.by(SideBySide.in(pool))))
                        .isEqualTo(OverFutures.of(p, courses(p), inTurn));
            }
        } finally {
            pool.shutdown();
        }
    }
}
