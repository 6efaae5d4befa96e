// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.rig.Us.in;

import org.junit.jupiter.api.Test;

class FanHeightTest {
    // Source: geometry, heights for 30 and 100 % overlap in inches as extension tables print them.
    @Test
    void heights_of_the_usual_fans_and_spacings() {
        double[][] rows = {
            {65, 15, 15.3, 23.5},
            {65, 20, 20.4, 31.4},
            {80, 20, 15.5, 23.8},
            {80, 30, 23.2, 35.8},
            {90, 30, 19.5, 30.0},
            {110, 15, 6.8, 10.5},
            {110, 20, 9.1, 14.0},
            {120, 30, 11.3, 17.3}
        };
        for (double[] row : rows) {
            double spacing = in(row[1]);
            assertThat(FanHeight.height_m(0.3, row[0], spacing) / in(1)).isCloseTo(row[2], within(0.051));
            assertThat(FanHeight.height_m(1, row[0], spacing) / in(1)).isCloseTo(row[3], within(0.051));
        }
        assertThat(FanHeight.height_m(1, 110, in(20)) / in(1)).isCloseTo(14.00, within(0.01));
    }

    @Test
    void the_window_ends_at_the_label_and_says_when_sway_does_not_fit() {
        FanHeight.Window free = FanHeight.window(110, in(20), in(60));
        assertThat(free.low_m()).isCloseTo(in(9.1), within(in(0.05)));
        assertThat(free.high_m()).isCloseTo(in(26), within(in(0.05)));
        assertThat(free.holdsSway()).isTrue();
        assertThat(FanHeight.window(110, in(20), in(15)).holdsSway()).isFalse();
    }
}
