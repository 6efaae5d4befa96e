// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.Optional;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.earleaf.weather.AnalogYears;
import org.earleaf.weather.WeatherSeries;

/**
 * How far what was observed of the weather reaches towards a day. Between the two the season runs on the forecast as it
 * was issued and, where there is none, on earlier years.
 *
 * @param observed the last observed day that the answers of {@code on} rest on
 * @param filled how many of the days after it and before {@code on} are filled
 * @param forecast how many of these by the forecast; the others by earlier years
 */
public record WeatherAge(LocalDate observed, LocalDate on, int filled, int forecast) {
    /** An older record says too little of today's soil and crop; common practice, no source. */
    public static final int OLDEST_D = 10;

    /** Empty where nothing was observed at all: then nothing can be worked out, which is told where it is tried. */
    public static Optional<WeatherAge> of(WeatherBook weather, LocalDate on) {
        WeatherSeries record = weather.observed();
        if (record.isEmpty()) {
            return Optional.empty();
        }
        LocalDate observed = record.last().isBefore(on) ? record.last() : on;
        int filled = 0;
        int forecast = 0;
        for (LocalDate day = observed.plusDays(1); day.isBefore(on); day = day.plusDays(1)) {
            filled++;
            forecast += AnalogYears.forecastOf(weather.forecast(), day, on).isPresent() ? 1 : 0;
        }
        return Optional.of(new WeatherAge(observed, on, filled, forecast));
    }

    /** Refuses a day that {@link #findRefusal} speaks against. */
    public static void check(Farm farm, LocalDate on) {
        findRefusal(farm, on).ifPresent(refusal -> {
            throw refusal;
        });
    }

    /** Against a day too long after the last observed one, or of a season that is over by the farm's own record. */
    public static Optional<EarleafException> findRefusal(Farm farm, LocalDate on) {
        if (of(farm.weather(), on).isEmpty()) {
            return Optional.empty();
        }
        LocalDate last = farm.weather().observed().last();
        if (ChronoUnit.DAYS.between(last, on) > OLDEST_D) {
            return Optional.of(
                    refused("weather.too-old", last, "on", on, "days", OLDEST_D, "latest", last.plusDays(OLDEST_D)));
        }
        boolean planted = farm.zones().stream().anyMatch(z -> z.planted().getYear() == on.getYear());
        if (on.getYear() < last.getYear() && !planted) {
            return Optional.of(refused("weather.another-season", last, "on", on, "last", last));
        }
        return Optional.empty();
    }

    private static EarleafException refused(String code, LocalDate last, Object... namesAndValues) {
        return new EarleafException(Problem.of(
                code, Said.of("where.weather-record"), Said.of("found.weather-to", "last", last), namesAndValues));
    }

    /** What stands on every brief: the alarm, where days are filled, else the last observed day. */
    public Said said() {
        return alarm().orElseGet(() -> Said.of("brief.weather-to", "last", observed));
    }

    /** Days between the last observed one and the day asked for, and what stands in for them. */
    public Optional<Said> alarm() {
        return filled == 0
                ? Optional.empty()
                : Optional.of(
                        Said.of("alarm.weather-old", "last", observed, "on", on, "n", filled, "filled", standsIn()));
    }

    private Said standsIn() {
        if (forecast == 0) {
            return Said.of("weather.filled-by-years");
        }
        return forecast == filled
                ? Said.of("weather.filled-by-forecast")
                : Said.of("weather.filled-by-both", "n", forecast);
    }
}
