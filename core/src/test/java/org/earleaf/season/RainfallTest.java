// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Rain over two columns and runoff. */
class RainfallTest {

    private static double row(double in, double sigma) {
        return in * (sigma + (1 - sigma) / 3) * 3;
    }

    /**
     * Leaf area 5, row share 1/3. Stemflow 19 to 49 % of rain: Parkin & Codling 1990; 78 % under small storms: Martello
     * et al. 2015; the form between is an own construct.
     */
    @Test
    void light_rain_runs_to_the_row_and_storms_do_less_so() {
        double[][] expected = {{20, .450, 36.1, 10.45}, {3, .666, 4.67, .67}};
        for (double[] e : expected) {
            double sigma = Rainfall.stemShare(e[0], 5);
            double in = e[0] - Math.min(e[0], 1.0);
            assertThat(sigma).isCloseTo(e[1], within(.001));
            assertThat(row(in, sigma)).isCloseTo(e[2], within(e[2] * .01));
            assertThat(in * (1 - sigma)).isCloseTo(e[3], within(e[3] * .01));
        }
        double light = Rainfall.stemShare(2.5, 5);
        assertThat(row(1, light) / (1 - light)).isCloseTo(7.6, within(.08));
        double storm = Rainfall.stemShare(40, 5);
        assertThat(storm).isCloseTo(.380, within(.001));
        assertThat(row(1, storm) / (1 - storm)).isCloseTo(2.84, within(.03));
        assertThat(Rainfall.stemShare(20, 0)).isEqualTo(0);
    }

    /** NRCS NEH 630 ch. 10; dry and wet curve numbers of its table for 80: 63 and 91. */
    @Test
    void runoff_follows_the_curve_number() {
        assertThat(Rainfall.runoff_mm(50, 78)).isCloseTo(11.86, within(.01));
        assertThat(Rainfall.runoff_mm(25, 78)).isCloseTo(1.38, within(.01));
        assertThat(Rainfall.runoff_mm(10, 78)).isEqualTo(0);
        assertThat(Rainfall.dryCurve(80)).isCloseTo(63, within(1.0));
        assertThat(Rainfall.wetCurve(80)).isCloseTo(91, within(1.0));
    }

    @Test
    void curve_number_rises_steadily_with_wetness() {
        assertThat(Rainfall.curve(75, 0)).isCloseTo(Rainfall.dryCurve(75), within(1e-9));
        assertThat(Rainfall.curve(75, .7)).isCloseTo(75, within(1e-9));
        assertThat(Rainfall.curve(75, 1.3)).isCloseTo(Rainfall.wetCurve(75), within(1e-9));
    }

    /** What reaches the two columns is what came less what the leaves held and what ran off, for any rain and leaf area. */
    @Test
    void water_of_the_two_columns_adds_up_to_what_came_in() {
        for (double lai = 0; lai <= 6; lai += 1.5) {
            for (double rain : new double[] {.1, .5, 2.5, 3, 20, 40, 120}) {
                OneDay day = new OneDay(
                        SyntheticSeason.soil(.20, .24, SyntheticSeason.OM, 6.5, 18), SyntheticSeason.PROTOTYPE);
                day.state.lai[0] = lai;
                day.today.rain[0] = rain;
                new Rainfall(day.site, day.state, day.today).step();
                double in = rain - day.ledger(SeasonState.Ledger.INTERCEPTION) - day.ledger(SeasonState.Ledger.RUNOFF);
                double columns = day.site.share[0] * day.today.reaching[0] + day.site.share[1] * day.today.reaching[1];
                assertThat(columns).as("rain %s, leaf area %s", rain, lai).isCloseTo(in, within(1e-12 * rain));
            }
        }
    }

    /** Dew of 0.01 to 0.41 mm a night in maize: Atzema, Jacobs & Wartena 1990; what becomes of it: own construct. */
    @Test
    void dew_under_a_canopy_reaches_the_row_base_and_the_rest_dries_off() {
        OneDay day = new OneDay(SyntheticSeason.soil(.20, .24, SyntheticSeason.OM, 6.5, 18), SyntheticSeason.PROTOTYPE);
        day.state.lai[0] = 5;
        day.today.dew[0] = .15;
        new Rainfall(day.site, day.state, day.today).step();
        double toRow = .5 * .15 * (1 - Math.exp(-3));
        assertThat(day.today.reaching[0] * day.site.share[0]).isCloseTo(toRow, within(1e-12));
        assertThat(day.today.reaching[1]).isEqualTo(0);
        assertThat(day.ledger(SeasonState.Ledger.DEW)).isEqualTo(.15);
        assertThat(day.ledger(SeasonState.Ledger.INTERCEPTION)).isCloseTo(.15 - toRow, within(1e-12));
    }
}
