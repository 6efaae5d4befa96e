// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Crop coefficients and drying of the surface; FAO-56 dual form from memory, top-layer limits own construct. */
class EvapotranspirationTest {

    @Test
    void basal_coefficient_rises_with_leaf_area_and_flattens() {
        double[][] expected = {{.5, .445}, {1, .653}, {2, .903}, {3, 1.028}, {5, 1.120}};
        for (double[] e : expected) {
            assertThat(Evapotranspiration.basal(e[0], 1.15, .7)).isCloseTo(e[1], within(.001));
        }
    }

    /** Layer 1 of 50.8 mm, FC .3421, WP .1623: TEW 13.70, REW 3.43 mm. */
    @Test
    void a_drying_surface_gives_less_and_less() {
        double wp = .1623 * 50.8;
        double fc = .3421 * 50.8;
        assertThat(Evapotranspiration.drying(.30 * 50.8, wp, fc, .25)).isEqualTo(1);
        assertThat(Evapotranspiration.drying(.25 * 50.8, wp, fc, .25)).isCloseTo(.275, within(.003));
        assertThat(Evapotranspiration.drying(.20 * 50.8, wp, fc, .25)).isCloseTo(.0218, within(.0003));
    }

    /** Bare ground, residue cover .5, reference evapotranspiration 4: 3.56, 0.99, 0.079 mm. */
    @Test
    void bare_ground_under_residue_evaporates_as_computed_by_hand() {
        double[][] expected = {{.30, 3.56}, {.25, .99}, {.20, .079}};
        for (double[] e : expected) {
            double kr = Evapotranspiration.drying(e[0] * 50.8, .1623 * 50.8, .3421 * 50.8, .25);
            double open = 1 - Evapotranspiration.cover(0, 1.2, 0);
            double mm = 4 * Math.min(kr * 1.2, open * 1.2) * (1 - .5 * .5);
            assertThat(mm).isCloseTo(e[1], within(e[1] * .01));
        }
    }

    /** Roots full in the lowest layer only, a full canopy asking for 6 mm: 120 mm in reach give it, 30 mm half of it. */
    @Test
    void roots_in_reach_of_plenty_meet_demand_and_of_little_do_not() {
        assertThat(transpired(120)).containsExactly(new double[] {6, 1}, within(1e-9));
        assertThat(transpired(30)).containsExactly(new double[] {3, .5}, within(1e-9));
    }

    private static double[] transpired(double inReach_mm) {
        OneDay day = new OneDay(SyntheticSeason.soil(.20, .24, SyntheticSeason.OM, 6.5, 18), SyntheticSeason.PROTOTYPE);
        int bottom = SeasonState.LAYERS - 1;
        for (int c = 0; c < 2; c++) {
            int cell = day.state.at(c, bottom);
            day.today.roots[cell] = 1;
            day.state.water[cell] = day.site.wp[cell] + inReach_mm;
        }
        day.state.lai[0] = 5;
        day.today.anyUp = true;
        day.today.et0[0] = 6 / Evapotranspiration.basal(5, 1.15, .7);
        new Evapotranspiration(day.site, day.state, day.today).step();
        return new double[] {day.ledger(SeasonState.Ledger.TRANSPIRATION), day.state.waterFactor[0]};
    }

    /** Suyker & Verma 2008: 544 to 578 mm a season from irrigated maize in Nebraska; here 544.3, the least of them. */
    @Test
    void a_season_uses_what_maize_was_measured_to_use() {
        SeasonRun run = SyntheticSeason.zone().run(SyntheticSeason.weather(), SyntheticSeason.pre(180));
        double used = run.ledger(SeasonState.Ledger.TRANSPIRATION, 0) + run.ledger(SeasonState.Ledger.EVAPORATION, 0);
        assertThat(used).isBetween(544.0, 578.0);
    }
}
