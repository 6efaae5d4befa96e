// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class RateUnitTest {
    private static final NitrogenProduct UAN_32 =
            NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
    private static final NitrogenProduct UREA =
            NitrogenProduct.findBuiltIn("urea").orElseThrow();

    private static double lbAc(RateUnit unit, double rate, NitrogenProduct product) {
        return Units.lbAc(unit.nitrogen_kgHa(rate, product.name(), product));
    }

    /** Extension tables: 40 lb N/ac as UAN 32 is 11.3 gal/ac (11.06 lb/gal, 32 % N). */
    @Test
    void gallons_of_uan_carry_the_nitrogen_that_extension_tables_say() {
        assertThat(lbAc(RateUnit.GAL_AC, 11.3, UAN_32)).isCloseTo(40, within(0.05));
        assertThat(lbAc(RateUnit.QT_AC, 4 * 11.3, UAN_32)).isCloseTo(40, within(0.05));
        assertThat(lbAc(RateUnit.PT_AC, 8 * 11.3, UAN_32)).isCloseTo(40, within(0.05));
        assertThat(lbAc(RateUnit.FLOZ_AC, 128 * 11.3, UAN_32)).isCloseTo(40, within(0.05));
        assertThat(lbAc(RateUnit.L_HA, 11.3 * 9.353956, UAN_32)).isCloseTo(40, within(0.05));
    }

    @Test
    void a_hundred_pounds_of_urea_carry_46_of_nitrogen() {
        assertThat(lbAc(RateUnit.LB_AC, 100, UREA)).isCloseTo(46, within(1e-9));
        assertThat(lbAc(RateUnit.OZ_AC, 1600, UREA)).isCloseTo(46, within(1e-9));
        assertThat(RateUnit.KG_HA.nitrogen_kgHa(100, "urea", UREA)).isCloseTo(46, within(1e-9));
    }

    @Test
    void a_rate_of_nitrogen_is_the_nitrogen() {
        assertThat(lbAc(RateUnit.LB_N_AC, 40, UREA)).isCloseTo(40, within(1e-9));
        assertThat(RateUnit.KG_N_HA.nitrogen_kgHa(40, "urea", UREA)).isEqualTo(40);
    }

    @Test
    void what_carries_none_puts_none_on() {
        assertThat(RateUnit.FLOZ_AC.nitrogen_kgHa(10, "Leaf Guard", null)).isZero();
        assertThat(RateUnit.PERCENT_VV.nitrogen_kgHa(0.25, "wetter", null)).isZero();
    }

    @Test
    void a_unit_that_does_not_fit_the_product_is_refused() {
        assertThatThrownBy(() -> RateUnit.GAL_AC.nitrogen_kgHa(10, "urea", UREA))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("rate.volume-of-dry");
        assertThatThrownBy(() -> RateUnit.OZ_AC.nitrogen_kgHa(10, "UAN 32", UAN_32))
                .hasMessageContaining("rate.ounces-of-liquid");
        assertThatThrownBy(() -> RateUnit.PERCENT_VV.nitrogen_kgHa(10, "UAN 32", UAN_32))
                .hasMessageContaining("rate.share-of-tank");
        assertThatThrownBy(() -> RateUnit.LB_N_AC.nitrogen_kgHa(10, "Leaf Guard", null))
                .hasMessageContaining("rate.no-nitrogen");
    }

    @Test
    void words_are_found_in_any_case_and_spacing() {
        assertThat(RateUnit.findByWord("LB N / ac")).contains(RateUnit.LB_N_AC);
        assertThat(RateUnit.findByWord("floz/ac")).contains(RateUnit.FLOZ_AC);
        assertThat(RateUnit.findByWord("gallons")).isEmpty();
        for (RateUnit unit : RateUnit.values()) {
            assertThat(RateUnit.findByWord(unit.word())).contains(unit);
        }
    }
}
