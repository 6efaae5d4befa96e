// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** Each rule broken once, on the seven-field instance with something added to it. */
class RulesTest {
    private static final PlanProblem P = FleetInstance.usual();
    // Shifts: 0 R1 day 1, 1 R2 day 1, 2 R1 day 3, 3 R2 day 3, 4 R1 day 4, 5 R2 day 4.

    private static List<Breach> broken(PlanProblem p, int shift, String names) {
        List<List<Integer>> routes = new ArrayList<>(Plan.empty(p).routes());
        routes.set(shift, FleetInstance.route(names));
        return Rules.broken(p, new Plan(routes));
    }

    private static void breaks(List<Breach> found, Rule rule, double by, Said said) {
        assertThat(found).hasSize(1);
        assertThat(found.get(0).rule()).isEqualTo(rule);
        assertThat(found.get(0).by()).isEqualTo(by);
        assertThat(found.get(0).said()).isEqualTo(said);
    }

    private static PlanProblem with(
            List<Job> jobs, Cleanout cleanout, List<Supply> supply, List<Gap> gaps, List<Pin> pins) {
        return new PlanProblem(
                P.rigs(),
                P.shifts(),
                jobs,
                P.roads(),
                cleanout,
                new PlanProblem.Terms(supply, gaps, pins),
                List.of(),
                Optional.empty());
    }

    private static Job changed(Job j, String productClass, double supply_m3) {
        return new Job(
                j.name(), j.area_m2(), j.at(), j.work_s(), j.loss(), j.release(), j.lastDay(), productClass, supply_m3);
    }

    @Test
    void a_job_before_its_day() {
        breaks(
                broken(P, 0, "F6"),
                Rule.RELEASE,
                2,
                Said.of("plan.too-soon", "job", "F6", "first", day(3), "day", day(1), "early", days(2)));
    }

    @Test
    void a_job_after_the_last_day_of_a_rig() {
        breaks(
                broken(P, 5, "F2"),
                Rule.DEADLINE,
                1,
                Said.of("plan.too-late", "rig", "R2", "job", "F2", "last", day(3), "day", day(4), "late", days(1)));
    }

    @Test
    void a_shift_too_short() {
        // 74 min to F1 (6 + 4 x 3 = 18 on the road) and 188 of work, 34 and 178 more to F5: worked by hand.
        List<Breach> found = broken(P, 2, "F1 F5");
        double end = 18 + 188 + 6 + 4 * 3 + 178;
        breaks(found, Rule.SHIFT, (end - 300) * 60, shiftShort(402, 3, 300, 102));
    }

    @Test
    void a_job_twice() {
        List<List<Integer>> routes = new ArrayList<>(Plan.empty(P).routes());
        routes.set(0, FleetInstance.route("F4"));
        routes.set(2, FleetInstance.route("F4"));
        breaks(Rules.broken(P, new Plan(routes)), Rule.ONCE, 1, Said.of("plan.twice", "job", "F4"));
    }

    @Test
    void a_rig_that_cannot() {
        Job f4 = P.jobs().get(3);
        Job noR2 = new Job(
                f4.name(),
                f4.area_m2(),
                f4.at(),
                List.of(f4.work_s().get(0), Double.NaN),
                f4.loss(),
                1,
                f4.lastDay(),
                "",
                0);
        List<Job> jobs = new ArrayList<>(P.jobs());
        jobs.set(3, noR2);
        breaks(broken(P.withJobs(jobs), 1, "F4"), Rule.ABLE, 1, Said.of("plan.rig-cannot", "rig", "R2", "job", "F4"));
    }

    @Test
    void a_pinned_job_elsewhere() {
        PlanProblem p = P.withPins(List.of(new Pin(0, 1, 3)));
        breaks(broken(p, 0, "F1"), Rule.PIN, 1, Said.of("plan.pinned", "job", "F1", "rig", "R2", "day", day(3)));
    }

    @Test
    void two_jobs_too_near_in_time() {
        PlanProblem p = with(P.jobs(), Cleanout.NONE, List.of(), List.of(new Gap(1, 3, 3, false)), List.of());
        List<List<Integer>> routes = new ArrayList<>(Plan.empty(p).routes());
        routes.set(0, FleetInstance.route("F2"));
        routes.set(2, FleetInstance.route("F4"));
        breaks(
                Rules.broken(p, new Plan(routes)),
                Rule.GAP,
                1,
                Said.of("plan.gap-in-order", "first", "F2", "second", "F4", "days", days(3), "missing", days(1)));
    }

    @Test
    void more_than_the_tenders_bring() {
        List<Job> jobs = P.jobs().stream().map(j -> changed(j, "", 9)).toList();
        PlanProblem p = with(jobs, Cleanout.NONE, List.of(new Supply(1, 20)), List.of(), List.of());
        List<Breach> found = broken(p, 0, "F2 F4 F7");
        breaks(found, Rule.SUPPLY, 7, Said.of("plan.supply", "share", Measure.SHARE.of(.74), "day", day(1)));
    }

    @Test
    void a_job_outside_the_hours_of_its_class() {
        List<Job> jobs = P.jobs().stream().map(j -> changed(j, "spray", 0)).toList();
        List<Shift> shifts = List.of(new Shift(0, 1, 420 * 60, Double.NaN, Map.of("spray", new Window(3600, 7200))));
        PlanProblem p =
                with(jobs, Cleanout.NONE, List.of(), List.of(), List.of()).withShifts(shifts);
        List<Breach> found = Rules.broken(p, new Plan(List.of(FleetInstance.route("F2"))));
        breaks(
                found,
                Rule.WINDOW,
                (60 + 94 - 120) * 60,
                Said.of("plan.window", "job", "F2", "rig", "R1", "day", day(1), "late", minutes(34), "kind", "spray"));
        assertThat(Timetable.of(p, shifts.get(0), List.of(1)).stops().get(0).wait_s())
                .isEqualTo((60 - 30) * 60);
    }

    @Test
    void cleaning_takes_time_between_two_classes() {
        List<Job> jobs = new ArrayList<>(P.jobs());
        jobs.set(1, changed(jobs.get(1), "spray", 0));
        Cleanout cleanout = new Cleanout(Map.of("spray", Map.of("", 2400.0)));
        PlanProblem p = with(jobs, cleanout, List.of(), List.of(), List.of());
        List<Breach> found = broken(p, 0, "F2 F4 F7");
        breaks(found, Rule.SHIFT, 20 * 60, shiftShort(440, 1, 420, 20));
    }

    @Test
    void the_search_keeps_every_rule_and_counts_as_the_plain_score_does() {
        for (int seed = 0; seed < 60; seed++) {
            PlanProblem drawn = RandomFleet.of(seed, 2 + seed % 3, 1 + seed % 4, 6 + seed % 15, true);
            PlanProblem p = drawn.withRoads(new Roads(360, .15, seed % 2 == 1));
            Found found = Planner.plan(p, Effort.of(seed, 1_500));
            assertThat(Rules.broken(p, found.plan())).isEmpty();
            assertThat(found.cost().total_usd())
                    .isCloseTo(PlainScore.usd(p, found.plan()), org.assertj.core.api.Assertions.within(1e-6));
        }
    }

    private static Said shiftShort(int needs_min, int day, int has_min, int over_min) {
        return Said.of(
                "plan.shift-short",
                "rig",
                "R1",
                "needs",
                minutes(needs_min),
                "day",
                day(day),
                "has",
                minutes(has_min),
                "over",
                minutes(over_min));
    }

    private static Said day(int n) {
        return Said.of("plan.numbered-day", "n", n);
    }

    private static Measured days(int n) {
        return Measure.DAYS.of(n);
    }

    private static Measured minutes(int n) {
        return Measure.DURATION.of(60 * n);
    }
}
