// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked by hand from the recalled pair, which it does not prove; the second form of the same paper is 0.95 D^0.91. */
class SpreadFactorTest {
    private static double area_um2(double stain_um) {
        return Math.PI / 4 * stain_um * stain_um;
    }

    @ParameterizedTest
    @CsvSource({
        "100, 62.7, 1.594",
        "200, 117.9, 1.696",
        "300, 170.5, 1.759",
        "400, 221.5, 1.806",
        "500, 271.4, 1.842",
        "600, 320.4, 1.873",
        "800, 416.3, 1.922"
    })
    void drop_of_a_stain(double stain_um, double drop_um, double factor) {
        double d = SpreadFactor.recalled().drop_um(area_um2(stain_um));
        assertThat(d).isCloseTo(drop_um, within(.005 * drop_um));
        assertThat(stain_um / d).isCloseTo(factor, within(.005 * factor));
        assertThat(d).isCloseTo(.95 * Math.pow(stain_um, .91), within(.005 * drop_um));
    }

    @Test
    void forty_stains_of_four_hundred_micrometres_on_a_square_centimetre() {
        double drop_ul = SpreadFactor.recalled().drop_um3(area_um2(400)) / 1e9;
        assertThat(drop_ul).isCloseTo(.00570, within(.000057));
        // 1 uL/cm2 is 100 L/ha.
        double lHa = 40 * drop_ul * 100;
        assertThat(lHa).isCloseTo(22.8, within(.23));
        assertThat(lHa / Units.LHA_PER_GALAC).isCloseTo(2.44, within(.025));
    }

    @Test
    void a_dropper_fits_the_pair_and_is_remembered() {
        SpreadFactor own = SpreadFactor.recalled().fitted(200, area_um2(420));
        assertThat(own.drop_um(area_um2(420))).isCloseTo(200, within(1e-9));
        assertThat(own.measured()).isTrue();
        assertThat(SpreadFactor.recalled().measured()).isFalse();
    }

    // Source: volume of spheres by hand.
    @ParameterizedTest
    @CsvSource({"140, 300, 99.0", "140, 250, 171", "187, 350, 83.3"})
    void drops_that_could_fall_on_flat_ground(double lHa, double drop_um, double n_cm2) {
        assertThat(StainOverlap.ceiling_m2(lHa * Units.M3M2_PER_LHA, drop_um * 1e-6) / 1e4)
                .isCloseTo(n_cm2, within(.005 * n_cm2));
    }
}
