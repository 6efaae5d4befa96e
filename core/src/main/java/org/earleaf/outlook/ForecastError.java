// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.random.RandomGenerator;
import java.util.stream.IntStream;
import org.earleaf.farm.WeatherBook;
import org.earleaf.weather.Draws;
import org.earleaf.weather.Future;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/**
 * How a forecast may miss, member by member.
 *
 * <pre>
 * rain   falls by the chance issued with it, its amount x lognormal of CV .6; temperatures + (1.0 + 0.3 d) z, d days ahead
 *
 * Range  1 to 7 days ahead
 * Source own construct; grows with lead time as verification reports of weather services have it (common practice, no
 *        source)
 * Check  ForecastErrorTest
 * </pre>
 */
final class ForecastError {
    private static final int DAYS = 7;
    /** Between the generators of two members. */
    private static final long STRIDE = 7919;

    private static final double RAIN_CV = .6;
    /** What falls when rain comes that was not in the amount [mm] (own construct). */
    private static final double SHOWER_MM = 3;

    private final WeatherBook book;
    private final LocalDate on;

    ForecastError(WeatherBook book, LocalDate on) {
        this.book = book;
        this.on = on;
    }

    /** Which future each of so many members follows, by weight. */
    static int[] byWeight(List<Future> futures, int members) {
        return Assimilation.systematic(
                futures.stream().mapToDouble(f -> Math.log(f.weight())).toArray(), members);
    }

    /** A course a member: the future it follows, with an error of the forecast of its own. */
    List<WeatherSeries> courses(List<Future> futures, int[] followed, long seed) {
        return IntStream.range(0, followed.length)
                .mapToObj(m -> perturbed(futures.get(followed[m]).weather(), new SplittableRandom(seed + STRIDE * m)))
                .toList();
    }

    /** The course with its forecast days moved; other days stay as they are. */
    WeatherSeries perturbed(WeatherSeries course, RandomGenerator random) {
        List<WeatherDay> days = new ArrayList<>(course.days());
        int first = (int) ChronoUnit.DAYS.between(course.first(), on) + 1;
        double warmth = Draws.normal(random);
        for (int ahead = 1; ahead <= DAYS; ahead++) {
            int k = first + ahead - 1;
            int f = forecastIndex(on.plusDays(ahead));
            if (k >= 0 && k < days.size() && f >= 0) {
                days.set(k, moved(days.get(k), f, ahead, warmth, random));
            }
        }
        return new WeatherSeries(days);
    }

    private int forecastIndex(LocalDate date) {
        if (!book.observed().isEmpty() && !date.isAfter(book.observed().last()) && !date.isAfter(on)) {
            return -1;
        }
        for (int f = 0; f < book.forecast().size(); f++) {
            if (book.forecast().get(f).date().equals(date)) {
                return f;
            }
        }
        return -1;
    }

    /** Errors of temperature last over days: half of each day's is that of the whole week. */
    private WeatherDay moved(WeatherDay d, int f, int ahead, double warmth, RandomGenerator random) {
        double shift = (1.0 + 0.3 * ahead) * (Math.sqrt(.5) * warmth + Math.sqrt(.5) * Draws.normal(random));
        double chance = f < book.rainChance().size() ? book.rainChance().get(f) : Double.NaN;
        boolean falls = Double.isNaN(chance) ? d.rain_mm() > 0 : random.nextDouble() < chance;
        double amount = d.rain_mm() > 0 ? d.rain_mm() : SHOWER_MM;
        double rain = falls ? amount * Draws.factor(RAIN_CV, random) : 0;
        return new WeatherDay(
                d.date(),
                d.tmax_C() + shift,
                d.tmin_C() + shift,
                rain,
                d.solar_MJm2(),
                d.wind_ms(),
                d.rhMax_pct(),
                d.rhMin_pct(),
                d.dewPoint_C());
    }
}
