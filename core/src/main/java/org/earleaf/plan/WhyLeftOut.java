// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;

/**
 * Why a plan leaves a job out: the rule that keeps it out where it comes nearest, by how much, and what that loses.
 *
 * @param rule the rule that binds; empty: there is room, but it would cost more than it brings
 * @param by how far it is missed, as in {@link Breach}
 */
public record WhyLeftOut(int job, Optional<Rule> rule, double by, Said said) {
    /** Of a job that the plan leaves out. */
    public static WhyLeftOut of(PlanProblem problem, Plan plan, int job) {
        Measured lost = Measure.MONEY.of(problem.jobs().get(job).undone_usd());
        List<Integer> allowed = new ArrayList<>();
        for (int s = 0; s < problem.shifts().size(); s++) {
            if (Rules.ofJob(problem, job, s).isEmpty()) {
                allowed.add(s);
            }
        }
        if (allowed.isEmpty()) {
            Breach nearest = nearestDay(problem, job);
            return new WhyLeftOut(job, Optional.of(nearest.rule()), nearest.by(), noDay(problem, job, nearest, lost));
        }
        Breach alone = best(problem, Plan.empty(problem), job, allowed);
        if (alone != null) {
            return new WhyLeftOut(
                    job,
                    Optional.of(alone.rule()),
                    alone.by(),
                    Said.of("plan.left-alone", "nearest", alone.said(), "lost", lost));
        }
        Breach full = best(problem, plan, job, allowed);
        if (full != null) {
            return new WhyLeftOut(
                    job,
                    Optional.of(full.rule()),
                    full.by(),
                    Said.of("plan.left-full", "nearest", full.said(), "lost", lost));
        }
        return new WhyLeftOut(job, Optional.empty(), 0, tooDear(problem, plan, job, allowed, lost));
    }

    /** No rig may do it on any day with a shift: until when each rig could. */
    private static Said noDay(PlanProblem problem, int job, Breach nearest, Measured lost) {
        Job j = problem.jobs().get(job);
        List<Said> rigs = new ArrayList<>();
        for (int r = 0; r < problem.rigs().size(); r++) {
            String name = problem.rigs().get(r).name();
            rigs.add(
                    j.canBeDoneBy(r)
                            ? Said.of(
                                    "plan.rig-through",
                                    "rig",
                                    name,
                                    "last",
                                    problem.dayWord(j.lastDay().get(r)))
                            : Said.of("plan.rig-never", "rig", name));
        }
        return Said.of(
                "plan.left-no-day",
                "first",
                problem.dayWord(j.release()),
                "rigs",
                rigs,
                "nearest",
                nearest.said(),
                "lost",
                lost);
    }

    private static Breach nearestDay(PlanProblem problem, int job) {
        Breach none = new Breach(Rule.SHIFT, job, -1, 1, Said.of("plan.no-shift"));
        return java.util.stream.IntStream.range(0, problem.shifts().size())
                .mapToObj(s -> Rules.ofJob(problem, job, s).get(0))
                .min(Comparator.comparingInt((Breach b) -> b.rule() == Rule.ABLE ? 1 : 0)
                        .thenComparingDouble(Breach::by))
                .orElse(none);
    }

    /** Where the job comes nearest to fitting: the smallest of the worst breaches; null: it fits somewhere. */
    private static @org.jspecify.annotations.Nullable Breach best(
            PlanProblem problem, Plan plan, int job, List<Integer> shifts) {
        Breach nearest = null;
        for (int s : shifts) {
            for (int p = 0; p <= plan.routes().get(s).size(); p++) {
                List<Breach> broken = Rules.brokenIn(problem, plan.with(job, s, p), s);
                if (broken.isEmpty()) {
                    return null;
                }
                Breach worst = broken.get(broken.size() - 1);
                if (nearest == null || isNearer(worst, nearest)) {
                    nearest = worst;
                }
            }
        }
        return nearest;
    }

    private static boolean isNearer(Breach one, Breach other) {
        return one.rule() == other.rule() ? one.by() < other.by() : one.rule().compareTo(other.rule()) > 0;
    }

    private static Said tooDear(PlanProblem problem, Plan plan, int job, List<Integer> shifts, Measured lost) {
        double without =
                PlanCost.of(problem, plan).total_usd() - problem.jobs().get(job).undone_usd();
        double least = Double.POSITIVE_INFINITY;
        for (int s : shifts) {
            for (int p = 0; p <= plan.routes().get(s).size(); p++) {
                Plan with = plan.with(job, s, p);
                if (Rules.broken(problem, with).isEmpty()) {
                    least = Math.min(least, PlanCost.of(problem, with).total_usd() - without);
                }
            }
        }
        return Said.of("plan.left-too-dear", "cost", Measure.MONEY.of(least), "lost", lost);
    }
}
