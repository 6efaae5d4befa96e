// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import org.earleaf.farm.Farm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.farm.Setting;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.ZoneSeason;
import org.earleaf.season.parameter.ParameterDraws;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.season.parameter.TrialDistance;
import org.earleaf.units.Flag;
import org.earleaf.weather.AnalogYears;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Future;
import org.earleaf.weather.WeatherSeries;

/**
 * A zone on a day as an ensemble: members that differ in what is not known of soil and crop, corrected by every reading
 * up to the day, each with one course of weather from there on. Every question about the zone is asked of the same
 * members, so that options differ by what they do and not by luck.
 */
public final class ZoneEnsemble {
    public static final int MEMBERS = 100;
    /** So many times as many members are run up to today where there are readings (own construct). */
    private static final int TO_CHOOSE_FROM = 4;

    /** Corn is ripe or frozen before this many days after planting (common practice, no source). */
    private static final int LONGEST_SEASON_D = 170;
    /**
     * Start of all draws: results can be repeated, and fields that are alike get the same draws and the same advice,
     * whatever they are called.
     */
    private static final long SEED = 20_250_101L;

    private final Farm farm;
    private final Zone zone;
    private final LocalDate on;
    private final ZoneSeason season;
    private final PastYields grew;
    private final LocalDate last;
    private final List<Forcing> weather;
    /** Which future a member follows before the error of the forecast moves it. */
    private int[] courses = new int[MEMBERS];

    private final List<Flag> flags;
    private List<Unforeseen> unforeseen = List.of();
    private final SeasonRun morning;
    private final SeasonTrace past;
    private final LongAdder memberDays = new LongAdder();

    private ZoneEnsemble(Farm farm, Zone zone, LocalDate on, boolean hindsight, PastYields grew) {
        this.farm = farm;
        this.zone = zone;
        this.on = on;
        WeatherSeries observed = FieldWeather.of(farm, zone);
        season = ZoneSeason.of(farm, zone, observed, on);
        this.grew = grew;
        flags = new ArrayList<>(season.flags());
        LocalDate end = zone.planted().plusDays(LONGEST_SEASON_D);
        LocalDate autumn = LocalDate.of(zone.planted().getYear(), 10, 31);
        last = end.isBefore(autumn) ? end : autumn;
        weather = weather(observed, hindsight);
        past = season.newTrace(weather.get(0).days());
        morning = morning();
    }

    public static ZoneEnsemble of(Farm farm, Zone zone, LocalDate on, boolean hindsight) {
        return of(farm, zone, on, hindsight, PastYields.of(farm, zone));
    }

    /** @param grew what is known of the level of the zone's yields */
    public static ZoneEnsemble of(Farm farm, Zone zone, LocalDate on, boolean hindsight, PastYields grew) {
        return new ZoneEnsemble(farm, zone, on, hindsight, grew);
    }

    /** One course of weather a member: futures by weight, each with its own error of the forecast. */
    private List<Forcing> weather(WeatherSeries observed, boolean hindsight) {
        LocalDate first = season.setup().first();
        AnalogYears years = new AnalogYears(
                observed,
                FieldWeather.forecast(farm, zone, on),
                farm.site(),
                farm.weather().gaps());
        SplittableRandom random = new SplittableRandom(SEED);
        List<Future> futures =
                hindsight ? years.hindsight(on, first, last, random) : years.futures(on, first, last, random);
        if (futures.size() == 1) {
            return List.of(Forcing.of(futures.get(0).weather(), farm.site()));
        }
        courses = ForecastError.byWeight(futures, MEMBERS);
        return new ForecastError(farm.weather(), on)
                .courses(futures, courses, SEED).stream()
                        .map(course -> Forcing.of(course, farm.site()))
                        .toList();
    }

    /**
     * All members on the morning of the decision day, corrected by the readings up to it; those of the day came then.
     * Readings choose among more members than go on, so that a choice made several times over does not leave a handful.
     */
    private SeasonRun morning() {
        LocalDate first = season.setup().first();
        List<LocalDate> days = readingDays(first);
        int[] members = IntStream.range(0, days.isEmpty() ? MEMBERS : MEMBERS * TO_CHOOSE_FROM)
                .toArray();
        double widened = TrialDistance.widening(zone, farm.site());
        List<ParameterSet> sets =
                ParameterDraws.members(season.parameters(), grew.level(), members.length, SEED, widened);
        SeasonRun run = SeasonRun.start(season.setup(), sets, weather, weatherOf(IntStream.of(members), weather));
        Assimilation readings =
                new Assimilation(season, flags, SEED, farm.settings().says(Setting.SOIL_TEST_SHIFTS));
        for (LocalDate date : days) {
            advance(run, date.isBefore(decisionDay()) ? date.plusDays(1) : date, past);
            List<Reading> ofDay = farm.readings().stream()
                    .filter(r -> r.isOn(zone) && r.date().equals(date))
                    .toList();
            run = readings.correct(run, ofDay);
        }
        unforeseen = readings.unforeseen();
        advance(run, decisionDay(), past);
        return days.isEmpty() ? run : thinned(run);
    }

    /** Every so-manieth: copies of one member stand side by side, so each is thinned alike. */
    private SeasonRun thinned(SeasonRun run) {
        int[] from = IntStream.range(0, MEMBERS)
                .map(m -> TO_CHOOSE_FROM * m + TO_CHOOSE_FROM / 2)
                .toArray();
        return run.branch(from, weather, weatherOf());
    }

    /** Days with readings from planting to the decision day; those before planting set the start. */
    private List<LocalDate> readingDays(LocalDate first) {
        return farm.readings().stream()
                .filter(r -> r.isOn(zone)
                        && !r.date().isAfter(decisionDay())
                        && !r.date().isBefore(zone.planted())
                        && r.date().isAfter(first))
                .map(Reading::date)
                .distinct()
                .sorted()
                .toList();
    }

    private int[] weatherOf() {
        return weatherOf(IntStream.range(0, MEMBERS), weather);
    }

    /** Which course of weather each of some members takes: the m-th, or the only one. */
    public static int[] weatherOf(IntStream members, List<Forcing> weather) {
        return members.map(m -> m % weather.size()).toArray();
    }

    public Farm farm() {
        return farm;
    }

    public Zone zone() {
        return zone;
    }

    public LocalDate on() {
        return on;
    }

    public ZoneSeason season() {
        return season;
    }

    /** What the zone's own past yields say of its level. */
    public PastYields grew() {
        return grew;
    }

    public LocalDate last() {
        return last;
    }

    /** The courses of weather; member m takes the m-th, or the only one. */
    public List<Forcing> weather() {
        return weather;
    }

    /** Chance by day that the zone can be worked, over the whole run. */
    public WorkableDays workable() {
        return WorkableDays.of(weather, decisionDay(), season.setup().first(), last);
    }

    /** The course of a member. */
    public Forcing weatherOf(int m) {
        return weather.get(m % weather.size());
    }

    /** Which future each member follows; members of one future have the same weather but for the forecast's error. */
    public int[] courses() {
        return courses.clone();
    }

    public List<Flag> flags() {
        return flags;
    }

    /** Nitrate tests to which the members had to be widened, in order of date. */
    public List<Unforeseen> unforeseen() {
        return unforeseen;
    }

    /** The means of the members up to the decision day; a copy that can be written on. */
    SeasonTrace past() {
        return past.copy();
    }

    /** The first day that can still be decided on: {@code on}, or the start of the run when that is later. */
    public LocalDate decisionDay() {
        LocalDate first = season.setup().first();
        return on.isBefore(first) ? first : on.isAfter(last) ? last : on;
    }

    /** Steps a run until {@code next} is its next day. */
    public void advance(SeasonRun run, LocalDate next) {
        LocalDate from = run.date();
        season.advance(run, next);
        count(run, from);
    }

    private void advance(SeasonRun run, LocalDate next, SeasonTrace means) {
        LocalDate from = run.date();
        season.advance(run, next, means);
        count(run, from);
    }

    /** Steps a run to its end. */
    public void finish(SeasonRun run) {
        LocalDate from = run.date();
        season.finish(run, last);
        count(run, from);
    }

    /** Counts what a run has been stepped since a day. */
    void count(SeasonRun run, LocalDate from) {
        memberDays.add(run.members() * ChronoUnit.DAYS.between(from, run.date()));
    }

    /** Days stepped so far for this zone, times the members of each run. */
    public long memberDays() {
        return memberDays.sum();
    }

    /** A fresh run of all members on the morning of the decision day. */
    public SeasonRun members() {
        return morning.branch(IntStream.range(0, MEMBERS).toArray(), weather, weatherOf());
    }
}
