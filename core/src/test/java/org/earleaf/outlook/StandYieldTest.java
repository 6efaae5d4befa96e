// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Cells of the printed table (Nafziger 1994 as tabulated by Purdue extension), between them, and beyond its edges. */
class StandYieldTest {
    private static double of(int month, int day, double plants_ac) {
        return StandYield.of(LocalDate.of(2024, month, day), plants_ac / Units.M2_PER_AC);
    }

    @Test
    void gives_the_printed_cells() {
        assertThat(of(4, 30, 30_000)).isCloseTo(1, within(1e-9));
        assertThat(of(5, 20, 30_000)).isCloseTo(.91, within(1e-9));
        assertThat(of(5, 30, 10_000)).isCloseTo(.49, within(1e-9));
        assertThat(of(6, 9, 36_000)).isCloseTo(.65, within(1e-9));
        assertThat(of(4, 10, 20_000)).isCloseTo(.85, within(1e-9));
    }

    @Test
    void lies_straight_between_them() {
        assertThat(of(5, 5, 11_000)).isCloseTo(.70, within(1e-9));
        // 25,000 lie half way: (96 + 98)/2 = 97 on 5 May, (94 + 96)/2 = 95 on 10 May.
        assertThat(of(5, 7, 25_000)).isCloseTo(.97 - .4 * .02, within(1e-9));
    }

    @Test
    void goes_on_beyond_its_edges() {
        assertThat(of(3, 20, 30_000)).isEqualTo(of(4, 10, 30_000));
        assertThat(of(5, 5, 5_000)).isCloseTo(.67 / 2, within(1e-9));
        assertThat(of(5, 5, 0)).isZero();
        assertThat(of(5, 5, 44_000)).isEqualTo(of(5, 5, 36_000));
        assertThat(of(6, 14, 30_000)).isCloseTo(.61, within(1e-9));
        assertThat(of(9, 1, 30_000)).isZero();
    }
}
