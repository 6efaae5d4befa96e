// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.random.RandomGenerator.SplittableGenerator;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * Possible futures of a season: what was observed to the day, then the forecast as it was issued, then the same calendar
 * days of each earlier year of the record, all variables of a day together.
 *
 * <p>With fewer than twenty such years, invented ones ({@link WeatherGenerator}) make up thirty. Earlier years stand for what may come because they keep rain, heat and light as they occur together at this place
 * (ensemble prediction from past years; Day 1985, J. Water Resour. Plan. Manage. 111:157, from memory). Weather after
 * the day asked for is never looked at, unless hindsight is asked for.
 *
 * @param observed the site's record; days after the day asked for may stand in it
 * @param forecast days as issued, may be empty; used when its first day is no later than the day after the day asked for
 * @param site where the record was made
 * @param gaps long runs of filled days in the record; a year with one of them in the window stands for no future
 */
public record AnalogYears(WeatherSeries observed, List<WeatherDay> forecast, Site site, List<WeatherGap> gaps) {
    /** The latest years of the record that are taken; common practice, 30 years make a climate normal. */
    private static final int MOST = 30;
    /** With fewer years of record than this the generator fills up to {@link #MOST}; common practice, no source. */
    private static final int FEWEST = 20;
    /** A forecast is believed for a week from its first day; common practice, no source. */
    private static final int FORECAST_DAYS = 7;

    public AnalogYears {
        forecast = List.copyOf(forecast);
        gaps = List.copyOf(gaps);
    }

    /** Of a record without long gaps. */
    public AnalogYears(WeatherSeries observed, List<WeatherDay> forecast, Site site) {
        this(observed, forecast, site, List.of());
    }

    /**
     * Futures as they could be known on the evening of {@code on}; earlier years weigh more the more their last 60 days
     * were like this season's. A single one when nothing is left to happen.
     *
     * @param from first day of the run; the record must reach back to it
     * @param to last day of the run, inclusive
     * @param random for the years that the generator adds when the record has few; a fresh one from the same seed gives
     *     the same futures
     */
    public List<Future> futures(LocalDate on, LocalDate from, LocalDate to, SplittableGenerator random) {
        if (observed.isEmpty()) {
            observed.at(from);
        }
        LocalDate known = on.isBefore(observed.last()) ? on : observed.last();
        List<WeatherDay> start = new ArrayList<>();
        for (LocalDate d = from; !d.isAfter(known) && !d.isAfter(to); d = d.plusDays(1)) {
            start.add(observed.at(d));
        }
        if (!known.isBefore(to)) {
            return List.of(new Future(String.valueOf(to.getYear()), 1, new WeatherSeries(start)));
        }
        Window window = new Window(start, from.isAfter(known) ? from : known.plusDays(1), to, on);
        List<Future> futures = earlierYears(window, known);
        if (futures.isEmpty()) {
            throw tooShort(window, known);
        }
        return futures.size() < FEWEST ? filledUp(futures, window, known, random) : futures;
    }

    /** Earlier years keep their weights among themselves; every year counts as much on average, invented or not. */
    private List<Future> filledUp(List<Future> years, Window window, LocalDate known, SplittableGenerator random) {
        double share = (double) years.size() / MOST;
        List<Future> all = new ArrayList<>();
        years.forEach(f -> all.add(new Future(f.label(), share * f.weight(), f.weather())));
        all.addAll(generated(window, known, MOST - years.size(), random));
        return all;
    }

    /** What is known with the whole record in hand: the observed year itself as far as the record goes. */
    public List<Future> hindsight(LocalDate on, LocalDate from, LocalDate to, SplittableGenerator random) {
        return futures(observed.last().isAfter(on) ? observed.last() : on, from, to, random);
    }

    /** The days still open, after those that are known. */
    private record Window(List<WeatherDay> start, LocalDate first, LocalDate last, LocalDate on) {}

    private List<Future> earlierYears(Window window, LocalDate known) {
        List<Integer> back = new ArrayList<>();
        int oldest = window.last.getYear() - observed.first().getYear();
        for (int years = 1; years <= oldest && back.size() < MOST; years++) {
            LocalDate last = window.last.minusYears(years);
            LocalDate first = window.first.minusYears(years);
            if (!last.isAfter(known) && observed.covers(first, last) && isObserved(first, last)) {
                back.add(years);
            }
        }
        double[] weights = YearLikeness.weights(
                back.stream()
                        .map(years -> YearLikeness.before(observed, known.minusYears(years)))
                        .toArray(double[][]::new),
                YearLikeness.before(observed, known));
        WeatherSeries record = back.isEmpty() ? observed : observed.between(observed.first(), known);
        LocalDate splice = afterForecast(window);
        List<Future> futures = new ArrayList<>();
        for (int k = 0; k < weights.length; k++) {
            futures.add(earlierYear(window, record, splice, back.get(k), weights[k]));
        }
        return futures;
    }

    /** The first open day without a forecast. */
    private LocalDate afterForecast(Window window) {
        LocalDate day = window.first;
        while (!day.isAfter(window.last) && forecastOf(day, window.on).isPresent()) {
            day = day.plusDays(1);
        }
        return day;
    }

    private Future earlierYear(Window window, WeatherSeries record, LocalDate splice, int years, double weight) {
        int shift = splice.isAfter(window.last)
                ? 0
                : YearLikeness.shift_d(record, splice.minusYears(years), window.last.minusYears(years));
        String label = String.valueOf(window.last.getYear() - years);
        return future(
                label, weight, window, d -> observed.at(d.minusYears(years).plusDays(shift))
                        .on(d));
    }

    private boolean isObserved(LocalDate from, LocalDate toInclusive) {
        return gaps.stream().noneMatch(gap -> gap.touches(from, toInclusive));
    }

    /** Learns from the days known on the day asked for, and no others. */
    private List<Future> generated(Window window, LocalDate known, int number, SplittableGenerator random) {
        WeatherGenerator generator = WeatherGenerator.ofRecord(observed.between(observed.first(), known), site);
        List<Future> futures = new ArrayList<>();
        for (int k = 1; k <= number; k++) {
            WeatherSeries days = generator.generate(window.first, window.last, random.split());
            futures.add(future("generated " + k, 1.0 / MOST, window, days::at));
        }
        return futures;
    }

    private Future future(String label, double weight, Window window, Function<LocalDate, WeatherDay> then) {
        List<WeatherDay> days = new ArrayList<>(window.start);
        for (LocalDate d = window.first; !d.isAfter(window.last); d = d.plusDays(1)) {
            LocalDate day = d;
            days.add(forecastOf(day, window.on).orElseGet(() -> then.apply(day)));
        }
        return new Future(label, weight, new WeatherSeries(days));
    }

    private EarleafException tooShort(Window window, LocalDate known) {
        return new EarleafException(Problem.of(
                "weather.no-earlier-year",
                Said.of("where.weather-before", "day", window.first),
                Said.of("found.weather-record", "first", observed.first(), "last", known),
                "from",
                window.first,
                "to",
                window.last));
    }

    private Optional<WeatherDay> forecastOf(LocalDate date, LocalDate on) {
        return forecastOf(forecast, date, on);
    }

    /** The forecast of a day when it could have been in hand on {@code on}, and is believed. */
    public static Optional<WeatherDay> forecastOf(List<WeatherDay> forecast, LocalDate date, LocalDate on) {
        if (forecast.isEmpty() || forecast.get(0).date().isAfter(on.plusDays(1))) {
            return Optional.empty();
        }
        if (!date.isBefore(forecast.get(0).date().plusDays(FORECAST_DAYS))) {
            return Optional.empty();
        }
        return forecast.stream().filter(day -> day.date().equals(date)).findFirst();
    }
}
