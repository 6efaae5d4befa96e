// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Growth, kernels (Andrade et al. 2002, Crop Sci. 42:1173) and yield limits. */
class GrowthTest {

    @Test
    void light_becomes_growth() {
        double apar = Growth.absorbed_MJm2(22, 3, .55);
        assertThat(apar).isCloseTo(8.888, within(.005));
        double most = Growth.potential_kgHa(apar, 0, 3.5, .4, 24);
        assertThat(most).isCloseTo(311, within(1.0));
        assertThat(Growth.potential_kgHa(apar, 1, 3.5, .4, 24)).isCloseTo(.6 * most, within(1e-9));
        assertThat(Growth.absorbed_MJm2(2, 5, .55)).isCloseTo(.936, within(.0005));
    }

    /** Concave, as growth for light answers to leaf nitrogen: Sinclair & Horie 1989, Crop Sci. 29:90, from memory. */
    @Test
    void the_first_nitrogen_does_more_for_growth_than_the_last() {
        assertThat(Growth.nitrogenFactor(.8, .667)).isCloseTo(Math.pow(.8, .667), within(1e-6));
        assertThat(Growth.nitrogenFactor(1.3, .667)).isCloseTo(1, within(1e-9));
        assertThat(Growth.nitrogenFactor(0, .667)).isCloseTo(Math.pow(.05, .667), within(1e-6));
        double low = Growth.nitrogenFactor(.5, .667) - Growth.nitrogenFactor(.4, .667);
        assertThat(low).isGreaterThan(Growth.nitrogenFactor(1, .667) - Growth.nitrogenFactor(.9, .667));
    }

    @Test
    void kernels_follow_growth_around_silking() {
        double[][] expected = {{1.17, 0}, {1.5, .270}, {2.5, .703}, {3.3, .878}, {4.1, .989}, {5.0, 1.074}};
        for (double[] e : expected) {
            assertThat(Growth.kernelShare(e[0])).isCloseTo(e[1], within(.001));
        }
    }

    @Test
    void cold_slows_and_warmth_does_not() {
        assertThat(Growth.coolness(20, 0)).isEqualTo(1);
        assertThat(Growth.coolness(12, 0)).isCloseTo(.5, within(1e-12));
        assertThat(Growth.coolness(8, 0)).isEqualTo(0);
    }

    @Test
    void the_least_of_four_ceilings_binds_and_is_named() {
        assertThat(Yield.least(500, 1, 2, 3, 4, 9).limit()).isEqualTo(Yield.Limit.SINK);
        assertThat(Yield.least(500, 2, 1, 3, 4, 9).limit()).isEqualTo(Yield.Limit.HARVEST_INDEX);
        assertThat(Yield.least(500, 2, 3, 1, 4, 9).limit()).isEqualTo(Yield.Limit.SOURCE);
        assertThat(Yield.least(500, 2, 3, 4, 1, 9).limit()).isEqualTo(Yield.Limit.NITROGEN);
    }

    /** Internal efficiency of Bender et al. 2013: 12 000 kg of grain from 286 kg N is 42.0; envelope 40 to 83. */
    @Test
    void grain_per_nitrogen_lies_in_the_published_envelope() {
        for (double rate : new double[] {0, 60, 120, 180, 240}) {
            SeasonRun run = SyntheticSeason.zone().run(SyntheticSeason.weather(), SyntheticSeason.pre(rate));
            double atTradeMoisture = run.yield(0).grain_kgHa() / .845;
            assertThat(atTradeMoisture / run.shootN_kgHa(0)).isBetween(40.0, 83.0);
        }
    }
}
