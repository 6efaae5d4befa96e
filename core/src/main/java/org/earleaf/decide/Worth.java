// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;
import org.earleaf.farm.Prices;
import org.earleaf.protection.PassWorth;
import org.earleaf.units.Units;

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
    private static final double BAD_SHARE = .2;

    /** Without the regret. */
    public Worth(
            double mean_usdHa,
            double p10_usdHa,
            double p90_usdHa,
            double chanceItPays,
            double badCase_usdHa,
            double breakEvenCorn_usdBu,
            double cost_usdHa,
            double meanYieldGain_kgHa) {
        this(
                mean_usdHa,
                p10_usdHa,
                p90_usdHa,
                chanceItPays,
                badCase_usdHa,
                breakEvenCorn_usdBu,
                cost_usdHa,
                meanYieldGain_kgHa,
                Double.NaN);
    }

    /** The worth of a pass against disease or insects, which is measured alike. */
    static Worth of(PassWorth w) {
        return new Worth(
                w.mean_usdHa(),
                w.p10_usdHa(),
                w.p90_usdHa(),
                w.chanceItPays(),
                w.badCase_usdHa(),
                w.breakEvenCorn_usdBu(),
                w.cost_usdHa(),
                w.meanYieldGain_kgHa());
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
        double[] gains = new double[gained_kgHa.length];
        double perKg = usdKg(prices);
        Arrays.setAll(gains, m -> gained_kgHa[m] * perKg - costs_usdHa[m]);
        double regret = known.length == 0 ? Double.NaN : Choice.regret_usdHa(gains, known);
        Arrays.sort(gains);
        double meanYield = mean(gained_kgHa);
        double cost_usdHa = mean(costs_usdHa);
        double needed = meanYield > 0 ? cost_usdHa / bushels(meanYield) : Double.POSITIVE_INFINITY;
        long paying = Arrays.stream(gains).filter(g -> g > 0).count();
        return new Worth(
                mean(gains),
                Spread.quantile(gains, .1),
                Spread.quantile(gains, .9),
                (double) paying / gains.length,
                worst(gains, BAD_SHARE),
                needed + prices.corn_usdBu() - prices.netCorn_usdBu(),
                cost_usdHa,
                meanYield,
                regret);
    }

    /** Money gained in each future [$/ha]. */
    static double[] gains_usdHa(double[] gained_kgHa, double cost_usdHa, Prices prices) {
        double perKg = usdKg(prices);
        return Arrays.stream(gained_kgHa).map(kg -> kg * perKg - cost_usdHa).toArray();
    }

    /** What a kilogram of dry grain brings home. */
    private static double usdKg(Prices prices) {
        return prices.netCorn_usdBu() * bushels(1);
    }

    /** Yield with less yield without, by future. */
    static double[] gained(double[] with, double[] without) {
        double[] gained = new double[with.length];
        Arrays.setAll(gained, m -> with[m] - without[m]);
        return gained;
    }

    /** Expected gain at another price of corn, everything else as it is; NaN when no yield is gained. */
    public double meanAt_usdHa(double corn_usdBu) {
        return meanYieldGain_kgHa > 0 ? bushels(meanYieldGain_kgHa) * (corn_usdBu - breakEvenCorn_usdBu) : Double.NaN;
    }

    /** What counts when options are compared: the mean, and the worst fifth by its weight [$/ha]. */
    static double objective(double[] gains, double badCaseWeight) {
        if (badCaseWeight == 0) {
            return mean(gains);
        }
        double[] sorted = gains.clone();
        Arrays.sort(sorted);
        return objective(mean(gains), worst(sorted, BAD_SHARE), badCaseWeight);
    }

    private static double objective(double mean, double badCase, double badCaseWeight) {
        return (1 - badCaseWeight) * mean + badCaseWeight * badCase;
    }

    /** The same of a worth. */
    double objective_usdHa(double badCaseWeight) {
        return objective(mean_usdHa, badCase_usdHa, badCaseWeight);
    }

    /** Bushels at trade moisture in kilograms of dry grain. */
    static double bushels(double dry_kg) {
        return dry_kg / Units.DRY_SHARE_OF_TRADE_CORN / (Units.LB_PER_BU_CORN * Units.KG_PER_LB);
    }

    static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum / values.length;
    }

    /** Mean of the worst share of equally likely values, sorted; a value on the edge counts in part. */
    static double worst(double[] sorted, double share) {
        double want = share * sorted.length;
        double sum = 0;
        double taken = 0;
        for (int k = 0; taken < want; k++) {
            double part = Math.min(1, want - taken);
            sum += part * sorted[k];
            taken += part;
        }
        return sum / want;
    }
}
