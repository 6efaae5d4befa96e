// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.weather.ReferenceEvapotranspiration.Air;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Published: Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, examples 8, 10, 11, 17, 18 and 20.
 * Tolerances are half of the last digit printed, or what the paper's own rounding of intermediate values leaves.
 */
@DisplayName("Reference evapotranspiration against the examples of FAO-56")
class ReferenceEvapotranspirationTest {
    private static final double OF_THE_DAY = 0.02;

    @Test
    void example_8_radiation_above_the_air_at_20_south_on_3_september() {
        assertThat(ReferenceEvapotranspiration.extraterrestrial_MJm2(-20, 246)).isCloseTo(32.2, within(0.1));
    }

    @Test
    void example_10_radiation_from_sunshine_in_rio_de_janeiro_in_may() {
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(-22.9, 135);
        double daylight = ReferenceEvapotranspiration.daylight_h(-22.9, 135);
        assertThat(ra).isCloseTo(25.1, within(0.05));
        assertThat(daylight).isCloseTo(10.9, within(0.05));
        assertThat(ReferenceEvapotranspiration.solarOfSunshine_MJm2(ra, 7.1, daylight))
                .isCloseTo(14.5, within(0.1));
    }

    @Test
    void example_11_net_long_wave_in_rio_de_janeiro_in_may() {
        assertThat(ReferenceEvapotranspiration.netLongWave_MJm2(25.1, 19.1, 2.1, 14.5, 18.8))
                .isCloseTo(3.5, within(0.05));
    }

    @Test
    void example_17_bangkok_in_april() {
        double lat = 13.73;
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(lat, 105);
        double daylight = ReferenceEvapotranspiration.daylight_h(lat, 105);
        double rs = ReferenceEvapotranspiration.solarOfSunshine_MJm2(ra, 8.5, daylight);
        double rso = ReferenceEvapotranspiration.clearSky_MJm2(ra, 2);
        double rnl = ReferenceEvapotranspiration.netLongWave_MJm2(34.8, 25.6, 2.85, rs, rso);
        assertThat(ReferenceEvapotranspiration.slope_kPaC(30.2)).isCloseTo(0.246, within(0.0005));
        // The paper rounds the pressure to 101.3 kPa first.
        assertThat(ReferenceEvapotranspiration.psychrometric_kPaC(2)).isCloseTo(0.0674, within(0.0001));
        assertThat(ra).isCloseTo(38.06, within(0.02));
        assertThat(daylight).isCloseTo(12.31, within(0.01));
        assertThat(rs).isCloseTo(22.65, within(0.02));
        assertThat(0.77 * rs).isCloseTo(17.44, within(0.02));
        assertThat(0.77 * rs - rnl).isCloseTo(14.33, within(0.02));
        assertThat(ReferenceEvapotranspiration.penmanMonteith_mm(new Air(34.8, 25.6, 2.85, 2), rs, ra, 2, 0.14))
                .isCloseTo(5.72, within(OF_THE_DAY));
    }

    @Test
    void example_18_brussels_on_6_july() {
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(50.80, 187);
        double daylight = ReferenceEvapotranspiration.daylight_h(50.80, 187);
        double rs = ReferenceEvapotranspiration.solarOfSunshine_MJm2(ra, 9.25, daylight);
        double rso = ReferenceEvapotranspiration.clearSky_MJm2(ra, 100);
        double wind = ReferenceEvapotranspiration.windAt2m_ms(2.78, 10);
        double ea = ReferenceEvapotranspiration.vapour_kPa(21.5, 12.3, 84, 63);
        double es =
                (ReferenceEvapotranspiration.saturation_kPa(21.5) + ReferenceEvapotranspiration.saturation_kPa(12.3))
                        / 2;
        double rnl = ReferenceEvapotranspiration.netLongWave_MJm2(21.5, 12.3, ea, rs, rso);
        assertThat(wind).isCloseTo(2.08, within(0.005));
        assertThat(ReferenceEvapotranspiration.pressure_kPa(100)).isCloseTo(100.1, within(0.05));
        assertThat(ReferenceEvapotranspiration.slope_kPaC(16.9)).isCloseTo(0.122, within(0.0005));
        assertThat(ReferenceEvapotranspiration.psychrometric_kPaC(100)).isCloseTo(0.0666, within(0.00005));
        assertThat(es).isCloseTo(1.997, within(0.0005));
        assertThat(ea).isCloseTo(1.409, within(0.001));
        assertThat(ra).isCloseTo(41.09, within(0.02));
        assertThat(daylight).isCloseTo(16.1, within(0.05));
        assertThat(rs).isCloseTo(22.07, within(0.02));
        assertThat(rso).isCloseTo(30.90, within(0.02));
        assertThat(0.77 * rs).isCloseTo(17.00, within(0.02));
        assertThat(rnl).isCloseTo(3.71, within(0.02));
        assertThat(0.77 * rs - rnl).isCloseTo(13.28, within(0.02));
        assertThat(ReferenceEvapotranspiration.penmanMonteith_mm(new Air(21.5, 12.3, ea, wind), rs, ra, 100, 0))
                .isCloseTo(3.88, within(OF_THE_DAY));
    }

    @Test
    void example_20_lyon_in_july_from_temperatures_alone() {
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(45.72, 196);
        double rs = ReferenceEvapotranspiration.solarOfRange_MJm2(ra, 26.6, 14.8);
        double ea = ReferenceEvapotranspiration.saturation_kPa(14.8);
        assertThat(rs).isCloseTo(22.29, within(0.02));
        assertThat(ReferenceEvapotranspiration.penmanMonteith_mm(new Air(26.6, 14.8, ea, 2), rs, ra, 200, 0))
                .isCloseTo(4.56, within(OF_THE_DAY));
    }

    @Test
    void example_20_the_same_days_by_hargreaves() {
        double ra = ReferenceEvapotranspiration.extraterrestrial_MJm2(45.72, 196);
        assertThat(ReferenceEvapotranspiration.hargreaves_mm(26.6, 14.8, ra)).isCloseTo(5.03, within(OF_THE_DAY));
    }

    @Test
    void evaporation_is_never_negative() {
        assertThat(ReferenceEvapotranspiration.penmanMonteith_mm(new Air(-10, -20, 0.2, 2), 3.7, 5, 300, 0))
                .isZero();
    }
}
