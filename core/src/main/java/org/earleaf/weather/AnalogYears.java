// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.units.EarleafException;

/**
 * Possible futures of a season: what was observed to the day, then the forecast as it was issued, then the same calendar
 * days of each earlier year of the record, all variables of a day together.
 *
 * <p>Earlier years stand for what may come because they keep rain, heat and light as they occur together at this place
 * (ensemble prediction from past years; Day 1985, J. Water Resour. Plan. Manage. 111:157, from memory). Weather after
 * the day asked for is never looked at, unless hindsight is asked for.
 *
 * @param observed the site's record; days after the day asked for may stand in it
 * @param forecast days as issued, may be empty; used when its first day is no later than the day after the day asked for
 * @param site where the record was made
 */
public record AnalogYears(WeatherSeries observed, List<WeatherDay> forecast, Site site) {
    /** The latest years of the record that are taken; common practice, 30 years make a climate normal. */
    private static final int MOST = 30;
    /** A forecast is believed for a week from its first day; common practice, no source. */
    private static final int FORECAST_DAYS = 7;

    public AnalogYears {
        forecast = List.copyOf(forecast);
    }

    /**
     * Futures as they could be known on the evening of {@code on}, equal in weight; a single one when nothing is left to
     * happen.
     *
     * @param from first day of the run; the record must reach back to it
     * @param to last day of the run, inclusive
     */
    public List<Future> futures(LocalDate on, LocalDate from, LocalDate to) {
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
        return equalWeights(earlierYears(start, on, known, from, to));
    }

    /** What is known with the whole record in hand: the observed year itself as far as the record goes. */
    public List<Future> hindsight(LocalDate on, LocalDate from, LocalDate to) {
        return futures(observed.last().isAfter(on) ? observed.last() : on, from, to);
    }

    private List<Future> earlierYears(
            List<WeatherDay> start, LocalDate on, LocalDate known, LocalDate from, LocalDate to) {
        LocalDate unknown = from.isAfter(known) ? from : known.plusDays(1);
        List<Future> futures = new ArrayList<>();
        int oldest = (int) ChronoUnit.YEARS.between(observed.first(), to) + 1;
        for (int back = 1; back <= oldest && futures.size() < MOST; back++) {
            if (isKnown(unknown.minusYears(back), to.minusYears(back), known)) {
                List<WeatherDay> days = new ArrayList<>(start);
                for (LocalDate d = unknown; !d.isAfter(to); d = d.plusDays(1)) {
                    WeatherDay then = observed.at(d.minusYears(back)).on(d);
                    days.add(forecastOf(d, on).orElse(then));
                }
                String year = String.valueOf(to.getYear() - back);
                futures.add(new Future(year, 1, new WeatherSeries(days)));
            }
        }
        if (futures.isEmpty()) {
            throw EarleafException.of(
                    "weather before " + from,
                    "a record from " + observed.first() + " to " + known,
                    "at least one earlier year with every day from " + unknown + " to " + to,
                    "Import earlier years of the nearest station.");
        }
        return futures;
    }

    private boolean isKnown(LocalDate first, LocalDate last, LocalDate known) {
        return !last.isAfter(known) && observed.covers(first, last);
    }

    /** The forecast of a day when it could have been in hand on {@code on}. */
    private Optional<WeatherDay> forecastOf(LocalDate date, LocalDate on) {
        if (forecast.isEmpty() || forecast.get(0).date().isAfter(on.plusDays(1))) {
            return Optional.empty();
        }
        if (!date.isBefore(forecast.get(0).date().plusDays(FORECAST_DAYS))) {
            return Optional.empty();
        }
        return forecast.stream().filter(day -> day.date().equals(date)).findFirst();
    }

    private static List<Future> equalWeights(List<Future> futures) {
        double share = 1.0 / futures.size();
        return futures.stream()
                .map(f -> new Future(f.label(), share, f.weather()))
                .toList();
    }
}
