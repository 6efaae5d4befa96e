// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Disease;
import org.earleaf.protection.Cases;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class SeverityTest {
    private static final ProtectionSettings USUAL = ProtectionSettings.USUAL;
    private static final double YIELD = 200 * Cases.BU;

    /** The printed logistic: 1/(1 + 99 exp(-4.2)) = 0.4024. */
    @Test
    void one_percent_grows_to_forty_in_five_favourable_weeks() {
        assertThat(SeverityGrowth.after(0.01, 0.12, 35)).isCloseTo(0.4024, within(0.0001));
        assertThat(SeverityGrowth.after(0, 0.12, 35)).isZero();
        assertThat(SeverityGrowth.after(0.3, 0.12, 0)).isCloseTo(0.3, within(1e-12));
    }

    @Test
    void growing_in_two_parts_is_growing_at_once() {
        double half = SeverityGrowth.after(0.02, 0.1, 12);
        assertThat(SeverityGrowth.after(half, 0.1, 18)).isCloseTo(SeverityGrowth.after(0.02, 0.1, 30), within(1e-12));
    }

    @Test
    void effect_is_full_for_two_weeks_and_gone_after_four() {
        assertThat(SeverityGrowth.effect(0, USUAL)).isEqualTo(1);
        assertThat(SeverityGrowth.effect(14, USUAL)).isEqualTo(1);
        assertThat(SeverityGrowth.effect(21, USUAL)).isEqualTo(0.5);
        assertThat(SeverityGrowth.effect(28, USUAL)).isZero();
        assertThat(SeverityGrowth.effect(-1, USUAL)).isZero();
    }

    /** Cross-check: the closed sum against adding up the weight in small steps. */
    @Test
    void days_held_up_are_the_weight_added_up() {
        for (double days : new double[] {-3, 0, 5, 14, 20, 28, 40}) {
            double sum = 0;
            double step = 0.001;
            for (double t = step / 2; t < days; t += step) {
                sum += SeverityGrowth.effect(t, USUAL) * step;
            }
            assertThat(SeverityGrowth.daysHeldUp(days, USUAL)).as("%s d", days).isCloseTo(0.6 * sum, within(0.01));
        }
    }

    /** Published slopes: 0.44 to 0.75 % a point, none below 8 % (Pataky 1992): 20 % at 0.6 cost 7.2 % of the yield. */
    @Test
    void twenty_percent_of_northern_leaf_blight_cost_seven_percent_of_the_yield() {
        SeverityLoss blight = SeverityLoss.of(Disease.NORTHERN_LEAF_BLIGHT, 108);
        assertThat(blight.loss_kgHa(0.20, YIELD, USUAL) / YIELD).isCloseTo(0.072, within(1e-9));
        assertThat(blight.loss_kgHa(0.08, YIELD, USUAL)).isZero();
    }

    /**
     * Published: 1.6 to 23.3 % of the ear leaf at dent in plots without fungicide (eight trials of 2019 and 2020), 0.1 to 67 %
     * of the leaf in fields of 2018 and 2019.
     */
    @Test
    void tar_spot_spreads_from_first_spots_to_what_untreated_plots_had_at_dent() {
        ProtectionCase c = Cases.zoneOnItsOwn().build();
        SeverityOutlook.Spread spread = new SeverityOutlook(c).spread(Cases.severity(Disease.TAR_SPOT, .0001));
        assertThat(spread.likely()).isBetween(.016, .233);
        assertThat(spread.low()).isBetween(.001, .016);
        assertThat(spread.high()).isBetween(.10, .67);
        assertThat(spread.chanceSevere()).isBetween(.2, .8);
    }

    /** Published: 40 to 50 % of tar spot cost 16.8 to 38.7 bu/ac (extension study of four states, 2018). */
    @Test
    void tar_spot_at_forty_to_fifty_percent_costs_what_was_measured() {
        double early = SeverityLoss.of(Disease.TAR_SPOT, 100).loss_kgHa(0.40, YIELD, USUAL);
        double late = SeverityLoss.of(Disease.TAR_SPOT, 110).loss_kgHa(0.45, YIELD, USUAL);
        assertThat(Units.buAc(early)).isBetween(16.8, 24.0);
        assertThat(Units.buAc(late)).isBetween(33.0, 38.7);
    }

    /** Scale published: one spray saved up to 1.65 t/ha where gray leaf spot reached 73 % (Munkvold et al. 2001). */
    @Test
    void gray_leaf_spot_saves_no_more_than_the_trials_saw() {
        SeverityLoss gray = SeverityLoss.of(Disease.GRAY_LEAF_SPOT, 108);
        double saved = gray.loss_kgHa(0.73, YIELD, USUAL) - gray.loss_kgHa(0.73 * 0.4, YIELD, USUAL);
        assertThat(saved / Units.DRY_SHARE_OF_TRADE_CORN).isBetween(1650 * 0.5, 1650 * 1.9);
    }

    @Test
    void loss_never_passes_its_cap_and_never_falls_with_severity() {
        for (Disease disease : Disease.values()) {
            SeverityLoss loss = SeverityLoss.of(disease, 110);
            double before = 0;
            for (double x = 0; x <= 1; x += 0.05) {
                double now = loss.loss_kgHa(x, YIELD, USUAL);
                assertThat(now).isBetween(before, 0.6 * YIELD + 1e-9);
                before = now;
            }
        }
    }
}
