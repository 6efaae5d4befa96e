// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Prices;
import org.earleaf.units.Units;

/**
 * Prices as a person enters them: corn_price, harvest_cost, n_price, and of the fertilizers that are built in
 * {@link #part}, money for a kilogram of product; uan_price stands for every strength by its nitrogen.
 */
public final class PriceEntry {
    public static final String UAN = "uan_price";

    /** Drying, hauling and storage; common practice, no source. */
    private static final double USUAL_HARVEST_COST_USDBU = 0.25;
    /** Price of nitrogen where none is given; common practice, no source. */
    private static final double USUAL_NITROGEN_USDKG = 0.60 / Units.KG_PER_LB;

    private final Parts parts;

    private PriceEntry(Parts parts) {
        this.parts = parts;
    }

    /** The prices; wrong where the parts are no longer good. */
    public static Prices of(Parts parts) {
        return new PriceEntry(parts).prices();
    }

    /** The part that holds the price of a product. */
    public static String part(NitrogenProduct product) {
        return product.name().toLowerCase(Locale.ROOT).replace(' ', '_') + "_price";
    }

    private Prices prices() {
        double corn = parts.needed("corn_price", Ranges.CORN_PRICE);
        double harvest = parts.number("harvest_cost", Ranges.HARVEST_COST, USUAL_HARVEST_COST_USDBU);
        Map<String, Double> products = products();
        Double uan = products.get("UAN 32");
        double own = parts.number("n_price", Ranges.NITROGEN_PRICE);
        if (Double.isNaN(own)) {
            own = uan != null ? uan : parts.number("n_price", Ranges.NITROGEN_PRICE, USUAL_NITROGEN_USDKG);
        }
        return new Prices(corn, harvest, own, products);
    }

    private Map<String, Double> products() {
        Map<String, Double> prices = new HashMap<>();
        NitrogenProduct uan32 = NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
        double uan = parts.number(UAN, Ranges.FERTILIZER_PRICE);
        for (NitrogenProduct product : NitrogenProduct.builtIn()) {
            double own = parts.number(part(product), Ranges.FERTILIZER_PRICE);
            if (!Double.isNaN(own)) {
                prices.put(product.name(), own / product.nitrogen_share());
            } else if (!Double.isNaN(uan) && product.name().startsWith("UAN")) {
                prices.put(product.name(), uan / uan32.nitrogen_share());
            }
        }
        return prices;
    }
}
