// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.earleaf.plan.Job;
import org.earleaf.plan.Pin;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Shift;

/**
 * The first day's work that costs least on average over the ways the weather may go, and a plan for the days after it.
 *
 * <pre>
 * cost of a first day = sum over courses of share x cost of the best plan of that course with this first day
 *
 * Range  courses with the first day of the problem; candidates are the first days of the plan for the usual hours, and of
 *        the plans for each of the likeliest courses
 * Source two stages with recourse (Dantzig 1955, Management Science 1:197, from memory). In the second stage each
 *        course's days are taken as known, which flatters every first day alike
 * Check  OverFuturesTest
 * </pre>
 */
public final class OverFutures {
    /** So many of the likeliest courses bring a first day of their own. */
    private static final int CANDIDATES = 6;

    private static final double SAME_USD = 1e-6;

    private final PlanProblem problem;
    private final List<Course> courses;
    private final Effort effort;
    private final int firstDay;

    /**
     * What came of it.
     *
     * @param found the plan: its first day stands, the others are for the usual hours
     * @param mean_usd cost over the courses
     * @param p10_usd cost that one in ten courses stays below
     * @param p90_usd cost that nine in ten stay below
     * @param likely_usd the mean of the plan that looks at the usual hours alone
     * @param chanceDone by job, share of the courses in which it is done
     * @param firstDays how many first days were compared
     */
    public record Robust(
            Found found,
            double mean_usd,
            double p10_usd,
            double p90_usd,
            double likely_usd,
            List<Double> chanceDone,
            int firstDays) {
        public Robust {
            chanceDone = List.copyOf(chanceDone);
        }
    }

    private record Weighed(Plan plan, double mean_usd, double[] cost_usd, double[] done) {}

    private OverFutures(PlanProblem problem, List<Course> courses, Effort effort) {
        this.problem = problem;
        this.courses = List.copyOf(courses);
        this.effort = effort;
        firstDay = problem.shifts().stream().mapToInt(Shift::day).min().orElse(0);
    }

    /**
     * @param problem with the usual hours of every shift
     * @param effort of the plan for the usual hours; those of the courses begin with what their hours leave of it and take a
     *     twentieth of its steps each
     */
    public static Robust of(PlanProblem problem, List<Course> courses, Effort effort) {
        return new OverFutures(problem, courses, effort).run();
    }

    /** The same figures of a plan that is settled. */
    public static Robust weigh(PlanProblem problem, List<Course> courses, Found settled, Effort effort) {
        OverFutures all = new OverFutures(problem, courses, effort);
        Weighed w = all.weigh(settled.plan(), all.quick());
        return all.robust(settled, w, w.mean_usd(), 1);
    }

    private Effort quick() {
        return Effort.of(effort.seed(), Math.max(200, effort.steps() / 20)).by(effort.how());
    }

    private Robust run() {
        Found likely = Planner.plan(problem, effort);
        Effort quick = quick();
        List<Plan> ofCourses = effort.how()
                .each(
                        courses.stream().limit(CANDIDATES).toList(),
                        c -> Planner.plan(problem.withShifts(c.shifts()), quick).plan());
        Set<List<List<Integer>>> seen = new LinkedHashSet<>();
        List<Weighed> all = Stream.concat(Stream.of(likely.plan()), ofCourses.stream())
                .filter(p -> seen.add(sets(p)))
                .map(p -> weigh(p, quick))
                .toList();
        Weighed best = all.get(0);
        for (Weighed w : all) {
            best = w.mean_usd() < best.mean_usd() - SAME_USD ? w : best;
        }
        PlanProblem held = held(problem, best.plan());
        Found found = best == all.get(0)
                ? likely
                : Planner.search(
                        problem.withPins(held.pins()).withJobs(held.jobs()),
                        firstOnly(best.plan()),
                        Changes.FREE,
                        effort);
        Found own = Found.of(problem, found.plan(), found.steps(), found.cutShort());
        return robust(own, best, all.get(0).mean_usd(), all.size());
    }

    private Robust robust(Found found, Weighed of, double likely_usd, int compared) {
        return new Robust(
                found,
                of.mean_usd(),
                quantile(of.cost_usd(), .1),
                quantile(of.cost_usd(), .9),
                likely_usd,
                Arrays.stream(of.done()).boxed().toList(),
                compared);
    }

    /** Who does what on the first day, whatever the order. */
    private List<List<Integer>> sets(Plan plan) {
        return IntStream.range(0, problem.shifts().size())
                .filter(s -> problem.shifts().get(s).day() == firstDay)
                .mapToObj(s -> plan.routes().get(s).stream().sorted().toList())
                .toList();
    }

    private Plan firstOnly(Plan plan) {
        List<List<Integer>> routes = new ArrayList<>();
        for (int s = 0; s < plan.routes().size(); s++) {
            routes.add(problem.shifts().get(s).day() == firstDay ? plan.routes().get(s) : List.of());
        }
        return new Plan(routes);
    }

    private Weighed weigh(Plan plan, Effort quick) {
        List<Found> each = quick.how()
                .each(
                        courses,
                        c -> Planner.search(held(problem.withShifts(c.shifts()), plan), plan, Changes.FREE, quick));
        double[] cost = each.stream().mapToDouble(f -> f.cost().total_usd()).toArray();
        double[] done = new double[problem.jobs().size()];
        double mean = 0;
        for (int c = 0; c < cost.length; c++) {
            mean += courses.get(c).share() * cost[c];
            for (int j = 0; j < done.length; j++) {
                done[j] += each.get(c).plan().shiftOf(j) >= 0 ? courses.get(c).share() : 0;
            }
        }
        return new Weighed(plan, mean, cost, done);
    }

    /** Jobs of the first day are pinned there; no other may come to it. Hand-made pins stay. */
    private PlanProblem held(PlanProblem of, Plan plan) {
        List<Pin> pins = new ArrayList<>(of.pins());
        List<Job> jobs = new ArrayList<>(of.jobs());
        for (int j = 0; j < jobs.size(); j++) {
            int shift = plan.shiftOf(j);
            int job = j;
            if (shift >= 0 && of.shifts().get(shift).day() == firstDay) {
                if (pins.stream().noneMatch(p -> p.job() == job)) {
                    pins.add(new Pin(j, of.shifts().get(shift).rig(), firstDay));
                }
            } else {
                jobs.set(j, jobs.get(j).notBefore(firstDay + 1));
            }
        }
        return of.withJobs(jobs).withPins(pins);
    }

    private double quantile(double[] cost, double share) {
        List<Integer> sorted = IntStream.range(0, cost.length)
                .boxed()
                .sorted(Comparator.comparingDouble(c -> cost[c]))
                .toList();
        double sum = 0;
        for (int c : sorted) {
            sum += courses.get(c).share();
            if (sum >= share - SAME_USD) {
                return cost[c];
            }
        }
        return cost[sorted.get(sorted.size() - 1)];
    }
}
