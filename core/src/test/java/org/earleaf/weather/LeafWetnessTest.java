// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;

class LeafWetnessTest {
    @Test
    void wet_from_ninety_percent_and_five_points_sooner_under_a_closed_canopy() {
        List<WeatherHour> hours = List.of(
                Hours.at(0).rh(84).build(),
                Hours.at(1).rh(85).build(),
                Hours.at(2).rh(90).build());
        assertThat(LeafWetness.byHumidity(hours, false))
                .containsExactly(LeafWetness.DRY, LeafWetness.DRY, LeafWetness.DEW);
        assertThat(LeafWetness.byHumidity(hours, true))
                .containsExactly(LeafWetness.DRY, LeafWetness.DEW, LeafWetness.DEW);
    }

    @Test
    void leaves_drip_in_rain_and_the_humid_hour_after_it() {
        List<WeatherHour> hours = List.of(
                Hours.at(0).rh(80).rain(3).build(),
                Hours.at(1).rh(95).build(),
                Hours.at(2).rh(95).build(),
                Hours.at(3).rh(60).build());
        assertThat(LeafWetness.byHumidity(hours, false))
                .containsExactly(LeafWetness.DRIPPING, LeafWetness.DRIPPING, LeafWetness.DEW, LeafWetness.DRY);
    }

    @Test
    void by_dew_point_a_leaf_stays_wet_until_the_air_is_clearly_drier() {
        // Depressions at 20 °C: 87 % 2.2, 89 % 1.9, 83 % 3.0, 76 % 4.3 °C.
        List<WeatherHour> hours = List.of(
                Hours.at(0).rh(87).build(),
                Hours.at(1).rh(89).build(),
                Hours.at(2).rh(83).build(),
                Hours.at(3).rh(76).build(),
                Hours.at(4).rh(83).build());
        assertThat(LeafWetness.byDewPoint(hours)).containsExactly(false, true, true, false, false);
    }

    /** FAO-56 annex 2, table 2.3: saturation is 3.075 kPa at 24.5 °C and 1.705 kPa at 15 °C. */
    @Test
    void dew_point_is_where_the_vapour_of_the_air_saturates() {
        assertThat(LeafWetness.dewPoint_C(24.5, 100 * 1.705 / 3.075)).isCloseTo(15, within(0.01));
        assertThat(LeafWetness.dewPoint_C(24.5, 100)).isCloseTo(24.5, within(1e-9));
    }
}
