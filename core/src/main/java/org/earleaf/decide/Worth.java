// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;
import org.earleaf.farm.Prices;
import org.earleaf.protection.PassWorth;
import org.earleaf.units.Ranks;

/**
 * What an option is worth against doing nothing over the same futures [$ a hectare].
 *
 * @param mean_usdHa expected gain
 * @param p10_usdHa tenth percentile
 * @param p90_usdHa ninetieth percentile
 * @param chanceItPays share of futures with a gain above zero
 * @param badCase_usdHa mean of the worst fifth of futures
 * @param breakEvenCorn_usdBu corn price at which the expected gain is zero; infinite when it never is
 * @param cost_usdHa product and pass
 * @param meanYieldGain_kgHa dry grain
 * @param regret_usdHa the most that a better choice of that day would have brought more in some future; NaN: not known
 */
public record Worth(
        double mean_usdHa,
        double p10_usdHa,
        double p90_usdHa,
        double chanceItPays,
        double badCase_usdHa,
        double breakEvenCorn_usdBu,
        double cost_usdHa,
        double meanYieldGain_kgHa,
        double regret_usdHa) {
    /** The worth of a pass against disease or insects, which is measured alike. */
    static Worth of(PassWorth w) {
        return of(w, Double.NaN);
    }

    private static Worth of(PassWorth w, double regret_usdHa) {
        return new Worth(
                w.mean_usdHa(),
                w.p10_usdHa(),
                w.p90_usdHa(),
                w.chanceItPays(),
                w.badCase_usdHa(),
                w.breakEvenCorn_usdBu(),
                w.cost_usdHa(),
                w.meanYieldGain_kgHa(),
                regret_usdHa);
    }

    /** From the yield gained in each future at one cost. */
    static Worth of(double[] gained_kgHa, double cost_usdHa, Prices prices) {
        double[] costs = new double[gained_kgHa.length];
        Arrays.fill(costs, cost_usdHa);
        return of(gained_kgHa, costs, prices);
    }

    /** From the yield gained and the money spent in each future. */
    static Worth of(double[] gained_kgHa, double[] costs_usdHa, Prices prices) {
        return of(gained_kgHa, costs_usdHa, prices, new double[0]);
    }

    /** @param known the best gain of each future for somebody who knows it; empty: the regret is not known */
    static Worth of(double[] gained_kgHa, double[] costs_usdHa, Prices prices, double[] known) {
        double[] gains = PassWorth.gains_usdHa(gained_kgHa, 0, prices);
        Arrays.setAll(gains, m -> gains[m] - costs_usdHa[m]);
        PassWorth worth = PassWorth.of(gained_kgHa, gains, Ranks.mean(costs_usdHa), prices);
        return of(worth, known.length == 0 ? Double.NaN : Choice.regret_usdHa(gains, known));
    }

    /** Yield with less yield without, by future. */
    static double[] gained(double[] with, double[] without) {
        double[] gained = new double[with.length];
        Arrays.setAll(gained, m -> with[m] - without[m]);
        return gained;
    }

    /** Expected gain at another price of corn, everything else as it is; NaN when no yield is gained. */
    public double meanAt_usdHa(double corn_usdBu) {
        return meanYieldGain_kgHa > 0
                ? PassWorth.bushels(meanYieldGain_kgHa) * (corn_usdBu - breakEvenCorn_usdBu)
                : Double.NaN;
    }

    /** What counts when options are compared: the mean, and the worst fifth by its weight [$/ha]. */
    static double objective(double[] gains, double badCaseWeight) {
        if (badCaseWeight == 0) {
            return Ranks.mean(gains);
        }
        return objective(Ranks.mean(gains), Ranks.of(gains).worst(PassWorth.BAD_SHARE), badCaseWeight);
    }

    private static double objective(double mean, double badCase, double badCaseWeight) {
        return (1 - badCaseWeight) * mean + badCaseWeight * badCase;
    }

    /** The same of a worth. */
    double objective_usdHa(double badCaseWeight) {
        return objective(mean_usdHa, badCase_usdHa, badCaseWeight);
    }
}
