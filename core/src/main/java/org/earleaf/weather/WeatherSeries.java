// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;

/** Contiguous days of weather, oldest first; temperatures and rain known on every day. */
public final class WeatherSeries {
    private final List<WeatherDay> days;

    public WeatherSeries(List<WeatherDay> days) {
        this.days = List.copyOf(days);
        for (int k = 1; k < this.days.size(); k++) {
            LocalDate due = this.days.get(k - 1).date().plusDays(1);
            if (!this.days.get(k).date().equals(due)) {
                throw new EarleafException(Problem.of(
                        "weather.not-contiguous",
                        Said.of("where.weather-of", "day", due),
                        Said.of("found.next-day", "day", this.days.get(k).date())));
            }
        }
    }

    public List<WeatherDay> days() {
        return days;
    }

    public boolean isEmpty() {
        return days.isEmpty();
    }

    public LocalDate first() {
        return days.get(0).date();
    }

    public LocalDate last() {
        return days.get(days.size() - 1).date();
    }

    public boolean covers(LocalDate from, LocalDate toInclusive) {
        return !isEmpty() && !from.isBefore(first()) && !toInclusive.isAfter(last());
    }

    public WeatherDay at(LocalDate date) {
        if (!covers(date, date)) {
            Said have = isEmpty()
                    ? Said.of("found.no-weather")
                    : Said.of("found.weather-from", "first", first(), "last", last());
            throw new EarleafException(Problem.of("weather.no-row", Said.of("where.weather-of", "day", date), have));
        }
        return days.get((int) ChronoUnit.DAYS.between(first(), date));
    }

    /** The days from {@code from} to {@code toInclusive}, both of which must be covered. */
    public WeatherSeries between(LocalDate from, LocalDate toInclusive) {
        at(from);
        at(toInclusive);
        int a = (int) ChronoUnit.DAYS.between(first(), from);
        int b = (int) ChronoUnit.DAYS.between(first(), toInclusive);
        return new WeatherSeries(days.subList(a, b + 1));
    }

    @Override
    public boolean equals(@Nullable Object other) {
        return other instanceof WeatherSeries series && days.equals(series.days);
    }

    @Override
    public int hashCode() {
        return days.hashCode();
    }
}
