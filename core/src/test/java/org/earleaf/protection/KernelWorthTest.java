// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Units;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Worked examples of the yield-component method as extension services teach it. */
class KernelWorthTest {
    @ParameterizedTest
    @CsvSource({
        "18, 1, 32000, 90000, 6.400",
        "16, 1, 32000, 90000, 5.689",
        "18, 1, 32000, 80000, 7.200",
        "16, 36, 35000, 90000, 224.0",
        "18, 32, 28000, 90000, 179.2"
    })
    void kernels_to_bushels(double rows, double perRow, double earsPerAcre, double perBushel, double expected) {
        double grain =
                KernelWorth.grain_kgHa(rows, perRow, earsPerAcre / Units.M2_PER_AC, KernelWorth.kernel_kg(perBushel));
        assertThat(grain / Units.KGHA_PER_BUAC).isCloseTo(expected, within(0.0005 * expected));
    }

    /** Row lengths printed in extension tables: 17 ft 5 in, 26 ft 2 in, 34 ft 10 in. */
    @ParameterizedTest
    @CsvSource({"30, 17.424", "20, 26.136", "15, 34.848"})
    void row_length_of_a_thousandth_of_an_acre(double spacing_in, double length_ft) {
        assertThat(KernelWorth.thousandthAcre_m(spacing_in * Units.M_PER_IN) / Units.M_PER_FT)
                .isCloseTo(length_ft, within(0.001));
    }
}
