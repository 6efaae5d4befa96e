// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WetBulbTest {
    /**
     * Published: 20 °C and 50 % give 13.7 °C, the worked example of Stull 2011 (J. Appl. Meteorol. Climatol. 50:2267). The
     * other rows are the printed equation worked out once by hand calculator; they guard against a mistyped coefficient.
     */
    @ParameterizedTest
    @CsvSource({
        "20, 50, 13.70, 6.30",
        "30, 50, 22.30, 7.70",
        "25, 60, 19.50, 5.50",
        "30, 40, 20.45, 9.55",
        "35, 30, 22.14, 12.86",
        "15, 90, 13.84, 1.16"
    })
    void wet_bulb_and_delta_t_of_the_paper(double air, double rh, double wet, double deltaT) {
        assertThat(WetBulb.of_C(air, rh)).isCloseTo(wet, within(0.01));
        assertThat(WetBulb.deltaT_C(air, rh)).isCloseTo(deltaT, within(0.01));
    }

    /**
     * Cross-check: two independent ways; the paper states -1 to +0.65 °C and a mean below 0.3 at 101.325 kPa. The
     * constant 0.000665 of FAO-56 holds for the temperatures of a growing season, so the test ends at 38 °C.
     */
    @Test
    void explicit_and_psychrometric_equation_agree_within_the_error_of_the_paper() {
        SplittableRandom random = new SplittableRandom(5);
        double sum = 0;
        int n = 2000;
        for (int k = 0; k < n; k++) {
            double air = random.nextDouble(5, 38);
            double rh = random.nextDouble(20, 99);
            double error = WetBulb.explicit_C(air, rh) - WetBulb.psychrometric_C(air, rh, 101.325);
            assertThat(error).as("%.1f °C, %.0f %%", air, rh).isBetween(-1.0, 0.66);
            sum += Math.abs(error);
        }
        assertThat(sum / n).isLessThan(0.3);
    }

    @Test
    void psychrometric_equation_takes_over_outside_the_range() {
        assertThat(WetBulb.of_C(25, 3)).isEqualTo(WetBulb.psychrometric_C(25, 3, 101.325));
        assertThat(WetBulb.of_C(-5, 10)).isEqualTo(WetBulb.psychrometric_C(-5, 10, 101.325));
        assertThat(WetBulb.of_C(20, 100)).isCloseTo(20, within(1e-3));
    }

    @Test
    void delta_t_is_never_negative_and_grows_as_air_dries() {
        SplittableRandom random = new SplittableRandom(6);
        for (int k = 0; k < 2000; k++) {
            double air = random.nextDouble(0, 45);
            double rh = random.nextDouble(5, 98);
            assertThat(WetBulb.deltaT_C(air, rh)).isGreaterThanOrEqualTo(0);
            // The model's own error may hide a step of one point, never one of thirty.
            assertThat(WetBulb.deltaT_C(air, Math.max(5, rh - 30)))
                    .isGreaterThanOrEqualTo(WetBulb.deltaT_C(air, rh) - 0.7);
        }
    }

    @Test
    void a_value_not_known_stays_not_known() {
        assertThat(WetBulb.deltaT_C(20, Double.NaN)).isNaN();
    }

    /** Amsden's rule of 1962, from memory: 100 µm 15.6 s, 200 µm 62.5 s at Delta T 8 °C. */
    @Test
    void twice_the_diameter_lives_four_times_as_long() {
        assertThat(WetBulb.dropletLife_s(100, 8)).isCloseTo(15.6, within(0.05));
        assertThat(WetBulb.dropletLife_s(200, 8)).isCloseTo(62.5, within(0.05));
    }
}
