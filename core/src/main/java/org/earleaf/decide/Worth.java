// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

/**
 * What an option is worth against doing nothing over the same futures [$ a hectare].
 *
 * @param mean_usdHa expected gain
 * @param p10_usdHa tenth percentile
 * @param p90_usdHa ninetieth percentile
 * @param chanceItPays share of futures with a gain above zero
 * @param badCase_usdHa mean of the worst fifth of futures
 * @param breakEvenCorn_usdBu corn price at which the expected gain is zero
 * @param cost_usdHa product and pass
 * @param meanYieldGain_kgHa dry grain
 */
public record Worth(
        double mean_usdHa,
        double p10_usdHa,
        double p90_usdHa,
        double chanceItPays,
        double badCase_usdHa,
        double breakEvenCorn_usdBu,
        double cost_usdHa,
        double meanYieldGain_kgHa) {}
