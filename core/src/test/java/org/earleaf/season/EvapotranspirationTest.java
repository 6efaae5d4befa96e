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

    @Test
    void roots_in_reach_of_plenty_meet_demand_and_of_little_do_not() {
        assertThat(Math.min(1, .10 * 120 / 6)).isEqualTo(1);
        SeasonRun run = SyntheticSeason.zone().until(215, SyntheticSeason.weather(j -> 0, 0), SyntheticSeason.pre(180));
        assertThat(run.state().waterFactor[0]).isBetween(0.0, 0.5);
    }
}
