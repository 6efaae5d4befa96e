// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;

/** Holds a plan to every {@link Rule}: one method a rule, one {@link Said} a breach. */
public final class Rules {
    /** Half a second: rounding of unit factors, never a rule bent. */
    public static final double ROUNDING_S = .5;

    private static final double ROUNDING_M3 = 1e-6;

    private final PlanProblem problem;
    private final Plan plan;
    private @org.jspecify.annotations.Nullable List<Timetable> tables;

    private Rules(PlanProblem problem, Plan plan) {
        this.problem = problem;
        this.plan = plan;
    }

    /** Everything the plan breaks; empty: it can be driven. */
    public static List<Breach> broken(PlanProblem problem, Plan plan) {
        Rules rules = new Rules(problem, plan);
        List<Breach> all = new ArrayList<>(rules.once());
        for (int s = 0; s < plan.routes().size(); s++) {
            for (int j : plan.routes().get(s)) {
                all.addAll(ofJob(problem, j, s));
            }
            all.addAll(rules.window(s));
            all.addAll(rules.shift(s));
        }
        all.addAll(rules.gap());
        all.addAll(rules.supply());
        return all;
    }

    /** The rules that a job put into a shift may break, the shift's own last. */
    static List<Breach> brokenIn(PlanProblem problem, Plan plan, int shift) {
        Rules rules = new Rules(problem, plan);
        List<Breach> all = new ArrayList<>();
        if (!problem.gaps().isEmpty()) {
            all.addAll(rules.gap());
        }
        all.addAll(rules.supply());
        for (int s = 0; s < plan.routes().size(); s++) {
            if (s != shift && problem.hasTenders()) { // others may have to wait longer
                all.addAll(rules.window(s));
                all.addAll(rules.shift(s));
            }
        }
        all.addAll(rules.window(shift));
        all.addAll(rules.shift(shift));
        return all;
    }

    /** Whether the rules that look at a job and its shift alone let it be done there. */
    public static boolean allow(PlanProblem problem, int job, int shift) {
        return ofJob(problem, job, shift).isEmpty();
    }

    /** The rules that look at a job and its shift alone. */
    static List<Breach> ofJob(PlanProblem problem, int job, int shift) {
        Rules rules = new Rules(problem, Plan.empty(problem));
        List<Breach> all = new ArrayList<>();
        all.addAll(rules.able(job, shift));
        all.addAll(rules.release(job, shift));
        all.addAll(rules.deadline(job, shift));
        all.addAll(rules.pin(job, shift));
        return all;
    }

    private List<Breach> once() {
        List<Breach> found = new ArrayList<>();
        Set<Integer> seen = new HashSet<>();
        plan.routes()
                .forEach(route -> route.forEach(j -> {
                    if (!seen.add(j)) {
                        found.add(new Breach(Rule.ONCE, j, -1, 1, Said.of("plan.twice", "job", name(j))));
                    }
                }));
        return found;
    }

    private List<Breach> able(int j, int s) {
        int rig = problem.shifts().get(s).rig();
        return problem.jobs().get(j).canBeDoneBy(rig)
                ? List.of()
                : List.of(new Breach(Rule.ABLE, j, s, 1, Said.of("plan.rig-cannot", "rig", rig(s), "job", name(j))));
    }

    private List<Breach> release(int j, int s) {
        int early = problem.jobs().get(j).release() - problem.shifts().get(s).day();
        return early <= 0
                ? List.of()
                : List.of(new Breach(
                        Rule.RELEASE,
                        j,
                        s,
                        early,
                        Said.of(
                                "plan.too-soon",
                                "job",
                                name(j),
                                "first",
                                problem.dayWord(problem.jobs().get(j).release()),
                                "day",
                                day(s),
                                "early",
                                Measure.DAYS.of(early))));
    }

    private List<Breach> deadline(int j, int s) {
        Shift shift = problem.shifts().get(s);
        int last = problem.jobs().get(j).lastDay().get(shift.rig());
        int late = shift.day() - last;
        return late <= 0
                ? List.of()
                : List.of(new Breach(
                        Rule.DEADLINE,
                        j,
                        s,
                        late,
                        Said.of(
                                "plan.too-late",
                                "rig",
                                rig(s),
                                "job",
                                name(j),
                                "last",
                                problem.dayWord(last),
                                "day",
                                day(s),
                                "late",
                                Measure.DAYS.of(late))));
    }

    private List<Breach> pin(int j, int s) {
        Shift shift = problem.shifts().get(s);
        return problem.pins().stream()
                .filter(p -> p.job() == j && (p.rig() != shift.rig() || p.day() != shift.day()))
                .map(p -> new Breach(
                        Rule.PIN,
                        j,
                        s,
                        1,
                        Said.of(
                                "plan.pinned",
                                "job",
                                name(j),
                                "rig",
                                problem.rigs().get(p.rig()).name(),
                                "day",
                                problem.dayWord(p.day()))))
                .toList();
    }

    private List<Breach> gap() {
        List<Breach> found = new ArrayList<>();
        for (Gap g : problem.gaps()) {
            int first = plan.shiftOf(g.first());
            int second = plan.shiftOf(g.second());
            if (first < 0 || second < 0) {
                continue;
            }
            int missing = g.shortBy(
                    problem.shifts().get(first).day(),
                    problem.shifts().get(second).day());
            if (missing > 0) {
                found.add(new Breach(
                        Rule.GAP,
                        g.second(),
                        second,
                        missing,
                        Said.of(
                                g.eitherOrder() ? "plan.gap" : "plan.gap-in-order",
                                "first",
                                name(g.first()),
                                "second",
                                name(g.second()),
                                "days",
                                Measure.DAYS.of(g.days()),
                                "missing",
                                Measure.DAYS.of(missing))));
            }
        }
        return found;
    }

    private List<Breach> supply() {
        List<Breach> found = new ArrayList<>();
        for (Supply supply : problem.supply()) {
            double used = 0;
            int last = -1;
            int at = -1;
            for (int s = 0; s < plan.routes().size(); s++) {
                if (problem.shifts().get(s).day() == supply.day()) {
                    for (int j : plan.routes().get(s)) {
                        used += problem.jobs().get(j).supply_m3();
                        last = j;
                        at = s;
                    }
                }
            }
            double over = used - supply.most_m3();
            if (over > ROUNDING_M3) {
                found.add(new Breach(
                        Rule.SUPPLY,
                        last,
                        at,
                        over,
                        Said.of(
                                "plan.supply",
                                "share",
                                percent(supply.most_m3() / used),
                                "day",
                                problem.dayWord(supply.day()))));
            }
        }
        return found;
    }

    private List<Breach> window(int s) {
        Shift shift = problem.shifts().get(s);
        List<Breach> found = new ArrayList<>();
        for (Timetable.Stop stop : timetable(s).stops()) {
            Job job = problem.jobs().get(stop.job());
            double late = stop.end_s() - shift.window(job).to_s();
            if (shift.narrows(job) && late > ROUNDING_S) {
                found.add(new Breach(
                        Rule.WINDOW,
                        stop.job(),
                        s,
                        late,
                        Said.of(
                                "plan.window",
                                "job",
                                name(stop.job()),
                                "rig",
                                rig(s),
                                "day",
                                day(s),
                                "late",
                                minutes(late),
                                "kind",
                                job.productClass())));
            }
        }
        return found;
    }

    private List<Breach> shift(int s) {
        Shift shift = problem.shifts().get(s);
        Timetable table = timetable(s);
        double over = table.end_s() - shift.length_s();
        if (over <= ROUNDING_S) {
            return List.of();
        }
        int last = table.stops().get(table.stops().size() - 1).job();
        return List.of(new Breach(
                Rule.SHIFT,
                last,
                s,
                over,
                Said.of(
                        "plan.shift-short",
                        "rig",
                        rig(s),
                        "needs",
                        minutes(table.end_s()),
                        "day",
                        day(s),
                        "has",
                        minutes(shift.length_s()),
                        "over",
                        minutes(over))));
    }

    private Timetable timetable(int s) {
        List<Timetable> known = tables;
        if (known == null) {
            known = Timetable.all(problem, able());
            tables = known;
        }
        return known.get(s);
    }

    /** The plan without shifts in which a rig meets a job that it cannot do, whose time nobody knows. */
    private Plan able() {
        List<List<Integer>> routes = new ArrayList<>();
        for (int s = 0; s < plan.routes().size(); s++) {
            int rig = problem.shifts().get(s).rig();
            boolean able = plan.routes().get(s).stream()
                    .allMatch(j -> problem.jobs().get(j).canBeDoneBy(rig));
            routes.add(able ? plan.routes().get(s) : List.of());
        }
        return new Plan(routes);
    }

    private String name(int job) {
        return problem.jobs().get(job).name();
    }

    private String rig(int s) {
        return problem.rigOf(problem.shifts().get(s));
    }

    private Said day(int s) {
        return problem.dayWord(problem.shifts().get(s).day());
    }

    /** Whole minutes, rounded up: what is short by seconds is short. */
    private static Measured minutes(double s) {
        return Measure.DURATION.of(60 * Math.ceil(s / 60 - 1e-6));
    }

    /** Whole per cent, rounded down: what falls short never reads as all. */
    private static Measured percent(double share) {
        return Measure.SHARE.of(Math.floor(100 * share) / 100);
    }
}
