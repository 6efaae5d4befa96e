// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.function.DoubleUnaryOperator;

/** Prices that trials are judged at, and what follows from them. */
final class Money {
    static final double CORN_USD_BU = 4.5;
    /** Dollars of a kilogram of dry grain: bushels of 56 lb at 15.5 % water. */
    static final double GRAIN_USD_KG = CORN_USD_BU / (56 * 0.45359237 * 0.845);
    /** Dollars of a kilogram of nitrogen: $0.60 a pound, the usual ratio to corn of some 0.13. */
    static final double NITROGEN_USD_KG = 0.60 / 0.45359237;

    static final double HECTARES_AN_ACRE = 0.40468564224;
    /** Rates looked at [kg/ha], one apart. */
    static final int MOST_KGHA = 280;

    private Money() {}

    static double return_usdAc(DoubleUnaryOperator grain, double rate_kgHa) {
        return HECTARES_AN_ACRE * (GRAIN_USD_KG * grain.applyAsDouble(rate_kgHa) - NITROGEN_USD_KG * rate_kgHa);
    }

    /** The whole rate that pays best [kg/ha]. */
    static int best_kgHa(DoubleUnaryOperator grain) {
        int best = 0;
        for (int rate = 1; rate <= MOST_KGHA; rate++) {
            if (return_usdAc(grain, rate) > return_usdAc(grain, best)) {
                best = rate;
            }
        }
        return best;
    }
}
