// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Worked examples of the late-spring nitrate test, Iowa State extension. */
class SoilTestRuleTest {
    @Test
    void ten_ppm_ask_for_120_pounds_and_for_88_after_a_wet_spring() {
        double usual = SoilTestRule.critical_mgKg(1.0, false);
        double wet = SoilTestRule.critical_mgKg(1.3, false);
        assertThat(Units.lbAc(SoilTestRule.rate_kgHa(10, usual))).isCloseTo(120, within(1e-9));
        assertThat(Units.lbAc(SoilTestRule.rate_kgHa(10, wet))).isCloseTo(88, within(1e-9));
    }

    @Test
    void at_and_above_the_critical_value_nothing_is_needed() {
        assertThat(SoilTestRule.rate_kgHa(25, 25)).isEqualTo(0);
        assertThat(SoilTestRule.rate_kgHa(40, 25)).isEqualTo(0);
    }

    @Test
    void a_wet_spring_counts_from_a_fifth_over_the_usual_rain_and_manure_lowers_it_further() {
        assertThat(SoilTestRule.critical_mgKg(1.20, true)).isEqualTo(25);
        assertThat(SoilTestRule.critical_mgKg(1.21, true)).isEqualTo(15);
        assertThat(SoilTestRule.critical_mgKg(1.21, false)).isEqualTo(21);
    }
}
