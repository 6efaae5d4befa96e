// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * All that a plan is made from.
 *
 * @param dayZero the date of day 0; empty: days are mere numbers
 */
public record PlanProblem(
        List<PlanRig> rigs,
        List<Shift> shifts,
        List<Job> jobs,
        Roads roads,
        Cleanout cleanout,
        List<Supply> supply,
        List<Gap> gaps,
        List<Pin> pins,
        Optional<LocalDate> dayZero) {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("EEEE d MMMM", Locale.ENGLISH);

    public PlanProblem {
        rigs = List.copyOf(rigs);
        shifts = List.copyOf(shifts);
        jobs = List.copyOf(jobs);
        supply = List.copyOf(supply);
        gaps = List.copyOf(gaps);
        pins = List.copyOf(pins);
    }

    /** With nothing but rigs, shifts, jobs and roads. */
    public PlanProblem(List<PlanRig> rigs, List<Shift> shifts, List<Job> jobs, Roads roads) {
        this(rigs, shifts, jobs, roads, Cleanout.NONE, List.of(), List.of(), List.of(), Optional.empty());
    }

    public PlanProblem withShifts(List<Shift> other) {
        return new PlanProblem(rigs, other, jobs, roads, cleanout, supply, gaps, pins, dayZero);
    }

    public PlanProblem withJobs(List<Job> other) {
        return new PlanProblem(rigs, shifts, other, roads, cleanout, supply, gaps, pins, dayZero);
    }

    public PlanProblem withPins(List<Pin> other) {
        return new PlanProblem(rigs, shifts, jobs, roads, cleanout, supply, gaps, other, dayZero);
    }

    /** A day as people say it. */
    public String dayWord(int day) {
        return dayZero.map(d -> d.plusDays(day).format(DAY)).orElse("day " + day);
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
}
