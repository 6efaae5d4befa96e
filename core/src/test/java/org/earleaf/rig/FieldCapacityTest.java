// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.KMH;
import static org.earleaf.rig.Us.mph;

import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class FieldCapacityTest {
    // Source: printed forms ac/h = mph ft eff / 8.25 and ha/h = km/h m eff / 10.
    @Test
    void capacity_is_that_of_the_printed_forms() {
        double us = FieldCapacity.capacity_m2s(mph(10), 90 * Units.M_PER_FT, 0.65);
        assertThat(us * 3600 / Units.M2_PER_AC).isCloseTo(70.9, within(0.05));
        double metric = FieldCapacity.capacity_m2s(16 * KMH, 27.4, 0.65);
        assertThat(metric * 3600 / 1e4).isCloseTo(28.5, within(0.05));
    }

    // Source: arithmetic, 180 s of run, 25 s of turn, 3 % overlap.
    @Test
    void efficiency_of_a_field_from_its_length() {
        assertThat(FieldCapacity.efficiency(2640 * Units.M_PER_FT, mph(10), 25, 0.03))
                .isCloseTo(0.8517, within(1e-4));
        assertThat(FieldCapacity.turn_s(10)).isCloseTo(27.6, within(0.1));
    }
}
