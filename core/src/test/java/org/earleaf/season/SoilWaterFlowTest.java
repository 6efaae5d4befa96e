// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Drainage and solutes against hand-computed cases; own construct, no published table. */
class SoilWaterFlowTest {

    @Test
    void conductivity_sets_the_daily_drainage() {
        assertThat(SoilWaterFlow.drainShare(16.1)).isCloseTo(.491, within(.002));
        assertThat(SoilWaterFlow.drainShare(.001)).isEqualTo(.10);
        assertThat(SoilWaterFlow.drainShare(1e6)).isEqualTo(.80);
        double drainable = (.479 - .305) * 152.4;
        assertThat(drainable).isCloseTo(26.5, within(.1));
        assertThat(drainable * SoilWaterFlow.drainShare(16.1)).isCloseTo(13.0, within(.1));
    }

    @Test
    void nitrate_moves_with_water_and_ammonium_hardly() {
        double out = SoilWaterFlow.moved(20, 100, .8);
        assertThat(50 * out).isCloseTo(6.667, within(.003));
        double retardation = 1 + SoilWaterFlow.sorbed(1.35, 18) / .30;
        assertThat(retardation).isCloseTo(17.2, within(.05));
        assertThat(50 * out / retardation).isCloseTo(.388, within(.002));
    }

    @Test
    void a_flood_fills_the_profile_and_no_further() {
        SeasonRun run = SyntheticSeason.zone().until(125, SyntheticSeason.weather(j -> 150, 0));
        for (int k = 0; k < SeasonState.CELLS; k++) {
            double sat = run.site().sat[k];
            assertThat(run.state().water[k]).isLessThanOrEqualTo(sat + 1e-9);
        }
        assertThat(run.ledger(SeasonState.Ledger.RUNOFF, 0)).isGreaterThan(300);
        assertThat(run.waterRemainder_mm(0)).isCloseTo(0, within(1e-9));
    }
}
