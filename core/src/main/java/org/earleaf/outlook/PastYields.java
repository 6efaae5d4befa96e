// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.earleaf.farm.Farm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Irrigation;
import org.earleaf.field.PastYear;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Zone;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.FieldLevel;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.season.parameter.TrialDistance;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.WeatherSeries;

/**
 * A zone's past yields of corn beside what the model makes of the same seasons, and the level that follows for this one.
 *
 * <pre>
 * x = ln(measured/modelled)/e,  e = d ln(modelled)/d ln(growth for light), at least 0.3
 *
 * modelled  dry grain of that year's weather, hybrids and rotation, with its nitrogen, or plenty where it is not known
 * Source    own construct; the rule by which x sets the level: FieldLevel
 * Check     PastYieldsTest, bench/trials
 * </pre>
 *
 * Of a past year planting day and stand are not told: planting is taken to be the usual one, the stand this year's.
 *
 * @param years of corn with a yield, newest first
 */
public record PastYields(List<Year> years, FieldLevel level) {
    /** None is known, or none is to count. */
    public static final PastYields NONE = new PastYields(List.of(), FieldLevel.UNKNOWN);

    /** So many years at most, the newest (own construct). */
    private static final int MOST = 10;
    /** Half of the corn of Iowa is planted by about then (from memory). */
    private static final int PLANTED_MONTH = 5;

    private static final int PLANTED_DAY = 2;
    /** More than the crop can use (own construct). */
    private static final double PLENTY_KGHA = 280;
    /** Step in growth for light that its part in the yield is read from. */
    private static final double STEP = .05;
    /** A yield that hardly follows growth, as after a frost, says little of the level: it is not to say much (own construct). */
    private static final double LEAST_FOLLOWED = .3;
    /** Nothing harvested stands for so little [kg/ha], so that it has a logarithm. */
    private static final double NOTHING_KGHA = 1;
    /** Less than a percent is told as nothing. */
    private static final double LEAST_TOLD = .005;

    /** What became of a year. */
    public enum Use {
        COUNTED,
        /** Far from what soil, weather and the other years say: counts as if it lay less far. */
        CAPPED,
        /** Too far for a year that was told rightly: does not count. */
        DOUBTFUL,
        /** The record of weather does not hold its season. */
        NO_WEATHER,
        /** The zone is irrigated, and its water of that year is not known. */
        NO_WATER
    }

    /**
     * @param modelled_kgHa dry grain; NaN where it was not run
     * @param followed how much of a step in growth the yield follows; NaN where it was not run
     * @param log what was made over what was modelled, in terms of growth, as far as it is believed; NaN where it was not run
     */
    public record Year(PastYear told, double modelled_kgHa, double followed, double log, Use use) {
        private static Year run(PastYear told, double modelled_kgHa, double followed) {
            double log = Math.log(Math.max(NOTHING_KGHA, told.yield_kgHa()) / modelled_kgHa) / followed;
            return new Year(told, modelled_kgHa, followed, log, Use.COUNTED);
        }

        private static Year leftOut(PastYear told, Use why) {
            return new Year(told, Double.NaN, Double.NaN, Double.NaN, why);
        }

        private Year believed(double other) {
            if (Double.isNaN(other)) {
                return new Year(told, modelled_kgHa, followed, log, Use.DOUBTFUL);
            }
            return other == log ? this : new Year(told, modelled_kgHa, followed, other, Use.CAPPED);
        }

        private boolean counts() {
            return use == Use.COUNTED || use == Use.CAPPED;
        }
    }

    public PastYields {
        years = List.copyOf(years);
    }

    public static PastYields of(Farm farm, Zone zone) {
        return of(farm, zone, FieldWeather.of(farm, zone));
    }

    /** @param observed the zone's own weather */
    public static PastYields of(Farm farm, Zone zone, WeatherSeries observed) {
        List<PastYear> past = zone.isCorn() ? farm.past(zone) : List.of();
        List<Year> run = past.stream()
                .filter(year -> year.crop() == PreviousCrop.CORN && year.hasYield())
                .limit(MOST)
                .map(year -> modelled(farm, grown(zone, past, year), year, observed))
                .toList();
        return run.isEmpty() ? NONE : weighed(run, TrialDistance.widening(zone, farm.site()));
    }

    private static PastYields weighed(List<Year> run, double widened) {
        List<Year> seen = run.stream().filter(Year::counts).toList();
        List<Double> believed = FieldLevel.believed(seen.stream().map(Year::log).toList(), widened);
        List<Year> years = new ArrayList<>();
        for (Year year : run) {
            int k = seen.indexOf(year);
            years.add(k < 0 ? year : year.believed(believed.get(k)));
        }
        List<Double> logs = years.stream().filter(Year::counts).map(Year::log).toList();
        return new PastYields(years, FieldLevel.of(logs));
    }

    /** The zone as it stood in a past year. */
    private static Zone grown(Zone zone, List<PastYear> past, PastYear year) {
        Zone.Planting now = zone.planting();
        PreviousCrop before = past.stream()
                .filter(p -> p.year() == year.year() - 1)
                .map(PastYear::crop)
                .findFirst()
                .orElse(zone.seedbed().previousCrop());
        return new Zone(
                zone.called(),
                zone.area_ha(),
                new Zone.Planting(
                        now.crop(),
                        LocalDate.of(year.year(), PLANTED_MONTH, PLANTED_DAY),
                        now.hybrid(),
                        now.population_m2(),
                        now.rowSpacing_m(),
                        now.yieldGoal_kgHa()),
                zone.land(),
                new Zone.Seedbed(
                        before, zone.seedbed().tillage(), zone.seedbed().residueCover()),
                zone.disease());
    }

    private static Year modelled(Farm farm, Zone zone, PastYear year, WeatherSeries observed) {
        LocalDate last = LocalDate.of(year.year(), 10, 31);
        Farm then = asOf(farm, year.year());
        LocalDate first = LocalDate.of(year.year(), 3, 1);
        boolean gap = farm.weather().gaps().stream().anyMatch(g -> g.touches(first, last));
        if (gap || !observed.covers(first, last)) {
            return Year.leftOut(year, Use.NO_WEATHER);
        }
        if (!isWaterKnown(farm, zone, year.year())) {
            return Year.leftOut(year, Use.NO_WATER);
        }
        ZoneSeason season = ZoneSeason.of(then, zone, observed, last);
        ParameterSet usual = season.parameters();
        ParameterSet more = usual.clamped(FieldLevel.OF, usual.of(FieldLevel.OF) * (1 + STEP));
        Forcing weather = Forcing.of(observed.between(first, last), farm.site());
        SeasonRun run = SeasonRun.start(season.setup(), List.of(usual, more), List.of(weather), new int[2]);
        season.advance(run, zone.planted());
        double nitrogen = year.hasNitrogen() ? year.nitrogen_kgHa() : PLENTY_KGHA;
        run.applyAll(new NitrogenPass(nitrogen, .5, .25, .25, Placement.INCORPORATED, Inhibitor.NONE));
        season.finish(run, last);
        double grain = Math.max(NOTHING_KGHA, run.yield(0).grain_kgHa());
        double step = Math.log(more.of(FieldLevel.OF) / usual.of(FieldLevel.OF));
        double followed = Math.log(run.yield(1).grain_kgHa() / grain) / step;
        return Year.run(year, grain, Math.max(LEAST_FOLLOWED, followed));
    }

    private static boolean isWaterKnown(Farm farm, Zone zone, int year) {
        List<Irrigation> water =
                farm.work().irrigation().stream().filter(w -> w.isOn(zone)).toList();
        return water.isEmpty() || water.stream().anyMatch(w -> w.date().getYear() == year);
    }

    /** The farm as it stood before a past year: nitrogen of that year comes from its row, water from what is entered. */
    private static Farm asOf(Farm farm, int year) {
        Farm.Work now = farm.work();
        List<PastYear> before = now.past().stream().filter(p -> p.year() < year).toList();
        Farm.Work then = new Farm.Work(List.of(), List.of(), now.irrigation(), List.of(), before);
        return new Farm(
                farm.name(),
                farm.site(),
                farm.timeZone(),
                farm.ground(),
                then,
                farm.shelf(),
                farm.weather(),
                farm.rules(),
                farm.flags());
    }

    /** What the past yields did, a sentence each; empty where none is known. */
    public List<Said> said() {
        List<Said> all = new ArrayList<>();
        if (level.years() > 0) {
            all.add(levelSaid());
        }
        for (Use why : Use.values()) {
            List<String> which = years.stream()
                    .filter(y -> y.use() == why)
                    .map(y -> String.valueOf(y.told().year()))
                    .toList();
            if (why != Use.COUNTED && !which.isEmpty()) {
                all.add(
                        why == Use.CAPPED
                                ? Said.of("past-yields.in-part", "years", which)
                                : Said.of("past-yields.left-out", "why", why, "years", which));
            }
        }
        return all;
    }

    private Said levelSaid() {
        double followed = meanCounted(Year::followed);
        double by = Math.exp(followed * level.shift()) - 1;
        double seen = Math.exp(followed * meanCounted(Year::log)) - 1;
        double yield_kgHa = meanCounted(y -> y.modelled_kgHa() * Math.exp(y.followed() * level.shift()));
        if (Math.abs(by) < LEAST_TOLD) {
            return Said.of("past-yields.as-usual", "years", level.years(), "yield", Measure.YIELD.of(yield_kgHa));
        }
        return Said.of(
                by > 0 ? "past-yields.above" : "past-yields.below",
                "years",
                level.years(),
                "by",
                Measure.SHARE.of(Math.abs(by)),
                "seen",
                Measure.SHARE.of(Math.abs(seen)),
                "yield",
                Measure.YIELD.of(yield_kgHa));
    }

    private double meanCounted(ToDoubleFunction<Year> what) {
        return years.stream().filter(Year::counts).mapToDouble(what).average().orElseThrow();
    }
}
