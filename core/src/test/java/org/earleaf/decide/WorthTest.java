// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Map;
import org.earleaf.farm.Prices;
import org.earleaf.outlook.Spread;
import org.earleaf.units.Ranks;
import org.junit.jupiter.api.Test;

/**
 * Risk measures on ten equally likely returns, computed with R 4.2.2: quantile type 7 and the mean of the worst share
 * (Rockafellar & Uryasev 2000).
 */
class WorthTest {
    private static final double[] RETURNS = {
        127.7531, 105.7389, 81.8901, 67.2140, 52.5378, 39.6961, 25.0200, 8.5093, -15.9062, -43.3466
    };

    @Test
    void tenth_percentile_and_worst_shares_agree_with_the_reference() {
        assertThat(Ranks.of(RETURNS).quantile(.1)).isCloseTo(-18.650206, within(1e-4));
        assertThat(Ranks.of(RETURNS).worst(.2)).isCloseTo(-29.626381, within(1e-4));
        assertThat(Ranks.of(RETURNS).worst(.25)).isCloseTo(-21.999247, within(1e-4));
    }

    /** A gain of 24.212723 bu at 4.50 that needs 14.232578 bu breaks even at 2.645163 a bushel. */
    @Test
    void break_even_price_is_where_the_mean_gain_is_zero() {
        double kg = 24.212723 * .845 * 56 * .45359237;
        double cost = 14.232578 * 4.5;
        Worth worth = Worth.of(new double[] {kg, kg}, cost, new Prices(4.5, 0, 1, Map.of()));
        assertThat(worth.breakEvenCorn_usdBu()).isCloseTo(2.645163, within(1e-6));
        assertThat(worth.mean_usdHa()).isCloseTo(44.910651, within(1e-5));
        assertThat(worth.chanceItPays()).isEqualTo(1);
    }

    @Test
    void costs_of_bringing_a_bushel_home_raise_the_break_even_price() {
        double[] gained = {500, 900};
        Worth free = Worth.of(gained, 60, new Prices(4.5, 0, 1, Map.of()));
        Worth hauled = Worth.of(gained, 60, new Prices(4.5, .22, 1, Map.of()));
        assertThat(hauled.breakEvenCorn_usdBu() - free.breakEvenCorn_usdBu()).isCloseTo(.22, within(1e-9));
        assertThat(hauled.mean_usdHa()).isLessThan(free.mean_usdHa());
        assertThat(hauled.meanAt_usdHa(4.5)).isCloseTo(hauled.mean_usdHa(), within(1e-9));
        assertThat(hauled.meanAt_usdHa(hauled.breakEvenCorn_usdBu())).isCloseTo(0, within(1e-9));
        assertThat(hauled.meanAt_usdHa(6))
                .isCloseTo(Worth.of(gained, 60, new Prices(6, .22, 1, Map.of())).mean_usdHa(), within(1e-9));
    }

    @Test
    void never_stays_never_in_a_spread_of_dates() {
        double never = Double.POSITIVE_INFINITY;
        Spread s = Spread.of(new double[] {100, 101, never, never});
        assertThat(s.p10()).isCloseTo(100.3, within(1e-9));
        assertThat(s.p50()).isEqualTo(never);
        assertThat(s.p90()).isEqualTo(never);
    }
}
