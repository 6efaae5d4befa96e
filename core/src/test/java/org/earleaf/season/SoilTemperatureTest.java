// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Warmth of soil and Q10 (from memory); layer lags own construct. */
class SoilTemperatureTest {

    @Test
    void ten_degrees_double_the_rate_up_to_35_and_nothing_moves_in_frost() {
        assertThat(SoilTemperature.q10(25, SoilTemperature.LN_2, 25)).isCloseTo(1, within(1e-12));
        assertThat(SoilTemperature.q10(15, SoilTemperature.LN_2, 25)).isCloseTo(.5, within(1e-12));
        assertThat(SoilTemperature.q10(45, SoilTemperature.LN_2, 25)).isCloseTo(2, within(1e-12));
        assertThat(SoilTemperature.q10(0, SoilTemperature.LN_2, 25)).isEqualTo(0);
        assertThat(SoilTemperature.q10(32, SoilTemperature.LN_16, 22)).isCloseTo(1.6, within(1e-12));
    }

    @Test
    void deep_layers_lag_behind_the_air() {
        SeasonRun run = SyntheticSeason.zone().until(180, SyntheticSeason.weather());
        double[] t = run.state().soilTemperature;
        for (int i = 1; i < 6; i++) {
            assertThat(t[i]).isLessThan(t[i - 1]);
        }
    }
}
