// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.farm.Farm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.weather.AnalogYears;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Future;
import org.earleaf.weather.WeatherSeries;

/**
 * A zone on a day with the same futures for every question asked about it: the season to the morning of that day
 * computed once, and from there one course of weather for each earlier year of the record.
 *
 * @param season with everything done up to the day
 * @param last last day any future reaches
 * @param weather one a future
 */
record ZoneFutures(Farm farm, Zone zone, LocalDate on, ZoneSeason season, LocalDate last, List<Forcing> weather) {
    /** Corn is ripe or frozen before this many days after planting (common practice, no source). */
    private static final int LONGEST_SEASON_D = 170;
    /** Invented years are drawn from this seed, the same on every field of every farm: results can be repeated. */
    private static final long SEED = 20_250_101L;

    static ZoneFutures of(Farm farm, Zone zone, LocalDate on, boolean hindsight) {
        WeatherSeries observed = FieldWeather.of(farm, zone);
        ZoneSeason season = ZoneSeason.of(farm, zone, observed, on);
        LocalDate first = season.setup().first();
        LocalDate end = zone.planted().plusDays(LONGEST_SEASON_D);
        LocalDate last = end.isBefore(LocalDate.of(zone.planted().getYear(), 10, 31))
                ? end
                : LocalDate.of(zone.planted().getYear(), 10, 31);
        AnalogYears years = new AnalogYears(
                observed,
                FieldWeather.forecast(farm, zone, on),
                farm.site(),
                farm.weather().gaps());
        SplittableRandom random = new SplittableRandom(SEED);
        List<Future> futures =
                hindsight ? years.hindsight(on, first, last, random) : years.futures(on, first, last, random);
        List<Forcing> weather = new ArrayList<>();
        for (Future f : futures) {
            weather.add(Forcing.of(f.weather(), farm.site()));
        }
        return new ZoneFutures(farm, zone, on, season, last, List.copyOf(weather));
    }

    int futures() {
        return weather.size();
    }

    /** The first day that can still be decided on: {@code on}, or the start of the run when that is later. */
    LocalDate decisionDay() {
        LocalDate first = season.setup().first();
        return on.isBefore(first) ? first : on.isAfter(last) ? last : on;
    }

    /** All futures as members of one run, on the morning of the decision day. */
    SeasonRun morning(ZoneSeason what) {
        SeasonRun trunk = what.start(weather.get(0));
        what.advance(trunk, decisionDay());
        return trunk.branch(weather);
    }
}
