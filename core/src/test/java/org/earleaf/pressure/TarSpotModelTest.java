// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TarSpotModelTest {
    /** Arithmetic only: the coefficients are recalled, and this does not prove them. */
    @ParameterizedTest
    @CsvSource({"20, 95, 6, 0.6114", "22, 92, 5, 0.2720", "24, 95, 7, 0.0364"})
    void arithmetic_of_the_recalled_formula(double t30, double rhMax30, double h90, double p) {
        assertThat(TarSpotModel.arithmetic(t30, rhMax30, h90)).isCloseTo(p, within(0.0005));
    }

    @Test
    void is_off_until_the_coefficients_are_proved() {
        assertThat(TarSpotModel.PROVED).isFalse();
        assertThat(TarSpotModel.find(20, 95, 6)).isEmpty();
        assertThat(TarSpotModel.WHY_OFF.code()).isEqualTo("tar-spot.off");
    }
}
