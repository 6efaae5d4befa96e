// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.junit.jupiter.api.Test;

/** Surface urea by closed form; means of trials: Silva et al. 2017, Agron. J. 109:1 (31 % untreated, 14.8 % with inhibitor). */
class SurfaceNitrogenTest {

    @Test
    void rain_moves_the_surface_in() {
        assertThat(SurfaceNitrogen.washedIn(3, 4)).isCloseTo(.528, within(.001));
        assertThat(SurfaceNitrogen.washedIn(10, 4)).isCloseTo(.918, within(.001));
        assertThat(SurfaceNitrogen.washedIn(12.7, 4)).isCloseTo(.958, within(.001));
    }

    /** 100 kg of urea nitrogen spread at 22 °C on moist soil under half a cover of residue; 12 mm go in on one day. */
    private static double[] lostByDay(Inhibitor inhibitor, int wetDay) {
        OneDay day = new OneDay(SyntheticSeason.soil(.20, .24, SyntheticSeason.OM, 6.5, 20), SyntheticSeason.PROTOTYPE);
        day.warm(22);
        day.state.soilCover[0] = .5;
        NitrogenPass urea = new NitrogenPass(100, 1, 0, 0, Placement.BROADCAST, inhibitor);
        new Applying(day.site, day.state).nitrogen(0, urea);
        SurfaceNitrogen surface = new SurfaceNitrogen(day.site, day.state, day.today);
        double[] byDay = new double[22];
        for (int d = 1; d <= 21; d++) {
            day.today.anyWater = d == wetDay;
            for (int c = 0; c < 2; c++) {
                day.today.entered[c] = d == wetDay ? 12 : 0;
            }
            surface.wash();
            surface.transform();
            byDay[d] = day.ledger(SeasonState.Ledger.VOLATILISED);
        }
        return byDay;
    }

    @Test
    void urea_left_dry_at_22_degrees_loses_a_third_and_half_of_it_by_day_five() {
        int[] days = {1, 2, 3, 5, 7, 10, 14, 21};
        double[] urea = {1.5, 5.5, 11.1, 21.4, 26.9, 30.6, 32.1, 32.5};
        double[] inhibited = {.2, .7, 1.5, 3.5, 5.2, 7.6, 12.0, 17.3};
        for (int k = 0; k < days.length; k++) {
            assertThat(lostByDay(Inhibitor.NONE, 0)[days[k]]).isCloseTo(urea[k], within(.5));
            assertThat(lostByDay(Inhibitor.UREASE, 0)[days[k]]).isCloseTo(inhibited[k], within(.5));
        }
    }

    /** Fox, Kern & Piekielek 1986: 10 mm within two to three days keeps the loss small. */
    @Test
    void rain_in_time_saves_it() {
        assertThat(lostByDay(Inhibitor.NONE, 3)[21]).isCloseTo(6.8, within(.5));
        assertThat(lostByDay(Inhibitor.NONE, 8)[21]).isCloseTo(27.2, within(.5));
        assertThat(lostByDay(Inhibitor.UREASE, 8)[21]).isCloseTo(5.8, within(.5));
    }
}
