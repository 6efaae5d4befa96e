// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.earleaf.weather.Hours;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;

/** Limits of common practice: chances that add up to less than 0.3, no hour above 0.05 in, washed from 0.1 in. */
class RainfastTest {
    @Test
    void chances_of_the_hours_add_up() {
        WeatherHour tenth = Hours.at(10).chance(0.1).build();
        assertThat(Rainfast.staysOn(List.of(tenth, tenth))).isTrue();
        assertThat(Rainfast.staysOn(List.of(tenth, tenth, tenth))).isFalse();
    }

    @Test
    void one_hour_of_more_than_a_twentieth_of_an_inch_is_too_much() {
        assertThat(Rainfast.staysOn(List.of(Hours.at(10).rain(1.27).chance(0.1).build())))
                .isTrue();
        assertThat(Rainfast.staysOn(List.of(Hours.at(10).rain(1.28).chance(0.1).build())))
                .isFalse();
    }

    @Test
    void a_tenth_of_an_inch_washes() {
        assertThat(Rainfast.washed(List.of(
                        Hours.at(10).rain(1.27).build(), Hours.at(11).rain(1.27).build())))
                .isTrue();
        assertThat(Rainfast.washed(List.of(Hours.at(10).rain(2.5).build()))).isFalse();
        assertThat(Rainfast.washed(List.of())).isFalse();
    }

    @Test
    void measured_rain_is_certain() {
        assertThat(Rainfast.chance(Hours.at(1).rain(0.5).build())).isEqualTo(1);
        assertThat(Rainfast.chance(Hours.at(1).rain(0).build())).isEqualTo(0);
        assertThat(Rainfast.chance(Hours.at(1).rain(Double.NaN).build())).isNaN();
    }
}
