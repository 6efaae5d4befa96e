// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * One site-year of a fit.
 *
 * @param measured_tHa dry grain by rate
 * @param modelled_tHa the same
 * @param best_kgHa rate that pays best by the model
 * @param measuredBest_kgHa the same as measured
 */
record FitCase(SiteYear at, double[] measured_tHa, double[] modelled_tHa, int best_kgHa, int measuredBest_kgHa) {
    static FitCase of(SiteYear at, double[] rates_kgHa, double[] grain_kgHa) {
        return new FitCase(
                at,
                Arrays.stream(rates_kgHa)
                        .map(rate -> at.measured().at(rate) / 1000)
                        .toArray(),
                Arrays.stream(grain_kgHa).map(grain -> grain / 1000).toArray(),
                Money.best_kgHa(new Modelled(grain_kgHa)::at),
                Money.best_kgHa(at.measured()::at));
    }

    double regret() {
        return Money.return_usdAc(at.measured()::at, measuredBest_kgHa)
                - Money.return_usdAc(at.measured()::at, best_kgHa);
    }

    static double full(double[] grain_tHa) {
        return grain_tHa[grain_tHa.length - 1];
    }

    static double share(double[] grain_tHa) {
        return grain_tHa[0] / full(grain_tHa);
    }

    static double gain(double[] grain_tHa) {
        return full(grain_tHa) - grain_tHa[0];
    }

    /** Mean square error of the yields. */
    double yieldError() {
        return error(0, 0);
    }

    /** The same of what is missing to the full yield. */
    double gainError() {
        return error(full(modelled_tHa), full(measured_tHa));
    }

    private double error(double modelled, double measured) {
        return IntStream.range(0, measured_tHa.length)
                .mapToDouble(k -> Math.pow(modelled_tHa[k] - modelled - measured_tHa[k] + measured, 2))
                .average()
                .orElseThrow();
    }
}
