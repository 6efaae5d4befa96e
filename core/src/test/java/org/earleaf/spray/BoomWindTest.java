// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class BoomWindTest {
    /** (2.5/10)^0.143 = 0.8202, so 10 mph at 10 m are 8.20 mph at 2.5 m. */
    @Test
    void ten_mph_at_ten_metres_are_eight_at_the_boom() {
        assertThat(BoomWind.fromStation_ms(10, 2.5)).isCloseTo(8.20, within(0.005));
        assertThat(BoomWind.fromStation_ms(10, 10)).isEqualTo(10);
    }

    @Test
    void wind_over_the_crop_falls_towards_it_and_turns_back_to_itself() {
        double low = BoomWind.overCrop_ms(4, 10, 3.2, 2.5);
        assertThat(low).isBetween(0.0, 4.0);
        assertThat(BoomWind.overCrop_ms(low, 3.2, 10, 2.5)).isCloseTo(4, within(1e-12));
    }

    @Test
    void nothing_is_said_about_wind_inside_the_canopy() {
        assertThat(BoomWind.overCrop_ms(4, 10, 1.5, 2.5)).isNaN();
    }
}
