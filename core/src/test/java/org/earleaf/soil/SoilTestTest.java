// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Published: extension rule "lb/ac of nitrate in a foot of soil = ppm x 3.6 at 1.33 g/cm3, or x 4 in round numbers". */
class SoilTestTest {
    private static final double FOOT_MM = 304.8;

    @Test
    void ten_ppm_in_a_foot_of_soil_at_1_30_are_35_lb_ac() {
        double kgHa = SoilTest.kgHa(10, 1.30, FOOT_MM);
        assertThat(kgHa).isCloseTo(39.6, within(0.05));
        assertThat(Units.lbAc(kgHa)).isCloseTo(35.4, within(0.05));
    }

    @Test
    void one_ppm_in_a_foot_at_1_33_is_the_extension_factor_of_3_6() {
        assertThat(Units.lbAc(SoilTest.kgHa(1, 1.33, FOOT_MM))).isCloseTo(3.62, within(0.005));
    }

    @Test
    void concentration_comes_back() {
        assertThat(SoilTest.mgKg(SoilTest.kgHa(17.3, 1.41, 152.4), 1.41, 152.4)).isCloseTo(17.3, within(1e-12));
    }
}
