// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;

/** Learns the statistics of a record for {@link WeatherGenerator}. */
final class GeneratorFit {
    private static final int LEAST_DAYS_A_MONTH = 28;
    private static final int LEAST_DAYS_OF_A_KIND = 30;
    /** One more harmonic for every so many days, so that a short record is not followed into its chances. */
    private static final int DAYS_A_HARMONIC = 200;

    private static final int MEAN_HARMONICS = 5;
    private static final int VARIANCE_HARMONICS = 3;

    private final List<List<WeatherDay>> byMonth = new ArrayList<>();
    private final List<List<Boolean>> wetBefore = new ArrayList<>();
    private final List<WeatherDay> days;

    GeneratorFit(WeatherSeries record) {
        days = record.days();
        for (int k = 0; k < 12; k++) {
            byMonth.add(new ArrayList<>());
            wetBefore.add(new ArrayList<>());
        }
        for (int k = 1; k < days.size(); k++) {
            int month = days.get(k).date().getMonthValue() - 1;
            byMonth.get(month).add(days.get(k));
            wetBefore.get(month).add(isWet(days.get(k - 1)));
        }
    }

    private static boolean isWet(WeatherDay day) {
        return day.rain_mm() >= RainMonth.WET_MM;
    }

    WeatherGenerator generator(Site site) {
        List<RainMonth> rain = new ArrayList<>();
        for (int k = 0; k < 12; k++) {
            if (byMonth.get(k).size() < LEAST_DAYS_A_MONTH) {
                throw tooShort(Said.of(
                        "found.days-of-month",
                        "month",
                        LocalDate.EPOCH.withMonth(k + 1),
                        "n",
                        byMonth.get(k).size()));
            }
            rain.add(RainMonth.fit(byMonth.get(k), wetBefore.get(k)));
        }
        DayCycle tmax = cycle(WeatherDay::tmax_C);
        DayCycle tmin = cycle(WeatherDay::tmin_C);
        if (tmax == null || tmin == null) {
            throw tooShort(Said.of("found.few-wet-or-dry-days", "n", LEAST_DAYS_OF_A_KIND));
        }
        return new WeatherGenerator(rain, tmax, tmin, cycle(WeatherDay::solar_MJm2), site);
    }

    private static EarleafException tooShort(Said found) {
        return new EarleafException(Problem.of("weather.record-short", Said.of("where.weather-record"), found));
    }

    /** Null where the variable is known on too few days. */
    private @Nullable DayCycle cycle(ToDoubleFunction<WeatherDay> variable) {
        Sample dry = sample(variable, false);
        Sample wet = sample(variable, true);
        if (Math.min(dry.days.length, wet.days.length) < LEAST_DAYS_OF_A_KIND) {
            return null;
        }
        AnnualCycle meanDry = dry.mean();
        AnnualCycle meanWet = wet.mean();
        return new DayCycle(meanDry, meanWet, dry.variance(meanDry), wet.variance(meanWet));
    }

    private Sample sample(ToDoubleFunction<WeatherDay> variable, boolean wet) {
        List<WeatherDay> known = days.stream()
                .filter(d -> isWet(d) == wet && !Double.isNaN(variable.applyAsDouble(d)))
                .toList();
        return new Sample(
                known.stream().mapToDouble(d -> d.date().getDayOfYear()).toArray(),
                known.stream().mapToDouble(variable).toArray());
    }

    @SuppressWarnings("ArrayRecordComponent")
    private record Sample(double[] days, double[] values) {
        private int harmonics(int most) {
            return Math.min(most, 1 + days.length / DAYS_A_HARMONIC);
        }

        AnnualCycle mean() {
            return AnnualCycle.fit(days, values, harmonics(MEAN_HARMONICS));
        }

        AnnualCycle variance(AnnualCycle mean) {
            double[] squares = new double[days.length];
            for (int k = 0; k < days.length; k++) {
                double departure = values[k] - mean.at((int) days[k]);
                squares[k] = departure * departure;
            }
            return AnnualCycle.fit(days, squares, harmonics(VARIANCE_HARMONICS));
        }
    }
}
