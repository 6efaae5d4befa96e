// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.junit.jupiter.api.Test;

/** The seven-field instance: optimum and the plans next to it, proved by enumeration and by a constraint solver. */
class FleetInstanceTest {
    private static final double CENT = .005;
    private static final List<Integer> NONE = List.of(0, 0, 0);
    private static final List<Integer> USUAL = List.of(420, 300, 480);
    private static final List<Integer> NO_DAY_3 = List.of(420, 0, 480);

    private static Found found(PlanProblem p) {
        return Planner.plan(p, Effort.of(1, 8_000));
    }

    private static double usd(Found found) {
        return found.cost().total_usd();
    }

    @Test
    void the_published_plan_costs_what_is_published() {
        PlanProblem p = FleetInstance.usual();
        Plan plan = new Plan(List.of(
                FleetInstance.route("F2 F4 F7"),
                FleetInstance.route("F5"),
                FleetInstance.route("F3 F6"),
                List.of(),
                FleetInstance.route("F1"),
                List.of()));
        PlanCost cost = PlanCost.of(p, plan);
        assertThat(Rules.broken(p, plan)).isEmpty();
        assertThat(cost.loss_usd()).isCloseTo(480, within(CENT));
        assertThat(cost.rig_usd()).isCloseTo(3428, within(CENT));
        assertThat(cost.undone_usd()).isZero();
        assertThat(PlainScore.usd(p, plan)).isCloseTo(3908, within(CENT));
        List<Double> ends = new ArrayList<>();
        for (int s : new int[] {0, 1, 2, 4}) {
            ends.add(Timetable.of(p, p.shifts().get(s), plan.routes().get(s)).end_s() / 60);
        }
        assertThat(ends.stream().map(Math::round)).containsExactly(400L, 370L, 290L, 206L);
    }

    @Test
    void the_search_finds_the_optimum_with_any_seed() {
        for (int seed = 0; seed < 20; seed++) {
            Found found = Planner.plan(FleetInstance.usual(), Effort.of(seed, 4_000));
            assertThat(usd(found)).isCloseTo(3908.00, within(CENT));
            assertThat(found.leftOut()).isEmpty();
        }
    }

    @Test
    void counting_every_parting_gives_the_optimum_and_the_next_best_plans() {
        List<Double> best = ExactPlans.kBest_usd(FleetInstance.usual(), 5);
        assertThat(best.stream().map(v -> Math.round(v * 100)))
                .containsExactly(390800L, 394800L, 395750L, 396025L, 398800L);
    }

    @Test
    void with_the_third_day_rained_out_it_is_dearer() {
        PlanProblem p = FleetInstance.of(NO_DAY_3, NO_DAY_3);
        assertThat(usd(found(p))).isCloseTo(4176.00, within(CENT));
        assertThat(ExactPlans.optimum_usd(p)).isCloseTo(4176.00, within(CENT));
    }

    @Test
    void with_one_rig_broken_all_week_four_fields_stay_undone() {
        PlanProblem p = FleetInstance.of(NONE, USUAL);
        Found found = found(p);
        assertThat(usd(found)).isCloseTo(16977.00, within(CENT));
        assertThat(ExactPlans.optimum_usd(p)).isCloseTo(16977.00, within(CENT));
        assertThat(found.leftOut().stream().map(w -> p.jobs().get(w.job()).name()))
                .containsExactly("F3", "F4", "F6", "F7");
        assertThat(found.plan().routes())
                .containsExactly(FleetInstance.route("F5"), FleetInstance.route("F2"), FleetInstance.route("F1"));
    }

    @Test
    void a_simple_rule_is_beaten() {
        assertThat(GreedyRule.usd(FleetInstance.usual())).isCloseTo(3998.50, within(CENT));
        assertThat(usd(found(FleetInstance.usual()))).isLessThan(3998.50);
    }

    @Test
    void an_earlier_deadline_never_lowers_the_optimum() {
        double usual = ExactPlans.optimum_usd(FleetInstance.usual());
        for (int j = 0; j < 7; j++) {
            for (int r = 0; r < 2; r++) {
                PlanProblem p = FleetInstance.usual();
                List<Job> jobs = new ArrayList<>(p.jobs());
                Job old = jobs.get(j);
                List<Integer> last = new ArrayList<>(old.lastDay());
                last.set(r, last.get(r) - 1);
                jobs.set(
                        j,
                        new Job(
                                old.name(),
                                old.area_m2(),
                                old.at(),
                                old.work_s(),
                                old.loss(),
                                old.release(),
                                last,
                                old.productClass(),
                                old.supply_m3()));
                PlanProblem earlier = p.withJobs(jobs);
                double exact = ExactPlans.optimum_usd(earlier);
                assertThat(exact).isGreaterThanOrEqualTo(usual - CENT);
                assertThat(usd(found(earlier))).isCloseTo(exact, within(CENT));
            }
        }
    }

    @Test
    void another_rig_never_raises_the_optimum() {
        PlanProblem p = FleetInstance.usual();
        List<PlanRig> rigs = new ArrayList<>(p.rigs());
        rigs.add(new PlanRig("R3", 2 / 60.0, new Spot(0, 0)));
        List<Shift> shifts = new ArrayList<>(p.shifts());
        FleetInstance.DAYS.forEach(d -> shifts.add(new Shift(2, d, 300 * 60)));
        List<Job> jobs = p.jobs().stream()
                .map(j -> new Job(
                        j.name(),
                        j.area_m2(),
                        j.at(),
                        List.of(j.work_s().get(0), j.work_s().get(1), j.work_s().get(1)),
                        j.loss(),
                        j.release(),
                        List.of(
                                j.lastDay().get(0),
                                j.lastDay().get(1),
                                j.lastDay().get(1)),
                        j.productClass(),
                        j.supply_m3()))
                .toList();
        PlanProblem more = new PlanProblem(rigs, shifts, jobs, p.roads());
        assertThat(ExactPlans.optimum_usd(more)).isLessThanOrEqualTo(3908.00 + CENT);
    }

    @Test
    void the_same_seed_gives_the_same_plan() {
        assertThat(found(FleetInstance.usual()).plan())
                .isEqualTo(found(FleetInstance.usual()).plan());
    }
}
