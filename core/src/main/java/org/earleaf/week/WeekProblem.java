// SPDX-License-Identifier: Apache-2.0
package org.earleaf.week;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Option;
import org.earleaf.decide.Rescue;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.farm.Setting;
import org.earleaf.outlook.DryDays;
import org.earleaf.plan.Cleanout;
import org.earleaf.plan.Gap;
import org.earleaf.plan.Job;
import org.earleaf.plan.LossByDay;
import org.earleaf.plan.PlanProblem;
import org.earleaf.plan.PlanRig;
import org.earleaf.plan.Roads;
import org.earleaf.plan.Shift;
import org.earleaf.plan.Spot;
import org.earleaf.plan.Supply;
import org.earleaf.plan.Tender;
import org.earleaf.plan.Window;
import org.earleaf.plan.search.Course;
import org.earleaf.units.Said;

/**
 * The problem of a farm's week, from what was worked out for the morning.
 *
 * <pre>
 * loss(rig, day) = w(day) A (best - gain(rig, day)) + (1 - w(day)) loss(rig, day + 1),   undone = A (best - later),
 *                  after the rig's last day undone
 * a rig's minute = its price by the hectare x the ground of its jobs / the minutes they take
 *
 * A      ground of the pass                                                            [ha]
 * w      chance that the rig goes on a day it is planned for: the day can be worked, today being as it is, and the rig runs
 * gain   mean over the futures; of own rigs their price is added again, since minutes cost it [$/ha]
 * best   the largest gain, not below later                                             [$/ha]
 * later  what waiting past the week may still bring                                    [$/ha]
 * Range  loss and undone 0 or more
 * Source own construct
 * Check  WeekTest
 * </pre>
 */
final class WeekProblem {
    private static final double M2_PER_HA = 10_000;
    /** A day is taken as one that can be worked when it is in at least so many futures. */
    private static final double LIKELY = .5;
    /** On one day in fifty a rig stands still (common practice, no source). */
    private static final double BREAKS = .02;
    /** A rig that may not go that day: never, as far as the search is concerned. */
    private static final double NOT_THEN_USD = 1e9;

    private final Farm farm;
    private final LocalDate on;
    private final List<FieldPass> passes;
    private final List<Week.Later> later;
    private final List<Rig> rigs;
    private final List<DryDays.Course> weather;
    private final WorkHours hours;
    private final WorkTime time;
    private final Places places;
    private final List<Job> jobs;
    private final List<Shift> shifts;

    WeekProblem(Farm farm, LocalDate on, List<NitrogenOptions.Answer> answers) {
        this(farm, on, FieldPasses.of(on, Week.DAYS, answers));
    }

    private WeekProblem(Farm farm, LocalDate on, FieldPasses.Wanted wanted) {
        this.farm = farm;
        this.on = on;
        passes = wanted.passes();
        later = wanted.later();
        rigs = Stream.concat(farm.rigs().stream(), Rescue.rigs(farm).stream())
                .filter(r -> passes.stream().anyMatch(p -> p.canBeMadeBy(r.name())))
                .toList();
        weather = DryDays.of(farm, on, Week.DAYS);
        hours = new WorkHours(farm, on);
        time = new WorkTime(farm);
        places = new Places(farm);
        jobs = passes.stream().map(this::job).toList();
        shifts = IntStream.range(0, rigs.size())
                .boxed()
                .flatMap(r -> IntStream.range(0, Week.DAYS).mapToObj(d -> shift(r, d)))
                .toList();
    }

    /** The same with some passes in two parts of whole loads each; those of one load stay whole. */
    WeekProblem inParts(List<Integer> which) {
        List<FieldPass> all = new ArrayList<>();
        for (int j = 0; j < passes.size(); j++) {
            all.addAll(which.contains(j) ? parts(passes.get(j)) : List.of(passes.get(j)));
        }
        return new WeekProblem(farm, on, new FieldPasses.Wanted(all, later));
    }

    /** By the loads of the rig that takes the fewest. */
    private List<FieldPass> parts(FieldPass pass) {
        int loads = rigs.stream()
                .filter(r -> pass.canBeMadeBy(r.name()))
                .mapToInt(r -> WorkTime.loads(
                        r, pass.area_ha(), pass.days(r.name()).firstEntry().getValue()))
                .filter(n -> n > 0)
                .min()
                .orElse(0);
        int first = (loads + 1) / 2;
        return loads < 2
                ? List.of(pass)
                : List.of(
                        pass.with(new FieldPass.Part(1, 2, (double) first / loads)),
                        pass.with(new FieldPass.Part(2, 2, (double) (loads - first) / loads)));
    }

    List<FieldPass> passes() {
        return passes;
    }

    List<Week.Later> later() {
        return later;
    }

    List<Rig> rigs() {
        return rigs;
    }

    List<DryDays.Course> weather() {
        return weather;
    }

    List<Course> courses() {
        return weather.stream()
                .map(c -> new Course(c.share(), masked(d -> c.canBeWorked().get(d))))
                .toList();
    }

    PlanProblem problem() {
        List<Shift> likely = masked(d -> DryDays.chance(weather, d) >= LIKELY);
        double fold_s = 60 * farm.settings().of(Setting.FOLD_TIME);
        Roads roads = new Roads(fold_s, 1 / farm.settings().of(Setting.ROAD_SPEED), true);
        return new PlanProblem(
                IntStream.range(0, rigs.size()).mapToObj(this::planRig).toList(),
                likely,
                jobs,
                roads,
                cleanout(),
                new PlanProblem.Terms(supply(), gaps(), List.of()),
                tenders(),
                Optional.of(on));
    }

    private List<Shift> masked(IntPredicate worked) {
        return shifts.stream()
                .map(s -> s.day() == 0 || worked.test(s.day()) ? s : s.lasting(0))
                .toList();
    }

    private PlanRig planRig(int r) {
        double ground_ha = 0;
        double work_s = 0;
        for (int j = 0; j < jobs.size(); j++) {
            if (jobs.get(j).canBeDoneBy(r)) {
                ground_ha += jobs.get(j).area_m2() / M2_PER_HA;
                work_s += jobs.get(j).work_s().get(r);
            }
        }
        boolean byTheMinute = !rigs.get(r).isHired() && work_s > 0;
        double cost_usdS = byTheMinute ? rigs.get(r).cost_usdHa() * ground_ha / work_s : 0;
        return new PlanRig(
                rigs.get(r).name(), cost_usdS, new Spot(0, 0), rigs.get(r).tank_m3(), time.fill_s());
    }

    private Job job(FieldPass pass) {
        Spot at = places.of(pass.zone());
        double best = pass.byRig().values().stream()
                .flatMap(days -> days.values().stream())
                .mapToDouble(this::gain_usdHa)
                .reduce(pass.later_usdHa(), Math::max);
        List<Double> work = new ArrayList<>();
        List<LossByDay> loss = new ArrayList<>();
        List<Integer> last = new ArrayList<>();
        int release = Week.DAYS;
        for (Rig rig : rigs) {
            boolean able = pass.canBeMadeBy(rig.name());
            work.add(able ? work_s(pass, rig, at) : Double.NaN);
            last.add(able ? day(pass.days(rig.name()).lastKey()) : -1);
            loss.add(able ? loss(pass, rig, best) : new LossByDay(Map.of(0, 0.0)));
            release = able ? Math.min(release, day(pass.days(rig.name()).firstKey())) : release;
        }
        double area_ha = pass.area_ha();
        double litres = FieldPass.litresHa(pass.best()) * area_ha;
        return new Job(
                pass.name(),
                area_ha * M2_PER_HA,
                at,
                work,
                new Job.Loss(new LossByDay(Map.of(0, 0.0)), area_ha * (best - pass.later_usdHa()), loss),
                release,
                last,
                pass.best().product(),
                Double.isNaN(litres) ? 0 : litres / 1000);
    }

    private double work_s(FieldPass pass, Rig rig, Spot at) {
        Option way = pass.way(rig.name(), pass.days(rig.name()).firstKey());
        return time.of_s(rig, way, pass, at);
    }

    private LossByDay loss(FieldPass pass, Rig rig, double best) {
        Map<Integer, Double> byDay = new HashMap<>();
        double area_ha = pass.area_ha();
        pass.days(rig.name()).forEach((date, o) -> byDay.put(day(date), area_ha * (best - gain_usdHa(o))));
        // Every day of the week was looked at: one without an option is none on which it may be made.
        int last = day(pass.days(rig.name()).lastKey());
        IntStream.range(0, last).forEach(d -> byDay.putIfAbsent(d, NOT_THEN_USD));
        double next = area_ha * (best - pass.later_usdHa());
        for (int d = last; d >= 0; d--) {
            double own = Objects.requireNonNull(byDay.get(d));
            if (own < NOT_THEN_USD) {
                next = goes(d) * own + (1 - goes(d)) * next;
                byDay.put(d, next);
            }
        }
        return new LossByDay(byDay);
    }

    /** Chance that a rig goes on a day it is planned for; whether today can be worked is known. */
    private double goes(int day) {
        return (1 - BREAKS) * (day == 0 ? 1 : DryDays.chance(weather, day));
    }

    private double gain_usdHa(Option o) {
        double price = rigs.stream()
                .filter(r -> r.name().equals(o.rig()) && !r.isHired())
                .mapToDouble(Rig::cost_usdHa)
                .sum();
        return o.worth().mean_usdHa() + price;
    }

    private int day(LocalDate date) {
        return (int) (date.toEpochDay() - on.toEpochDay());
    }

    /** The driver's day, and in it all the hours that it offers if it can be worked; of the first day, as it is. */
    private Shift shift(int r, int day) {
        Rig rig = rigs.get(r);
        boolean comes = !rig.isHired() || day >= farm.settings().of(Setting.HIRED_NOTICE);
        Map<String, Window> windows = new HashMap<>();
        double to = 0;
        for (FieldPass p : passes) {
            if (p.canBeMadeBy(rig.name())) {
                Window w = window(p, day);
                windows.put(p.name(), w);
                to = Math.max(to, w.to_s());
            }
        }
        return new Shift(r, day, comes && !hours.isRest(day) && to > 0 ? hours.day_s() : 0, hours.leave_s(), windows);
    }

    private Window window(FieldPass pass, int day) {
        Optional<Window> known = hours.byTheHour(pass, day);
        if (day == 0) {
            boolean dry = weather.get(0).canBeWorked().get(0);
            return known.orElseGet(() -> dry ? hours.usual(pass) : new Window(0, 0));
        }
        // A future in which the day can be worked although the hours given say no: the rain of those hours did not
        // come.
        return known.filter(w -> w.to_s() > w.from_s()).orElseGet(() -> hours.usual(pass));
    }

    private Cleanout cleanout() {
        double rinse_s = 60 * farm.settings().of(Setting.RINSE_TIME);
        List<String> classes = jobs.stream().map(Job::productClass).distinct().toList();
        return new Cleanout(classes.stream().collect(Collectors.toMap(a -> a, a -> classes.stream()
                .filter(b -> !b.equals(a))
                .collect(Collectors.toMap(b -> b, b -> rinse_s)))));
    }

    private List<Tender> tenders() {
        double road_s = jobs.stream()
                .mapToDouble(j -> 2 * time.road_s(j.at()))
                .average()
                .orElse(0);
        double reload_s = 60 * farm.settings().of(Setting.TENDER_RELOAD);
        return farm.rigs().stream()
                .filter(Rig::isTender)
                .map(t -> new Tender(t.name(), t.tank_m3(), road_s, reload_s))
                .toList();
    }

    private List<Supply> supply() {
        double day_s = shifts.stream().mapToDouble(Shift::length_s).max().orElse(0);
        List<Tender> tenders = tenders();
        double most_m3 = tenders.stream().mapToDouble(t -> t.most_m3(day_s)).sum();
        return tenders.isEmpty()
                ? List.of()
                : IntStream.range(0, Week.DAYS)
                        .mapToObj(d -> new Supply(d, most_m3))
                        .toList();
    }

    /**
     * Two passes on one field do not fall on one day: nobody enters before re-entry is past. Parts of one pass may: they
     * lie side by side, and each keeps away from every other pass on the field.
     */
    private List<Gap> gaps() {
        List<Gap> all = new ArrayList<>();
        for (int a = 0; a < passes.size(); a++) {
            for (int b = a + 1; b < passes.size(); b++) {
                boolean parts = passes.get(a).kind() == passes.get(b).kind();
                if (passes.get(a).zone().equals(passes.get(b).zone()) && !parts) {
                    all.add(new Gap(a, b, 1, true));
                }
            }
        }
        return all;
    }

    /** What was taken for lack of a figure, and what the plan does not look at. */
    List<Said> notes() {
        return new WeekNotes(farm, passes, rigs, places, weather).all();
    }
}
