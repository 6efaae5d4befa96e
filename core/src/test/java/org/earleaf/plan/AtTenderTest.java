// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.Planner;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Waiting in plans: 80 ac a load in 78.571429 min, 15 min a fill, a tender away for 90 min; worked by hand. */
class AtTenderTest {
    private static final double SPRAY_S = 60 * 80 / (8 * 90 / 8.25 * .7) * 60;
    private static final double GAL = Units.M3_PER_GAL;
    private static final Spot YARD = new Spot(0, 0);

    private static Job job(String name, int loads, int rigs) {
        return new Job(
                name,
                80 * loads * Units.M2_PER_AC,
                YARD,
                Collections.nCopies(rigs, loads * (SPRAY_S + 15 * 60)),
                new Job.Loss(new LossByDay(Map.of(0, 0.0)), 2000 * loads),
                0,
                Collections.nCopies(rigs, 9),
                "N",
                1200 * GAL * loads);
    }

    private static PlanProblem problem(int rigs, double minutes, List<Job> jobs, double holds_gal) {
        List<PlanRig> fleet = new ArrayList<>();
        List<Shift> shifts = new ArrayList<>();
        for (int r = 0; r < rigs; r++) {
            fleet.add(new PlanRig("R" + r, 3 / 60.0, YARD, 1200 * GAL, 15 * 60));
            shifts.add(new Shift(r, 0, minutes * 60));
        }
        return new PlanProblem(fleet, shifts, jobs, new Roads(0, 0))
                .withTenders(fleet, List.of(new Tender("T", holds_gal * GAL, 70 * 60, 20 * 60)));
    }

    @Test
    void a_job_of_six_loads_takes_and_costs_what_is_waited_for_the_tender_too() {
        PlanProblem p = problem(1, 600, List.of(job("F", 6, 1)), 2500);
        Plan plan = new Plan(List.of(List.of(0)));
        Timetable.Stop stop = Timetable.all(p, plan).get(0).stops().get(0);
        assertThat(stop.end_s() / 60).isCloseTo(584.285714, within(1e-6));
        assertThat(stop.tender_s() / 60).isCloseTo(22.857143, within(1e-6));
        assertThat(stop.fills()).hasSize(6);
        assertThat(PlanCost.of(p, plan).rig_usd()).isCloseTo(3 * 584.285714, within(1e-5));
    }

    @Test
    void a_day_that_overflows_by_waiting_breaks_the_shift_and_is_not_taken() {
        PlanProblem p = problem(1, 570, List.of(job("F", 6, 1), job("G", 2, 1)), 2500);
        List<Breach> broken = Rules.broken(p, new Plan(List.of(List.of(0))));
        assertThat(broken).hasSize(1);
        assertThat(broken.get(0).rule()).isEqualTo(Rule.SHIFT);
        assertThat(broken.get(0).by() / 60).isCloseTo(14.285714, within(1e-5));
        Found found = Planner.plan(p, Effort.of(1, 500));
        assertThat(Rules.broken(p, found.plan())).isEmpty();
        assertThat(found.plan().shiftOf(0)).isEqualTo(-1);
        Found near = Planner.plan(p.withTenders(p.rigs(), List.of()), Effort.of(1, 500));
        assertThat(near.plan().shiftOf(0)).isZero();
    }

    @Test
    void two_rigs_at_one_tender_wait_for_each_other() {
        PlanProblem p = problem(2, 600, List.of(job("F", 1, 2), job("G", 1, 2)), 2500);
        Plan both = new Plan(List.of(List.of(0), List.of(1)));
        assertThat(Timetable.all(p, both).get(1).stops().get(0).tender_s()).isEqualTo(15 * 60);
        assertThat(PlanCost.of(p, both).rig_usd()
                        - PlanCost.of(p.withTenders(p.rigs(), List.of()), both).rig_usd())
                .isCloseTo(45, within(1e-9));
        // One after the other with one rig, nobody waits: the cheaper plan of the two.
        assertThat(Planner.plan(p, Effort.of(1, 500)).plan().routes()).anyMatch(List::isEmpty);
    }

    @Test
    void without_a_tank_that_is_known_nobody_waits() {
        PlanProblem p = problem(1, 600, List.of(job("F", 6, 1)), 2500);
        PlanProblem none = p.withTenders(List.of(new PlanRig("R0", 3 / 60.0, YARD)), p.tenders());
        assertThat(Timetable.all(none, new Plan(List.of(List.of(0)))).get(0).end_s() / 60)
                .isCloseTo(561.428571, within(1e-6));
    }

    @Test
    void work_that_takes_nothing_from_the_tender_goes_on_beside_it() {
        Job dry = new Job(
                "dry",
                1e5,
                YARD,
                List.of(1800.0),
                new Job.Loss(new LossByDay(Map.of(0, 0.0)), 100),
                0,
                List.of(9),
                "N",
                0);
        PlanProblem p = problem(1, 600, List.of(job("F", 1, 1), dry), 2500);
        Timetable table = Timetable.all(p, new Plan(List.of(List.of(0, 1)))).get(0);
        assertThat(table.stops().get(1).end_s() - table.stops().get(1).start_s())
                .isEqualTo(1800);
        assertThat(table.stops().get(1).tender_s()).isZero();
    }
}
