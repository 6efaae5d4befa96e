// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import org.earleaf.farm.Prices;
import org.earleaf.protection.PassWorth;
import org.earleaf.units.Ranks;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/**
 * A rate chosen over ten equally likely supplies of nitrogen on a quadratic plateau; every figure computed with R 4.2.2
 * from the formulas alone (invented data). The response is the test's own; what is chosen and what it is worth is worked
 * out by the code behind the app. Dollars an acre, lb N/ac, bushels.
 */
class InSeasonRateTest {
    private static final double[] SUPPLY_LBAC = {60, 72, 85, 93, 101, 108, 116, 125, 139, 160};
    private static final double CORN = 4.5;
    private static final double NITROGEN = .6;
    private static final double TAKEN = .85;
    private static final double PASS = 14;
    private static final Prices PRICES = new Prices(CORN, 0, NITROGEN / Units.KG_PER_LB, Map.of());
    private static final double FINE = .001;

    private static double yield_buAc(double supply_lbAc) {
        double b = 1.15;
        double enough = 200;
        double s = Math.min(supply_lbAc, enough);
        return 92 + b * s - b / (2 * enough) * s * s;
    }

    /** Dry grain gained by each member [kg/ha]. */
    private static double[] gained(double[] supply, double rate) {
        double dryKgHa = Units.KGHA_PER_BUAC * Units.DRY_SHARE_OF_TRADE_CORN;
        return Arrays.stream(supply)
                .map(a -> (yield_buAc(a + TAKEN * rate) - yield_buAc(a)) * dryKgHa)
                .toArray();
    }

    private static double cost_usdHa(double rate) {
        return (NITROGEN * rate + (rate > 0 ? PASS : 0)) / Units.HA_PER_AC;
    }

    /** Gains at rates from the first up, by step. */
    private static double[][] gains(double[] supply, double from, double step, int n) {
        double[][] gains = new double[n][];
        for (int k = 0; k < n; k++) {
            double rate = from + k * step;
            gains[k] = PassWorth.gains_usdHa(gained(supply, rate), cost_usdHa(rate), PRICES);
        }
        return gains;
    }

    /** The best rate to a thousandth: among tenths first, then around the best of them. */
    private static double best(double[] supply, double badCaseWeight) {
        double near = .1 * Choice.best(gains(supply, 0, .1, 2001), badCaseWeight);
        double from = Math.max(0, near - .2);
        return from + FINE * Choice.best(gains(supply, from, FINE, 401), badCaseWeight);
    }

    private static Worth worth(double rate) {
        double[] cost = new double[SUPPLY_LBAC.length];
        Arrays.fill(cost, cost_usdHa(rate));
        return Worth.of(gained(SUPPLY_LBAC, rate), cost, PRICES);
    }

    private static double usdAc(double usdHa) {
        return usdHa * Units.HA_PER_AC;
    }

    @Test
    void the_rate_of_the_best_mean_is_found_and_its_worth_told() {
        double rate = best(SUPPLY_LBAC, 0);
        assertThat(rate).isCloseTo(83.411, within(1e-9));
        Worth w = worth(rate);
        assertThat(usdAc(w.mean_usdHa())).isCloseTo(44.910651, within(1e-6));
        assertThat(usdAc(w.p10_usdHa())).isCloseTo(-18.650206, within(1e-6));
        assertThat(usdAc(w.badCase_usdHa())).isCloseTo(-29.626381, within(1e-6));
        assertThat(w.chanceItPays()).isEqualTo(.8);
        double[] returns = PassWorth.gains_usdHa(gained(SUPPLY_LBAC, rate), cost_usdHa(rate), PRICES);
        double[] expected = {127.7531, 105.7389, 81.8901, 67.2140, 52.5378, 39.6961, 25.0200, 8.5093, -15.9062, -43.3466
        };
        for (int m = 0; m < expected.length; m++) {
            assertThat(usdAc(returns[m])).isCloseTo(expected[m], within(6e-5));
        }
        Arrays.sort(returns);
        assertThat(usdAc(returns[0])).isCloseTo(-43.346600, within(1e-6));
        assertThat(usdAc(returns[9])).isCloseTo(127.753133, within(1e-6));
        assertThat(usdAc(Ranks.of(returns).worst(.25))).isCloseTo(-21.999247, within(1e-6));
    }

    /** Slope of the mean return by central difference, exact for a quadratic, plus the price of nitrogen. */
    @Test
    void a_further_pound_brings_what_it_costs_at_the_best_rate() {
        // A straight line near nought, where the cost of the pass sets in.
        assertThat(2 * marginal(1e-3) - marginal(2e-3)).isCloseTo(2.069612, within(2e-6));
        assertThat(marginal(40)).isCloseTo(1.321824, within(2e-6));
        assertThat(marginal(83.411)).isCloseTo(.600001, within(2e-6));
    }

    private static double marginal(double rate) {
        double h = 5e-4;
        double slope = worth(rate + h).mean_usdHa() - worth(rate - h).mean_usdHa();
        return usdAc(slope) / (2 * h) + NITROGEN;
    }

    @Test
    void who_knows_the_season_gives_each_its_own_rate() {
        double[] known = {132.6112, 118.4936, 103.1994, 93.7877, 84.3759, 76.1406, 66.7289, 56.1406, 39.6700, 14.9641};
        for (int m = 0; m < 9; m++) {
            assertThat(best(new double[] {SUPPLY_LBAC[m]}, 0)).isCloseTo(known[m], within(6e-4));
        }
        // The last one earns less at its best rate than the pass costs: it is left.
        double[][] last = gains(new double[] {SUPPLY_LBAC[9]}, 0, .1, 2001);
        assertThat(Choice.best(last, 0)).isEqualTo(Choice.NOTHING);
        double least = Arrays.stream(last).skip(1).mapToDouble(g -> -g[0]).min().orElseThrow();
        assertThat(usdAc(last[(int) Math.round(10 * known[9])][0])).isCloseTo(usdAc(-least), within(1e-4));
        double[][] gains = gains(SUPPLY_LBAC, 0, .01, 20_001);
        assertThat(usdAc(Ranks.mean(Choice.known(gains, SUPPLY_LBAC.length)))).isCloseTo(55.792282, within(1e-6));
        assertThat(usdAc(Choice.knowing_usdHa(gains))).isCloseTo(10.881631, within(1e-6));
    }

    @Test
    void planning_on_the_mean_supply_brings_less() {
        double mean = Arrays.stream(SUPPLY_LBAC).average().orElseThrow();
        double rate = best(new double[] {mean}, 0);
        assertThat(rate).isCloseTo(78.611203, within(6e-4));
        assertThat(usdAc(worth(78.611203).mean_usdHa())).isCloseTo(44.738371, within(1e-6));
    }

    @Test
    void who_minds_the_bad_case_half_puts_on_less() {
        double rate = best(SUPPLY_LBAC, .5);
        assertThat(rate).isCloseTo(55.495, within(1e-9));
        assertThat(usdAc(worth(rate).objective_usdHa(.5))).isCloseTo(12.360875, within(1e-6));
    }

    @Test
    void break_even_is_where_the_mean_gain_is_zero() {
        Worth w = worth(83.411);
        double gain_buAc = Units.buAc(w.meanYieldGain_kgHa());
        assertThat(gain_buAc).isCloseTo(24.212723, within(1e-6));
        assertThat(usdAc(w.cost_usdHa()) / CORN).isCloseTo(14.232578, within(1e-6));
        assertThat(w.breakEvenCorn_usdBu()).isCloseTo(2.645163, within(1e-6));
        assertThat(usdAc(w.mean_usdHa()) + PASS).isCloseTo(58.910651, within(1e-6));
    }

    /** Worked by hand: with 40 in one future and -10 in the other, doing nothing or acting. */
    @Test
    void regret_is_the_most_left_on_the_table() {
        double[][] gains = {{40, -10}, {25, 5}};
        double[] known = Choice.known(gains, 2);
        assertThat(known).containsExactly(40, 5);
        assertThat(Choice.regret_usdHa(gains[0], known)).isEqualTo(15);
        assertThat(Choice.regret_usdHa(gains[1], known)).isEqualTo(15);
        assertThat(Choice.knowing_usdHa(gains)).isEqualTo(22.5 - 15);
        assertThat(Choice.best(new double[][] {{-1, -2}}, 0)).isEqualTo(Choice.NOTHING);
    }
}
