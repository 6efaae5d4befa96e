// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Residue: demand of decaying carbon (microbial C:N 8.5 and efficiency .40 from memory). */
class ResidueTest {

    @Test
    void wide_residue_takes_and_narrow_residue_gives() {
        assertThat(Residue.need(10, 1 / 60.0, .40, 8.5)).isCloseTo(.304, within(.001));
        assertThat(Residue.need(10, 1 / 25.0, .40, 8.5)).isCloseTo(.0706, within(.0002));
        assertThat(Residue.need(10, 1 / 15.0, .40, 8.5)).isCloseTo(-.196, within(.001));
        assertThat(Residue.need(10, .40 / 8.5, .40, 8.5)).isCloseTo(0, within(1e-12));
    }
}
