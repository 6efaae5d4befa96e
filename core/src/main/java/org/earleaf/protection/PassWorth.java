// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import java.util.Arrays;
import org.earleaf.farm.Prices;
import org.earleaf.units.Ranks;
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
    /** The bad case is the mean of the worst fifth. */
    public static final double BAD_SHARE = .2;

    /** From the dry grain gained in each of the equally likely draws. */
    static PassWorth of(double[] gained_kgHa, double cost_usdHa, Prices prices) {
        return of(gained_kgHa, gains_usdHa(gained_kgHa, cost_usdHa, prices), cost_usdHa, prices);
    }

    /** From the dry grain gained and the money gained with it, where costs differ, and the cost on average. */
    public static PassWorth of(double[] gained_kgHa, double[] gains_usdHa, double cost_usdHa, Prices prices) {
        Ranks ranks = Ranks.of(gains_usdHa);
        double meanYield = Arrays.stream(gained_kgHa).sum() / gained_kgHa.length;
        double needed = meanYield > 0 ? cost_usdHa / bushels(meanYield) : Double.POSITIVE_INFINITY;
        return new PassWorth(
                Arrays.stream(gains_usdHa).sum() / gains_usdHa.length,
                ranks.quantile(.1),
                ranks.quantile(.9),
                (double) Arrays.stream(gains_usdHa).filter(g -> g > 0).count() / gains_usdHa.length,
                ranks.worst(BAD_SHARE),
                needed + prices.corn_usdBu() - prices.netCorn_usdBu(),
                cost_usdHa,
                meanYield);
    }

    /** Money gained in each draw at one cost [$/ha]. */
    public static double[] gains_usdHa(double[] gained_kgHa, double cost_usdHa, Prices prices) {
        double perKg = usdKg(prices);
        return Arrays.stream(gained_kgHa).map(kg -> kg * perKg - cost_usdHa).toArray();
    }

    /** What a kilogram of dry grain brings home. */
    public static double usdKg(Prices prices) {
        return prices.netCorn_usdBu() * bushels(1);
    }

    /** Bushels at 15.5 % moisture in kilograms of dry grain. */
    public static double bushels(double dry_kg) {
        return dry_kg / Units.DRY_SHARE_OF_TRADE_CORN / (Units.LB_PER_BU_CORN * Units.KG_PER_LB);
    }
}
