// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.random.RandomGenerator;
import org.jspecify.annotations.Nullable;

/**
 * Invents daily weather that has the statistics of a place: rain from a chain of wet and dry days with gamma amounts,
 * temperatures and radiation from their means and spreads on such days and from yesterday's departures.
 *
 * <pre>
 * value = mean(day, wet or dry) + sd(day, wet or dry) x        tmin at most tmax - 1, radiation .05 to .78 of Ra
 *
 * x      departures, see {@link Residuals}
 * rain   see {@link RainMonth}; a month's amounts share a lognormal factor, mean 1, coefficient of variation .15
 * Range  temperate places; a record of a year at least, or twelve monthly means
 * Source Richardson 1981, Water Resour. Res. 17:182. The shared factor is our own construct: such generators make the
 *        rain of whole months too even.
 * Check  WeatherGeneratorTest: 1000 years against what went in; a real station's record against its image.
 * </pre>
 */
public final class WeatherGenerator {
    private static final double MONTH_CV = 0.15;
    /** Days run before the first that counts, so that the start is forgotten. */
    private static final int WARM_UP_DAYS = 30;

    private static final double TEMPERATURE_GAP_C = 1;

    private final List<RainMonth> rain;
    private final DayCycle tmax;
    private final DayCycle tmin;
    private final @Nullable DayCycle solar;
    private final Site site;

    WeatherGenerator(List<RainMonth> rain, DayCycle tmax, DayCycle tmin, @Nullable DayCycle solar, Site site) {
        this.rain = List.copyOf(rain);
        this.tmax = tmax;
        this.tmin = tmin;
        this.solar = solar;
        this.site = site;
    }

    /** Learnt from a record of a year or more. */
    public static WeatherGenerator ofRecord(WeatherSeries record, Site site) {
        return new GeneratorFit(record).generator(site);
    }

    /** From twelve monthly means, January first; radiation stays unknown. */
    public static WeatherGenerator ofClimate(List<MonthlyClimate> months, Site site) {
        return ClimateCycles.generator(months, site);
    }

    RainMonth rainOf(Month month) {
        return rain.get(month.getValue() - 1);
    }

    /**
     * Days from {@code from} to {@code to}, both inclusive.
     *
     * @param random the only source of chance; the same state gives the same days on every Java
     */
    public WeatherSeries generate(LocalDate from, LocalDate to, RandomGenerator random) {
        Run run = new Run(random);
        for (LocalDate d = from.minusDays(WARM_UP_DAYS); d.isBefore(from); d = d.plusDays(1)) {
            run.next(d);
        }
        List<WeatherDay> days = new ArrayList<>();
        for (LocalDate d = from; !d.isAfter(to); d = d.plusDays(1)) {
            days.add(run.next(d));
        }
        return new WeatherSeries(days);
    }

    /** Carries what a day leaves to the next. */
    private final class Run {
        private final RandomGenerator random;
        private double[] x = new double[3];
        private boolean wet;
        private double monthFactor;

        Run(RandomGenerator random) {
            this.random = random;
            monthFactor = Draws.factor(MONTH_CV, random);
        }

        WeatherDay next(LocalDate date) {
            if (date.getDayOfMonth() == 1) {
                monthFactor = Draws.factor(MONTH_CV, random);
            }
            RainMonth month = rainOf(date.getMonth());
            wet = random.nextDouble() < (wet ? month.wetAfterWet() : month.wetAfterDry());
            double rain_mm = wet ? amount(month) : 0;
            x = Residuals.next(x, new double[] {Draws.normal(random), Draws.normal(random), Draws.normal(random)});
            int day = date.getDayOfYear();
            double tx = tmax.value(day, wet, x[0]);
            double tn = Math.min(tmin.value(day, wet, x[1]), tx - TEMPERATURE_GAP_C);
            double unknown = Double.NaN;
            return new WeatherDay(date, tx, tn, rain_mm, radiation(day), unknown, unknown, unknown, unknown);
        }

        private double amount(RainMonth month) {
            double mm = Draws.gamma(month.shape(), random) * month.scale_mm() * monthFactor;
            return Math.max(RainMonth.WET_MM, mm);
        }

        private double radiation(int day) {
            if (solar == null) {
                return Double.NaN;
            }
            double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(site.latitude_deg(), day);
            return Math.max(0.05 * ra, Math.min(0.78 * ra, solar.value(day, wet, x[2])));
        }
    }
}
