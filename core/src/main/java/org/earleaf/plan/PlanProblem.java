// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.Said;

/**
 * All that a plan is made from.
 *
 * @param tenders that rigs wait for; none: nobody waits
 * @param dayZero the date of day 0; empty: days are mere numbers
 */
public record PlanProblem(
        List<PlanRig> rigs,
        List<Shift> shifts,
        List<Job> jobs,
        Roads roads,
        Cleanout cleanout,
        Terms terms,
        List<Tender> tenders,
        Optional<LocalDate> dayZero) {
    /**
     * What every plan has to keep to.
     *
     * @param supply what comes to the farm on a day
     * @param gaps jobs that keep a distance of days
     * @param pins jobs of which rig or day is settled
     */
    public record Terms(List<Supply> supply, List<Gap> gaps, List<Pin> pins) {
        public static final Terms NONE = new Terms(List.of(), List.of(), List.of());

        public Terms {
            supply = List.copyOf(supply);
            gaps = List.copyOf(gaps);
            pins = List.copyOf(pins);
        }
    }

    public PlanProblem {
        rigs = List.copyOf(rigs);
        shifts = List.copyOf(shifts);
        jobs = List.copyOf(jobs);
        tenders = List.copyOf(tenders);
    }

    /** With nothing but rigs, shifts, jobs and roads. */
    public PlanProblem(List<PlanRig> rigs, List<Shift> shifts, List<Job> jobs, Roads roads) {
        this(rigs, shifts, jobs, roads, Cleanout.NONE, Terms.NONE, List.of(), Optional.empty());
    }

    public List<Supply> supply() {
        return terms.supply();
    }

    public List<Gap> gaps() {
        return terms.gaps();
    }

    public List<Pin> pins() {
        return terms.pins();
    }

    public PlanProblem withShifts(List<Shift> other) {
        return new PlanProblem(rigs, other, jobs, roads, cleanout, terms, tenders, dayZero);
    }

    public PlanProblem withJobs(List<Job> other) {
        return new PlanProblem(rigs, shifts, other, roads, cleanout, terms, tenders, dayZero);
    }

    public PlanProblem withPins(List<Pin> other) {
        return new PlanProblem(
                rigs, shifts, jobs, roads, cleanout, new Terms(supply(), gaps(), other), tenders, dayZero);
    }

    public PlanProblem withRoads(Roads other) {
        return new PlanProblem(rigs, shifts, jobs, other, cleanout, terms, tenders, dayZero);
    }

    public PlanProblem withTenders(List<PlanRig> fleet, List<Tender> other) {
        return new PlanProblem(fleet, shifts, jobs, roads, cleanout, terms, other, dayZero);
    }

    /** A day as people say it: its date, or its number where the instance has no dates. */
    public Said dayWord(int day) {
        return dayZero.map(d -> Said.of("plan.date", "date", d.plusDays(day)))
                .orElseGet(() -> Said.of("plan.numbered-day", "n", day));
    }

    public String rigOf(Shift shift) {
        return rigs.get(shift.rig()).name();
    }

    /** Travel and cleaning from one job to the next; {@code from} below 0: from the yard. */
    public double travel_s(Shift shift, int from, int to) {
        Job next = jobs.get(to);
        if (from < 0) {
            return roads.travel_s(rigs.get(shift.rig()).yard(), next.at());
        }
        Job last = jobs.get(from);
        return roads.travel_s(last.at(), next.at()) + cleanout.between_s(last.productClass(), next.productClass());
    }

    /** The way home from the last job; {@code last} below 0: none was done. */
    public double home_s(Shift shift, int last) {
        return last < 0 || !roads.countsWayHome()
                ? 0
                : roads.travel_s(jobs.get(last).at(), rigs.get(shift.rig()).yard());
    }

    /** Whether what rigs do on a day hangs on who comes first to a tender. */
    public boolean hasTenders() {
        return !tenders.isEmpty() && rigs.stream().anyMatch(r -> r.tank_m3() > 0);
    }
}
