// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDateTime;
import org.earleaf.units.Units;
import org.earleaf.weather.SunTimes;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InversionTest {
    private static final SunTimes SUN =
            new SunTimes(LocalDateTime.parse("2023-07-01T05:20"), LocalDateTime.parse("2023-07-01T20:30"));

    /** Wind in mph and range in °F, as the signs are told; the guides name still air on a clear evening first. */
    @ParameterizedTest
    @CsvSource({
        "true, 2, 0.1, false, false, 10, PRESENT",
        "true, 4, 0.1, false, false, 10, PROBABLE",
        "true, 4, 0.1, true, false, 10, PRESENT",
        "false, 6, 0.1, false, false, 30, NOT_LIKELY",
        "true, 2, 0.95, false, false, 10, NOT_LIKELY",
        "true, 7, 0.95, true, false, 10, NOT_LIKELY",
        "false, 2, 0.5, false, true, 10, PROBABLE",
        "true, 4, , false, false, , PROBABLE"
    })
    void counts_the_signs(
            boolean nearNight,
            double mph,
            Double cloud,
            boolean dew,
            boolean smoke,
            Double range_F,
            Inversion expected) {
        Inversion.Signs signs = new Inversion.Signs(
                nearNight,
                mph * Units.MS_PER_MPH,
                cloud == null ? Double.NaN : cloud,
                dew,
                smoke,
                range_F == null ? Double.NaN : range_F / 1.8);
        assertThat(Inversion.of(signs)).isEqualTo(expected);
    }

    @Test
    void two_thermometers_go_before_any_sign() {
        assertThat(Inversion.measured(20.1, 20.0)).isEqualTo(Inversion.PRESENT);
        assertThat(Inversion.measured(20.0, 20.0)).isEqualTo(Inversion.NOT_LIKELY);
    }

    @ParameterizedTest
    @CsvSource({
        "2023-07-01T07:00, true",
        "2023-07-01T08:00, false",
        "2023-07-01T17:00, false",
        "2023-07-01T17:30, true",
        "2023-07-01T18:00, true"
    })
    void near_night_reaches_two_hours_into_the_day_at_both_ends(LocalDateTime at, boolean near) {
        assertThat(Inversion.isNearNight(at, SUN)).isEqualTo(near);
    }
}
