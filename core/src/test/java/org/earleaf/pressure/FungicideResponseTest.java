// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FungicideResponseTest {
    private static final double BU = Units.KGHA_PER_BUAC;

    /**
     * Published (Paul et al. 2011, recalled): a premix with little disease misses a cost of $40/ha at $0.12/kg in 0.62 of
     * cases.
     */
    @Test
    void a_premix_with_little_disease_seldom_pays_forty_dollars_a_hectare() {
        assertThat(1 - new FungicideResponse(214, 392).chanceToPay(40, 0.12)).isCloseTo(0.620, within(0.0006));
    }

    /** Reference: SciPy 1.17.1, norm.cdf, for the same mean, spread, cost and price (bu/ac, $/ac, $/bu). */
    @ParameterizedTest
    @CsvSource({"9.51, 32, 0.6190", "3.41, 32, 0.2504", "9.51, 40, 0.4991"})
    void chance_to_pay_in_the_units_of_the_field(double mean, double cost, double chance) {
        FungicideResponse response = new FungicideResponse(mean * BU, 6.25 * BU);
        assertThat(response.chanceToPay(cost / Units.HA_PER_AC, 4.20 / (56 * Units.KG_PER_LB)))
                .isCloseTo(chance, within(0.0002));
    }

    /** Reference: SciPy 1.17.1, numerical integration of the losing tail: 18.31 $/ac; net 7.94 $/ac. */
    @Test
    void mean_loss_of_the_cases_that_lose() {
        FungicideResponse response = new FungicideResponse(9.51 * BU, 6.25 * BU);
        double cost = 32 / Units.HA_PER_AC;
        double price = 4.20 / (56 * Units.KG_PER_LB);
        assertThat(response.lossWhenItLoses_usdHa(cost, price) * Units.HA_PER_AC)
                .isCloseTo(18.31, within(0.01));
        assertThat(response.expectedNet_usdHa(cost, price) * Units.HA_PER_AC).isCloseTo(7.94, within(0.01));
    }

    /** Published, read: mean gains of 230 to 390 kg/ha over all levels of disease (Paul et al. 2011). */
    @Test
    void priors_lie_around_the_published_means() {
        for (FungicideKind kind : FungicideKind.values()) {
            assertThat(FungicideResponse.prior(kind, false).mean_kgHa()).isBetween(200.0, 390.0);
            assertThat(FungicideResponse.prior(kind, true).mean_kgHa()).isBetween(230.0, 640.0);
        }
    }

    @Test
    void chance_falls_with_cost_and_rises_with_price_and_mean_and_is_half_at_break_even() {
        SplittableRandom random = new SplittableRandom(8);
        for (int k = 0; k < 500; k++) {
            double mean = random.nextDouble(50, 800);
            double sd = random.nextDouble(150, 600);
            double cost = random.nextDouble(10, 90);
            double price = random.nextDouble(0.1, 0.3);
            FungicideResponse r = new FungicideResponse(mean, sd);
            assertThat(r.chanceToPay(cost + 5, price)).isLessThan(r.chanceToPay(cost, price));
            assertThat(r.chanceToPay(cost, price * 1.1)).isGreaterThan(r.chanceToPay(cost, price));
            assertThat(new FungicideResponse(mean + 20, sd).chanceToPay(cost, price))
                    .isGreaterThan(r.chanceToPay(cost, price));
            assertThat(r.chanceToPay(mean * price, price)).isCloseTo(0.5, within(1e-12));
        }
    }

    @Test
    void own_strips_pull_the_mean_by_what_they_weigh() {
        FungicideResponse prior = new FungicideResponse(200, 400);
        // Four strips with the variance of the prior four times over weigh as much as the prior.
        FungicideResponse even = prior.updated(new StripEvidence(4, 600, 4 * 160_000));
        assertThat(even.mean_kgHa()).isCloseTo(400, within(1e-9));
        assertThat(even.sd_kgHa()).isCloseTo(400 / Math.sqrt(2), within(1e-9));
        FungicideResponse many = prior.updated(new StripEvidence(1_000_000, 600, 160_000));
        assertThat(many.mean_kgHa()).isCloseTo(600, within(0.01));
    }

    @Test
    void strips_without_a_variance_are_refused() {
        assertThatThrownBy(() -> new StripEvidence(1, 300, 0))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("strips.impossible");
    }
}
