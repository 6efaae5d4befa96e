// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class ProductTest {
    private static Product product(double density_kgL, double price, String unit) {
        return new Product("Demo", "SC", density_kgL, price, unit, null, "", "");
    }

    private static double usdAc(Product p, double rate, RateUnit unit, double carrier_galAc) {
        return p.cost_usdHa(rate, unit, carrier_galAc * Units.LHA_PER_GALAC) * Units.HA_PER_AC;
    }

    /** By hand: a gallon is 128 fl oz, a pound 16 oz; 0.25 % of 15 gal is .0375 gal. */
    @Test
    void a_rate_costs_its_share_of_the_price() {
        assertThat(usdAc(product(1.09, 245, "usd/gal"), 10, RateUnit.FLOZ_AC, 15))
                .isCloseTo(10 / 128.0 * 245, within(1e-6));
        assertThat(usdAc(product(Double.NaN, 3.10, "usd/oz"), 1.5, RateUnit.OZ_AC, 15))
                .isCloseTo(4.65, within(1e-6));
        assertThat(usdAc(product(Double.NaN, 26, "usd/gal"), .25, RateUnit.PERCENT_VV, 15))
                .isCloseTo(.0375 * 26, within(1e-6));
        // 1 gal at 10 lb/gal is 10 lb; 2 lb of it are a fifth of a gallon.
        double tenLb_kgL = 10 * Units.KG_PER_LB / Units.L_PER_GAL;
        assertThat(usdAc(product(tenLb_kgL, 50, "usd/gal"), 2, RateUnit.LB_AC, 15))
                .isCloseTo(10, within(1e-6));
        assertThat(usdAc(product(tenLb_kgL, 5, "usd/lb"), .2, RateUnit.GAL_AC, 15))
                .isCloseTo(10, within(1e-6));
    }

    @Test
    void what_cannot_be_told_is_not_a_number() {
        assertThat(product(Double.NaN, Double.NaN, "").cost_usdHa(1, RateUnit.L_HA, 100))
                .isNaN();
        assertThat(product(Double.NaN, 5, "usd/lb").cost_usdHa(1, RateUnit.L_HA, 100))
                .isNaN();
        assertThat(product(1, 26, "usd/gal").cost_usdHa(.25, RateUnit.PERCENT_VV, Double.NaN))
                .isNaN();
        assertThat(product(1, 5, "usd/lb N").cost_usdHa(1, RateUnit.LB_N_AC, 100))
                .isNaN();
    }
}
