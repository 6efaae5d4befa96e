// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Map;

/**
 * Prices of the season.
 *
 * @param corn_usdBu a bushel at 15.5 % moisture
 * @param harvestCost_usdBu costs that grow with each bushel (drying, hauling, storage)
 * @param nitrogen_usdKg a kilogram of nitrogen when the product has no price of its own
 * @param nitrogenOf_usdKg by product name, where known
 */
public record Prices(
        double corn_usdBu, double harvestCost_usdBu, double nitrogen_usdKg, Map<String, Double> nitrogenOf_usdKg) {
    public Prices {
        nitrogenOf_usdKg = Map.copyOf(nitrogenOf_usdKg);
    }

    /** What one more bushel brings home. */
    public double netCorn_usdBu() {
        return corn_usdBu - harvestCost_usdBu;
    }

    public double nitrogen_usdKg(String product) {
        return nitrogenOf_usdKg.getOrDefault(product, nitrogen_usdKg);
    }
}
