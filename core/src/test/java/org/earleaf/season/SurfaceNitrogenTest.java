// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Surface urea by closed form; means of trials: Silva et al. 2017, Agron. J. 109:1 (31 % untreated, 14.8 % with inhibitor). */
class SurfaceNitrogenTest {

    @Test
    void rain_moves_the_surface_in() {
        assertThat(SurfaceNitrogen.washedIn(3, 4)).isCloseTo(.528, within(.001));
        assertThat(SurfaceNitrogen.washedIn(10, 4)).isCloseTo(.918, within(.001));
        assertThat(SurfaceNitrogen.washedIn(12.7, 4)).isCloseTo(.958, within(.001));
    }

    private static double[] lostByDay(boolean inhibitor, int wetDay) {
        double u = 100;
        double v = 0;
        double lost = 0;
        double[] byDay = new double[22];
        double soil = SurfaceNitrogen.soilFactor(6.5, 20);
        for (int age = 0; age < 21; age++) {
            if (age + 1 == wetDay) {
                double w = SurfaceNitrogen.washedIn(12, 4);
                u *= 1 - w;
                v *= 1 - w;
            }
            double warmth = SoilTemperature.q10(22, SoilTemperature.LN_2, 25);
            double kh = SurfaceNitrogen.hydrolysis(.30, warmth, 1, 1, .5, inhibitor ? 1 : 0, age);
            double gone = u * Lanes.lost(kh + .08);
            u -= gone;
            v += gone * kh / (kh + .08);
            double kv = SurfaceNitrogen.volatilisation(.25, age, 22, soil, .5, 1);
            double left = v * Lanes.lost(kv + .33);
            v -= left;
            lost += left * kv / (kv + .33);
            byDay[age + 1] = lost;
        }
        return byDay;
    }

    @Test
    void urea_left_dry_at_22_degrees_loses_a_third_and_half_of_it_by_day_five() {
        int[] days = {1, 2, 3, 5, 7, 10, 14, 21};
        double[] urea = {1.5, 5.5, 11.1, 21.4, 26.9, 30.6, 32.1, 32.5};
        double[] inhibited = {.2, .7, 1.5, 3.5, 5.2, 7.6, 12.0, 17.3};
        for (int k = 0; k < days.length; k++) {
            assertThat(lostByDay(false, 0)[days[k]]).isCloseTo(urea[k], within(.5));
            assertThat(lostByDay(true, 0)[days[k]]).isCloseTo(inhibited[k], within(.5));
        }
    }

    /** Fox, Kern & Piekielek 1986: 10 mm within two to three days keeps the loss small. */
    @Test
    void rain_in_time_saves_it() {
        assertThat(lostByDay(false, 3)[21]).isCloseTo(6.8, within(.5));
        assertThat(lostByDay(false, 8)[21]).isCloseTo(27.2, within(.5));
        assertThat(lostByDay(true, 8)[21]).isCloseTo(5.8, within(.5));
    }
}
