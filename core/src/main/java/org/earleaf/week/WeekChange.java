// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.earleaf.plan.Job;
import org.earleaf.plan.LossByDay;
import org.earleaf.plan.Pin;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.PlanRig;
import org.earleaf.plan.Shift;
import org.earleaf.plan.search.Course;
import org.earleaf.plan.search.Effort;
import org.earleaf.plan.search.OverFutures;
import org.earleaf.plan.search.Replan;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.units.SideBySide;

/**
 * What has come to pass since a week was planned, in the words of whoever tells it.
 *
 * @param rain days on which nothing can be done
 * @param down rigs that cannot go on a day
 * @param done fields, zones or passes that are done, or given up
 * @param pins passes put on a rig and a day by hand
 */
public record WeekChange(List<LocalDate> rain, List<Down> down, List<String> done, List<PinAt> pins) {
    private static final Said PLACE = Said.of("where.plan-change");
    public static final WeekChange NONE = new WeekChange(List.of(), List.of(), List.of(), List.of());

    /** A rig and a day. */
    public record Down(String rig, LocalDate day) {
        /** @param text as RIG@DAY */
        public static Down parse(String text) {
            int at = text.lastIndexOf('@');
            if (at < 1) {
                throw wrong(Problem.of("week.down-form", PLACE, Said.text(text)));
            }
            return new Down(text.substring(0, at).strip(), parseDay(text, text.substring(at + 1)));
        }
    }

    /** A pass put on a rig and a day. */
    public record PinAt(String pass, String rig, LocalDate day) {
        /** @param text as PASS=RIG@DAY */
        public static PinAt parse(String text) {
            int is = text.indexOf('=');
            if (is < 1 || text.lastIndexOf('@') < is + 2) {
                throw wrong(Problem.of("week.pin-form", PLACE, Said.text(text)));
            }
            Down where = Down.parse(text.substring(is + 1));
            return new PinAt(text.substring(0, is).strip(), where.rig(), where.day());
        }
    }

    private static LocalDate parseDay(String text, String day) {
        try {
            return LocalDate.parse(day.strip());
        } catch (DateTimeParseException notADay) {
            throw wrong(Problem.of("week.day-form", PLACE, Said.text(text)));
        }
    }

    private static EarleafException wrong(Problem problem) {
        return new EarleafException(problem);
    }

    public WeekChange {
        rain = List.copyOf(rain);
        down = List.copyOf(down);
        done = List.copyOf(done);
        pins = List.copyOf(pins);
    }

    public boolean isNone() {
        return equals(NONE);
    }

    /**
     * The week planned anew.
     *
     * @param moved jobs told before that could have stayed and are elsewhere now, or left out
     * @param forced jobs told before that can no longer stand
     * @param more_usd what the new week costs more on average over the futures
     */
    public record Anew(Week before, Week now, List<Integer> moved, List<Integer> forced, double more_usd) {
        public Anew {
            moved = List.copyOf(moved);
            forced = List.copyOf(forced);
        }
    }

    /** Plans anew with few changes to what was told. */
    public Anew to(Week told, long seed, SideBySide how) {
        PlanProblem problem = changed(told, told.problem());
        List<Course> courses = told.courses().stream()
                .map(c -> new Course(
                        c.share(),
                        changed(told, told.problem().withShifts(c.shifts())).shifts()))
                .toList();
        Effort effort = Week.usual(seed, problem.jobs().size()).by(how);
        Replan.Replanned re = Replan.of(
                problem, told.routes(), Replan.quick(seed, problem.jobs().size()));
        OverFutures.Robust found = OverFutures.weigh(problem, courses, re.found(), effort);
        Week now = told.with(problem, courses, found);
        List<Integer> forced = IntStream.range(0, problem.jobs().size())
                .filter(j -> told.routes().shiftOf(j) != now.routes().shiftOf(j)
                        && told.routes().shiftOf(j) >= 0
                        && !re.changed().contains(j))
                .boxed()
                .toList();
        return new Anew(
                told, now, re.changed(), forced, found.mean_usd() - told.plan().mean_usd());
    }

    private PlanProblem changed(Week week, PlanProblem problem) {
        List<Integer> wet = rain.stream().map(d -> day(week, d)).toList();
        List<Integer> gone =
                done.stream().flatMap(name -> jobs(week, name).stream()).toList();
        List<Shift> shifts = problem.shifts().stream()
                .map(s -> wet.contains(s.day()) || isDown(week, s) ? s.lasting(0) : s)
                .toList();
        List<Job> jobs = IntStream.range(0, problem.jobs().size())
                .mapToObj(j -> gone.contains(j)
                        ? finished(problem.jobs().get(j))
                        : problem.jobs().get(j))
                .toList();
        List<Pin> all = new ArrayList<>(problem.pins());
        pins.forEach(p -> {
            int job = onlyJob(week, p.pass());
            all.removeIf(old -> old.job() == job);
            all.add(new Pin(job, rig(week, p.rig()), day(week, p.day())));
        });
        return problem.withShifts(shifts).withJobs(jobs).withPins(all);
    }

    private boolean isDown(Week week, Shift shift) {
        return down.stream().anyMatch(d -> rig(week, d.rig()) == shift.rig() && day(week, d.day()) == shift.day());
    }

    /** A job that loses nothing when it is left out, and is left out. */
    private static Job finished(Job j) {
        return new Job(
                j.name(),
                j.area_m2(),
                j.at(),
                j.work_s().stream().map(w -> Double.NaN).toList(),
                new Job.Loss(new LossByDay(Map.of(0, 0.0)), 0),
                j.release(),
                j.lastDay(),
                j.productClass(),
                0);
    }

    private static int day(Week week, LocalDate date) {
        int day = (int) (date.toEpochDay() - week.on().toEpochDay());
        if (day < 0 || day >= Week.DAYS) {
            throw wrong(Problem.of(
                    "week.day-outside",
                    PLACE,
                    Said.text(date.toString()),
                    "first",
                    week.on(),
                    "last",
                    week.on().plusDays(Week.DAYS - 1L)));
        }
        return day;
    }

    private static int rig(Week week, String name) {
        List<PlanRig> rigs = week.problem().rigs();
        for (int r = 0; r < rigs.size(); r++) {
            if (rigs.get(r).name().equalsIgnoreCase(name.strip())) {
                return r;
            }
        }
        throw wrong(Problem.of(
                "week.rig-unknown",
                PLACE,
                Said.text(name),
                "rigs",
                rigs.stream().map(PlanRig::name).toList()));
    }

    /** The passes of a field, of a zone, or the pass itself. */
    private static List<Integer> jobs(Week week, String name) {
        String asked = name.strip().toLowerCase(Locale.ROOT);
        List<Integer> found = IntStream.range(0, week.passes().size())
                .filter(j -> names(week.passes().get(j)).contains(asked))
                .boxed()
                .toList();
        if (found.isEmpty()) {
            throw wrong(Problem.of(
                    "week.pass-unknown",
                    PLACE,
                    Said.text(name),
                    "passes",
                    week.passes().stream().map(FieldPass::name).collect(Collectors.joining("; "))));
        }
        return found;
    }

    private static List<String> names(FieldPass pass) {
        return java.util.stream.Stream.of(
                        pass.name(), pass.zone().label(), pass.zone().field())
                .map(n -> n.toLowerCase(Locale.ROOT))
                .toList();
    }

    private static int onlyJob(Week week, String name) {
        List<Integer> found = jobs(week, name);
        if (found.size() > 1) {
            throw wrong(Problem.of(
                    "week.pass-not-one",
                    PLACE,
                    Said.text(name),
                    "passes",
                    found.stream().map(j -> week.passes().get(j).name()).collect(Collectors.joining("; "))));
        }
        return found.get(0);
    }
}
