// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * Published: the factors of NIST Special Publication 811, appendix B.8; US grain standards (56 lb bushel at 15.5 %).
 */
@DisplayName("Units against NIST SP 811 and the US grain standards")
class UnitsTest {
    private static final double SEVEN_FIGURES = 5e-7;

    @ParameterizedTest
    @CsvFileSource(resources = "/published/nist-sp811-b8.csv")
    void a_unit_is_worth_what_the_standard_prints(Dimension dimension, String unit, double factor) {
        assertThat(dimension.findInside(1, unit).orElseThrow() / factor).isCloseTo(1, within(SEVEN_FIGURES));
    }

    @Test
    void ten_tonnes_of_dry_grain_are_188_5_bushels_an_acre() {
        // 10 000 kg/ha / 0.845 = 11 834 kg/ha at 15.5 %; / 62.77 kg/ha in a bu/ac (56 lb x 1.12085)
        assertThat(Units.buAc(10_000)).isCloseTo(188.5, within(0.1));
        assertThat(Units.KGHA_PER_BUAC).isCloseTo(62.77, within(0.005));
    }

    @Test
    void a_hundred_kilograms_a_hectare_are_89_2_pounds_an_acre() {
        assertThat(Units.lbAc(100)).isCloseTo(89.2, within(0.05));
        assertThat(Units.lbAc(1)).isCloseTo(0.89218, within(0.000005));
        assertThat(Units.kgHa(Units.lbAc(47))).isCloseTo(47, within(1e-12));
    }

    @Test
    void fahrenheit_meets_celsius_at_the_fixed_points() {
        assertThat(Units.fahrenheit(0)).isEqualTo(32);
        assertThat(Units.fahrenheit(100)).isEqualTo(212);
        assertThat(Units.celsius(-40)).isCloseTo(-40, within(1e-12));
    }

    @Test
    void rates_an_acre_follow_from_the_exact_acre_pound_and_gallon() {
        // 231 in3 on 43 560 ft2 of 144 in2 each: depth in inches, then metres
        double depth_m = 231.0 / (43_560 * 144) * 0.0254;
        assertThat(Dimension.VOLUME_RATE.findInside(1, "gal/ac").orElseThrow())
                .isCloseTo(depth_m, within(depth_m * 1e-9));
        assertThat(Units.LHA_PER_GALAC).isCloseTo(9.353956, within(5e-7));
        assertThat(Dimension.MASS_RATE.findInside(1, "lb N/ac").orElseThrow()).isCloseTo(1.120851, within(5e-7));
    }

    @Test
    void a_mean_power_of_100_watts_is_8_64_megajoules_a_day() {
        assertThat(Dimension.RADIATION.findInside(100, "W/m2").orElseThrow()).isCloseTo(8.64, within(1e-12));
    }
}
