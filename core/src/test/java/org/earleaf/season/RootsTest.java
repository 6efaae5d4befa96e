// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Root depth by the roots dug near Ames (front after V5, bench/trials) and Ordonez et al. 2018 (most) and shares by Jackson et al. 1996 (0.961, from memory). */
class RootsTest {

    @Test
    void the_front_follows_the_collars_and_then_warmth() {
        assertThat(Roots.depth_mm(400, 4, -80, .45, 1370)).isCloseTo(186, within(1.0));
        assertThat(Roots.depth_mm(525, 5, 0, .45, 1370)).isCloseTo(220, within(1.0));
        assertThat(Roots.depth_mm(1525, 19, 1000, .45, 1370)).isCloseTo(670, within(1.0));
        assertThat(Roots.depth_mm(2525, 19, 2000, .45, 900)).isEqualTo(900);
        assertThat(Roots.depth_mm(30, 0, -500, .45, 1370)).isEqualTo(0);
    }

    private static double[] lengthByLayer(SeasonRun run) {
        double[] length = new double[SeasonState.LAYERS];
        for (int k = 0; k < SeasonState.CELLS; k++) {
            int i = k / 2;
            double density = -Math.log(1 - run.today().roots[k]) * .25;
            length[i] += run.site().share[k & 1] * density * run.site().dz[i] / 10;
        }
        return length;
    }

    /** Roots down to 137 cm. */
    @Test
    void length_is_shared_by_depth() {
        double[] expected = {.184, .273, .249, .210, .062, .022};
        SeasonRun run = SyntheticSeason.zone().until(200, SyntheticSeason.weather());
        assertThat(run.state().rootDepth[0]).isEqualTo(1370);
        double[] length = lengthByLayer(run);
        double all = java.util.Arrays.stream(length).sum();
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            assertThat(length[i] / all).as("layer %d", i + 1).isCloseTo(expected[i], within(.001));
        }
    }

    @Test
    void middles_fill_between_the_third_and_the_eighth_collar() {
        assertThat(Roots.middleSpread(3)).isEqualTo(0);
        assertThat(Roots.middleSpread(5.5)).isCloseTo(.5, within(1e-12));
        assertThat(Roots.middleSpread(9)).isEqualTo(1);
    }

    @Test
    void length_of_all_cells_is_the_length_of_the_plant() {
        SeasonRun run = SyntheticSeason.zone().until(190, SyntheticSeason.weather());
        double length = java.util.Arrays.stream(lengthByLayer(run)).sum();
        double v = run.state().collars[0] / run.site().tassel[0];
        assertThat(length).isCloseTo(120 * Math.pow(v, 1.5), within(1e-3 * length));
    }
}
