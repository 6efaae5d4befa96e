// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Nitrogen solutions at 60 °F: densities and composition of extension fertilizer tables. */
class NitrogenProductTest {
    private static NitrogenProduct product(String name) {
        return NitrogenProduct.findBuiltIn(name).orElseThrow();
    }

    private static double gallonsAnAcre(String name, double lbAc) {
        return product(name).litresHa(Units.kgHa(lbAc)) / Units.LHA_PER_GALAC;
    }

    @Test
    void forty_pounds_as_uan_32_are_11_3_gallons_and_a_hundred_as_uan_28_are_33_4() {
        assertThat(gallonsAnAcre("UAN 32", 40)).isCloseTo(11.3, within(.05));
        assertThat(gallonsAnAcre("UAN 28", 100)).isCloseTo(33.4, within(.1));
    }

    /** 40 % ammonium nitrate at 35 % N and 30 % urea at 46.6 % N make 28.0 % N, half of it urea. */
    @Test
    void uan_28_holds_what_its_salts_bring() {
        double fromNitrate = .40 * .35;
        double fromUrea = .30 * .466;
        assertThat(product("UAN 28").nitrogen_share()).isCloseTo(fromNitrate + fromUrea, within(.0005));
        assertThat(product("UAN 28").ureaShare()).isCloseTo(fromUrea / (fromNitrate + fromUrea), within(.005));
    }

    @Test
    void the_forms_of_every_product_add_up() {
        for (NitrogenProduct p : NitrogenProduct.builtIn()) {
            assertThat(p.ureaShare() + p.ammoniumShare() + p.nitrateShare())
                    .as(p.name())
                    .isCloseTo(1, within(1e-12));
        }
    }
}
