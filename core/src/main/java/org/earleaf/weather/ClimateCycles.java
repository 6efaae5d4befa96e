// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * What monthly means do not tell, filled in from what the Corn Belt has in common.
 *
 * <pre>
 * dry day less wet day   highest  -0.3 + 0.20 T - 0.0057 T^2      lowest  -2.6 + 0.04 T      [°C]
 * standard deviation     highest   6.6 + 0.04 T - 0.0073 T^2      lowest   6.2 - 0.12 T      [°C], 2.5 at least
 *
 * T      mean temperature of the month           [°C]
 * Range  T from -15 to 27; elsewhere the spreads are guesses
 * Source own construct: regressions over the 36 months of three stations of the Global Historical Climatology Network
 *        (Urbana IL, Clinton IA, Findlay OH; 1985-2014); a month lies within about 0.9, 0.6, 0.4 and 0.4 °C of them.
 * Check  WeatherGeneratorTest: monthly means that went in come out.
 * </pre>
 */
final class ClimateCycles {
    private static final double LEAST_SD_C = 2.5;

    private ClimateCycles() {}

    static WeatherGenerator generator(List<MonthlyClimate> months, Site site) {
        return new WeatherGenerator(
                months.stream().map(RainMonth::of).toList(),
                cycle(
                        months,
                        MonthlyClimate::tmax_C,
                        t -> -0.3 + 0.20 * t - 0.0057 * t * t,
                        t -> 6.6 + 0.04 * t - 0.0073 * t * t),
                cycle(months, MonthlyClimate::tmin_C, t -> -2.6 + 0.04 * t, t -> 6.2 - 0.12 * t),
                null,
                site);
    }

    private static DayCycle cycle(
            List<MonthlyClimate> months,
            ToDoubleFunction<MonthlyClimate> mean,
            DoubleUnaryOperator dryLessWet,
            DoubleUnaryOperator sd) {
        double[] dry = new double[12];
        double[] wet = new double[12];
        double[] variance = new double[12];
        for (int k = 0; k < 12; k++) {
            MonthlyClimate m = months.get(k);
            double wetShare = m.wetDays() / m.days();
            double difference = dryLessWet.applyAsDouble(m.tmean_C());
            double spread = Math.max(LEAST_SD_C, sd.applyAsDouble(m.tmean_C()));
            dry[k] = mean.applyAsDouble(m) + wetShare * difference;
            wet[k] = mean.applyAsDouble(m) - (1 - wetShare) * difference;
            variance[k] = spread * spread;
        }
        AnnualCycle spreads = AnnualCycle.ofMonths(variance);
        return new DayCycle(AnnualCycle.ofMonths(dry), AnnualCycle.ofMonths(wet), spreads, spreads);
    }
}
