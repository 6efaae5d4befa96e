// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.Arrays;
import org.earleaf.farm.Prices;
import org.earleaf.units.Units;

/**
 * What a pass is worth against doing nothing, over equally likely draws [$ a hectare].
 *
 * @param mean_usdHa expected net gain
 * @param p10_usdHa tenth percentile
 * @param p90_usdHa ninetieth percentile
 * @param chanceItPays share of draws with a gain above zero
 * @param badCase_usdHa mean of the worst fifth
 * @param breakEvenCorn_usdBu corn price at which the expected gain is zero; infinite when it never is
 * @param cost_usdHa products and pass
 * @param meanYieldGain_kgHa dry grain, losses by tracks and injury taken off
 */
public record PassWorth(
        double mean_usdHa,
        double p10_usdHa,
        double p90_usdHa,
        double chanceItPays,
        double badCase_usdHa,
        double breakEvenCorn_usdBu,
        double cost_usdHa,
        double meanYieldGain_kgHa) {
    private static final double BAD_SHARE = .2;

    /** From the dry grain gained in each of the equally likely draws. */
    static PassWorth of(double[] gained_kgHa, double cost_usdHa, Prices prices) {
        double perKg = prices.netCorn_usdBu() * bushels(1);
        double[] gains =
                Arrays.stream(gained_kgHa).map(kg -> kg * perKg - cost_usdHa).toArray();
        Arrays.sort(gains);
        double meanYield = Arrays.stream(gained_kgHa).sum() / gained_kgHa.length;
        double needed = meanYield > 0 ? cost_usdHa / bushels(meanYield) : Double.POSITIVE_INFINITY;
        return new PassWorth(
                Arrays.stream(gains).sum() / gains.length,
                quantile(gains, .1),
                quantile(gains, .9),
                (double) Arrays.stream(gains).filter(g -> g > 0).count() / gains.length,
                worst(gains),
                needed + prices.corn_usdBu() - prices.netCorn_usdBu(),
                cost_usdHa,
                meanYield);
    }

    /** Bushels at 15.5 % moisture in kilograms of dry grain. */
    static double bushels(double dry_kg) {
        return dry_kg / Units.DRY_SHARE_OF_TRADE_CORN / (Units.LB_PER_BU_CORN * Units.KG_PER_LB);
    }

    /** Quantile of sorted values, linear between order statistics (Hyndman & Fan 1996, type 7). */
    private static double quantile(double[] sorted, double p) {
        double h = (sorted.length - 1) * p;
        int low = (int) Math.floor(h);
        int high = Math.min(low + 1, sorted.length - 1);
        return sorted[low] + (h - low) * (sorted[high] - sorted[low]);
    }

    /** Mean of the worst fifth; a value on the edge counts in part. */
    private static double worst(double[] sorted) {
        double want = BAD_SHARE * sorted.length;
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
