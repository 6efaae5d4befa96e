// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.field.Purpose;
import org.earleaf.outlook.DryDays;
import org.earleaf.plan.Plan;
import org.earleaf.plan.PlanCost;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.Rules;
import org.earleaf.plan.Shift;
import org.earleaf.plan.TenderDay;
import org.earleaf.plan.Timetable;
import org.earleaf.plan.WhyLeftOut;
import org.earleaf.plan.search.Course;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.Found;
import org.earleaf.plan.search.OverFutures;
import org.earleaf.plan.search.Planner;
import org.earleaf.units.Said;
import org.earleaf.units.SideBySide;

/**
 * A farm's next seven days: what each rig does on each day, over the futures of its weather.
 *
 * @param on the first of the days
 * @param problem with the hours of each day taken as it will likely be
 * @param passes by job of the problem
 * @param rigs by rig of the problem
 * @param later passes whose day comes after these days
 * @param notes what was taken for lack of a figure, and what to look after
 */
public record Week(
        Farm farm,
        LocalDate on,
        PlanProblem problem,
        List<FieldPass> passes,
        List<Rig> rigs,
        Likely likely,
        List<Later> later,
        List<Said> notes,
        OverFutures.Robust plan) {
    public static final int DAYS = 7;
    /** Less than this a field in two parts is not worth the second journey's trouble (own construct). */
    private static final double LEAST_GAIN_USD = 20;

    /** A step takes longer the more jobs there are: beyond these the search would outlast the morning. */
    private static final int MOST_JOBS = 40;

    public Week {
        passes = List.copyOf(passes);
        rigs = List.copyOf(rigs);
        later = List.copyOf(later);
        notes = List.copyOf(notes);
    }

    /**
     * How the weather may turn out.
     *
     * @param days which can be worked, by course of the weather
     * @param courses the same as hours of the rigs
     */
    public record Likely(List<DryDays.Course> days, List<Course> courses) {
        public Likely {
            days = List.copyOf(days);
            courses = List.copyOf(courses);
        }
    }

    /**
     * A pass that is better made after these days.
     *
     * @param place the label of its zone
     */
    public record Later(String place, Option own) {
        public Purpose kind() {
            return own.kind();
        }

        public LocalDate date() {
            return own.date();
        }
    }

    /** @param leave when the rig sets out for a job, or begins to wait beside it */
    public record Times(LocalDateTime leave, LocalDateTime start, LocalDateTime end) {}

    /**
     * One job in its place.
     *
     * @param order from 1
     * @param loads tanks filled for it; 0: not known
     * @param fills its loads as they come about at the tender; empty: there is none
     */
    public record Stop(
            int job,
            FieldPass pass,
            Option way,
            String rig,
            LocalDate date,
            int order,
            Times times,
            int loads,
            List<TenderDay.Fill> fills) {
        public Stop {
            fills = List.copyOf(fills);
        }

        public LocalDateTime leave() {
            return times.leave();
        }

        public LocalDateTime start() {
            return times.start();
        }

        public LocalDateTime end() {
            return times.end();
        }
    }

    /**
     * A pass as somebody was told to make it.
     *
     * @param field empty: it stands in the work
     * @param work what is done there, with the part of it
     */
    public record Told(String field, String zone, String work, String rig, LocalDate day) {
        /** As {@link FieldPass#name} names it. */
        public String pass() {
            return field.isEmpty() ? work : field + (zone.isEmpty() ? "" : ", " + zone) + ", " + work;
        }
    }

    /**
     * How far a search has come.
     *
     * @param first_usd cost of the first plan, if each day turns out as is likely
     * @param best_usd of the best so far
     */
    public record Progress(double first_usd, double best_usd) {}

    /**
     * How to search for one.
     *
     * @param seed the same one gives the same plan
     * @param stop ends the search early, with the best plan so far
     * @param progress told whenever a better plan stands
     * @param how searches that share nothing are done
     */
    public record Search(long seed, BooleanSupplier stop, Consumer<Progress> progress, SideBySide how) {
        /** To the end, in turn. */
        public static Search of(long seed) {
            return new Search(seed, () -> false, p -> {}, SideBySide.IN_TURN);
        }
    }

    /**
     * The week as it stands where drivers were told a plan before: theirs as far as it still holds, with few changes.
     *
     * @param told empty: nobody was told any
     */
    public static Week of(
            Farm farm, LocalDate on, List<NitrogenOptions.Answer> answers, List<Told> told, Search search) {
        Week best = of(farm, on, answers, search);
        boolean holds =
                told.stream().anyMatch(t -> !t.day().isBefore(on) && t.day().isBefore(on.plusDays(DAYS)));
        return holds
                ? WeekChange.NONE
                        .to(best.asTold(told, search.seed(), search.how()), search.seed(), search.how())
                        .now()
                : best;
    }

    public static Week of(Farm farm, LocalDate on, List<NitrogenOptions.Answer> answers, Search search) {
        long seed = search.seed();
        WeekProblem built = parted(new WeekProblem(farm, on, answers), seed);
        PlanProblem problem = built.problem();
        Effort usual = usual(seed, problem.jobs().size());
        Effort effort =
                new Effort(seed, usual.steps(), search.stop(), better(problem, search.progress()), search.how());
        List<Course> courses = built.courses();
        return new Week(
                farm,
                on,
                problem,
                built.passes(),
                built.rigs(),
                new Likely(built.weather(), courses),
                built.later(),
                built.notes(),
                OverFutures.of(problem, courses, effort));
    }

    /** With the passes in two that a first plan leaves out whole, where a first plan of them so costs less. */
    private static WeekProblem parted(WeekProblem whole, long seed) {
        Found first = quickly(whole, seed);
        List<Integer> out = first.plan().leftOut(whole.problem()).stream()
                .filter(j -> whole.problem().jobs().get(j).undone_usd() > 0)
                .toList();
        if (out.isEmpty()) {
            return whole;
        }
        WeekProblem parts = whole.inParts(out);
        double gain_usd = first.cost().total_usd() - quickly(parts, seed).cost().total_usd();
        return gain_usd > LEAST_GAIN_USD ? parts : whole;
    }

    private static Found quickly(WeekProblem of, long seed) {
        PlanProblem problem = of.problem();
        return Planner.plan(
                problem, Effort.of(seed, usual(seed, problem.jobs().size()).steps() / 4));
    }

    /** Tells of plans that are better than those before; those held to a first day come later and may not be. */
    private static Consumer<Plan> better(PlanProblem problem, Consumer<Progress> progress) {
        double[] first_best_usd = {Double.NaN, Double.POSITIVE_INFINITY};
        return plan -> {
            double usd = PlanCost.of(problem, plan).total_usd();
            first_best_usd[0] = Double.isNaN(first_best_usd[0]) ? usd : first_best_usd[0];
            if (usd < first_best_usd[1]) {
                first_best_usd[1] = usd;
                progress.accept(new Progress(first_best_usd[0], usd));
            }
        };
    }

    /** Steps that a week of a farm usually needs; one of very many fields has to make do with as many. */
    static Effort usual(long seed, int jobs) {
        return Effort.of(seed, 8_000L + 1_000L * Math.min(jobs, MOST_JOBS));
    }

    public List<Course> courses() {
        return likely.courses();
    }

    /** Who does what. */
    public Plan routes() {
        return plan.found().plan();
    }

    /** Chance that a day can be worked. */
    public double chance(int day) {
        return DryDays.chance(likely.days(), day);
    }

    public LocalDate date(Shift shift) {
        return on.plusDays(shift.day());
    }

    /** What a shift does, in its order. */
    public List<Stop> stops(int shift) {
        Shift s = problem.shifts().get(shift);
        Timetable table = plan.found().timetables().get(shift);
        LocalDateTime begin = date(s).atStartOfDay().plusSeconds(Math.round(s.begins_s()));
        return java.util.stream.IntStream.range(0, table.stops().size())
                .mapToObj(k -> stop(s, begin, table.stops().get(k), k + 1))
                .toList();
    }

    private Stop stop(Shift shift, LocalDateTime begin, Timetable.Stop at, int order) {
        FieldPass pass = passes.get(at.job());
        String rig = problem.rigOf(shift);
        Option way = pass.way(rig, date(shift)).on(date(shift));
        return new Stop(
                at.job(),
                pass,
                way,
                rig,
                date(shift),
                order,
                new Times(
                        begin.plusSeconds(Math.round(at.start_s() - at.travel_s())),
                        begin.plusSeconds(Math.round(at.start_s())),
                        begin.plusSeconds(Math.round(at.end_s()))),
                WorkTime.loads(rigs.get(shift.rig()), pass.area_ha(), way),
                at.fills());
    }

    /** Everything that is done, by day, then by rig. */
    public List<Stop> all() {
        return java.util.stream.IntStream.range(0, problem.shifts().size())
                .boxed()
                .sorted(java.util.Comparator.comparingInt(
                                (Integer s) -> problem.shifts().get(s).day())
                        .thenComparingInt(s -> s))
                .flatMap(s -> stops(s).stream())
                .toList();
    }

    /** Who makes what when, by day and rig, in order. */
    public List<Told> told() {
        return all().stream()
                .map(s -> new Told(
                        s.pass().zone().field(),
                        s.pass().zone().zone(),
                        s.pass().work(),
                        s.rig(),
                        s.date()))
                .toList();
    }

    /** The same week as it was told before, as far as its passes, rigs and days are still there and allowed. */
    public Week asTold(List<Told> told, long seed, SideBySide how) {
        List<List<Integer>> routes = new java.util.ArrayList<>();
        for (Shift shift : problem.shifts()) {
            int s = routes.size();
            routes.add(told.stream()
                    .filter(t -> t.rig().equals(problem.rigOf(shift)) && t.day().equals(date(shift)))
                    .map(t -> passes.stream().map(FieldPass::name).toList().indexOf(t.pass()))
                    .filter(j -> j >= 0 && Rules.allow(problem, j, s))
                    .distinct()
                    .toList());
        }
        Plan plan = new Plan(routes);
        Found found = new Found(problem, plan, PlanCost.of(problem, plan), 0, false);
        return with(
                problem,
                courses(),
                OverFutures.weigh(
                        problem,
                        courses(),
                        found,
                        usual(seed, problem.jobs().size()).by(how)));
    }

    /** The same farm, other hours, pins or work left, and what came of it. */
    Week with(PlanProblem other, List<Course> otherCourses, OverFutures.Robust found) {
        return new Week(farm, on, other, passes, rigs, new Likely(likely.days(), otherCourses), later, notes, found);
    }

    /** What is not done in these days, and why. */
    public List<WhyLeftOut> leftOut() {
        return plan.found().leftOut();
    }
}
