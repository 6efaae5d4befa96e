// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import org.earleaf.farm.Prices;
import org.earleaf.field.Disease;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.pressure.CropAhead;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.FungicideResponse;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.pressure.SeverityGrowth;
import org.earleaf.pressure.SeverityOutlook;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.SiteScore;
import org.earleaf.pressure.StripEvidence;
import org.earleaf.pressure.TarSpotModel;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class ProtectionWorthTest {
    private static final double AC = Units.HA_PER_AC;

    /** Without chance of disease, aphids and tracks the grid is the normal distribution of the trials, sliced. */
    @Test
    void grid_agrees_with_the_formula_of_the_normal_distribution() {
        ProtectionCase c = plain(1).build();
        ProtectionOption o = Cases.fungicide(22, 10);
        PassWorth worth = ProtectionWorth.advise(c, o).worth();
        FungicideResponse severe = FungicideResponse.prior(FungicideKind.DMI_QOI, true);
        double perKg = 4.20 / (56 * Units.KG_PER_LB);
        assertThat(worth.mean_usdHa()).isCloseTo(severe.expectedNet_usdHa(32 / AC, perKg), within(1e-6));
        assertThat(worth.chanceItPays())
                .isCloseTo(severe.chanceToPay(32 / AC, perKg), within(0.5 / ResponseGrid.SLICES));
        double loss = severe.lossWhenItLoses_usdHa(32 / AC, perKg);
        assertThat(worth.badCase_usdHa()).isLessThan(-loss);
        assertThat(worth.p10_usdHa()).isLessThan(worth.mean_usdHa());
        assertThat(worth.p90_usdHa()).isGreaterThan(worth.mean_usdHa());
    }

    @Test
    void at_the_cost_that_the_mean_gain_pays_chance_is_half_and_the_break_even_price_is_the_price() {
        ProtectionCase c = plain(0).build();
        double meanBu = FungicideResponse.prior(FungicideKind.DMI_QOI, false).mean_kgHa() / Units.KGHA_PER_BUAC;
        PassWorth worth =
                ProtectionWorth.advise(c, Cases.fungicide(meanBu * 4.20, 0)).worth();
        assertThat(worth.chanceItPays()).isEqualTo(0.5);
        assertThat(worth.mean_usdHa()).isCloseTo(0, within(1e-6));
        assertThat(worth.breakEvenCorn_usdBu()).isCloseTo(4.20, within(1e-9));
    }

    /** Expected value and chance may disagree: a mixture is lopsided, and each is told by itself. */
    @Test
    void chance_to_pay_falls_with_cost_and_rises_with_price_and_with_disease() {
        ProtectionCase c = plain(0.4).build();
        PassWorth cheap = ProtectionWorth.advise(c, Cases.fungicide(10, 8)).worth();
        PassWorth dear = ProtectionWorth.advise(c, Cases.fungicide(26, 8)).worth();
        assertThat(dear.chanceItPays()).isLessThan(cheap.chanceItPays());
        assertThat(dear.mean_usdHa()).isLessThan(cheap.mean_usdHa());
        PassWorth rich = ProtectionWorth.advise(plain(0.4).corn(6).build(), Cases.fungicide(26, 8))
                .worth();
        assertThat(rich.chanceItPays()).isGreaterThan(dear.chanceItPays());
        PassWorth sick = ProtectionWorth.advise(plain(0.9).build(), Cases.fungicide(26, 8))
                .worth();
        assertThat(sick.mean_usdHa()).isGreaterThan(dear.mean_usdHa());
    }

    @Test
    void the_same_question_gives_the_same_draws() {
        ProtectionCase c = scouted(60).aphids(30, 40, 0).build();
        ProtectionOption o = Cases.fungicide(22, 10);
        assertThat(ProtectionWorth.gained_kgHa(c, o)).isEqualTo(ProtectionWorth.gained_kgHa(c, o));
        assertThat(ProtectionWorth.gained_kgHa(c, o)).hasSize(5 * ResponseGrid.SLICES);
    }

    @Test
    void tracks_and_injury_take_their_share_of_each_yield() {
        ProtectionCase c = plain(0.5).build();
        ProtectionOption o = Cases.fungicide(22, 10);
        ProtectionOption rig = new ProtectionOption(
                o.date(), o.placement(), o.fungicide(), o.insecticide(), false, o.passCost_usdHa(), 0.012, 0.008);
        double less = mean(ProtectionWorth.gained_kgHa(c, o)) - mean(ProtectionWorth.gained_kgHa(c, rig));
        assertThat(less).isCloseTo(0.02 * 190 * Cases.BU, within(1e-6));
        assertThat(ProtectionWorth.advise(c, rig).why())
                .filteredOn(ProtectionReasons.TakenByRig.class::isInstance)
                .singleElement()
                .satisfies(r -> {
                    assertThat(r.said().code()).isEqualTo("protect.taken-by-rig");
                    assertThat(bu(r, "tracks")).isCloseTo(0.012 * 190, within(.05));
                    assertThat(bu(r, "injury")).isCloseTo(0.008 * 190, within(.05));
                });
    }

    private static double bu(ProtectionReason reason, String value) {
        return Units.buAc(((Measured)
                        java.util.Objects.requireNonNull(reason.said().values().get(value)))
                .value());
    }

    @Test
    void more_disease_found_is_worth_more_and_none_found_less_than_not_looking_on_a_risky_field() {
        double before = Double.NEGATIVE_INFINITY;
        for (int shows : new int[] {0, 5, 20, 50, 90}) {
            double now = mean(ProtectionWorth.gained_kgHa(scouted(shows).build(), Cases.fungicide(22, 10)));
            assertThat(now).as("%d of 100", shows).isGreaterThanOrEqualTo(before);
            before = now;
        }
        SiteFacts risky = Cases.facts(
                3, PreviousCrop.CORN, 0.5, true, false, true, Double.NaN, Optional.of(WeatherRisk.LOW), false);
        double unseen = mean(ProtectionWorth.gained_kgHa(plain().site(risky).build(), Cases.fungicide(22, 10)));
        double none = mean(ProtectionWorth.gained_kgHa(
                plain().site(risky)
                        .lesions(Cases.counted(Disease.GRAY_LEAF_SPOT, 0))
                        .build(),
                Cases.fungicide(22, 10)));
        assertThat(none).isLessThan(unseen);
    }

    /**
     * Published: 9.5 bu/ac, the mean gain of the more diseased of 45 environments (Illinois extension 2015), and 1.65 t/ha,
     * the most that one pass saved in ten trials with gray leaf spot (Munkvold et al. 2001).
     */
    @Test
    void at_the_threshold_the_disease_model_saves_what_diseased_fields_gained_and_never_more_than_trials_saw() {
        assertThat(saved_buAc(50, WeatherRisk.MODERATE)).isBetween(8.0, 11.0);
        assertThat(saved_buAc(95, WeatherRisk.HIGH)).isBetween(18.0, 26.3);
        assertThat(saved_buAc(50, WeatherRisk.LOW)).isBetween(0.0, 1.0);
    }

    private static double saved_buAc(int shows, WeatherRisk weather) {
        ProtectionCase c = scouted(shows)
                .site(Cases.site(3, PreviousCrop.CORN, Optional.of(weather)))
                .build();
        SeverityOutlook severity = new SeverityOutlook(c);
        return Units.buAc(severity.saved(Cases.ahead(Cases.VT, 190 * Cases.BU), Cases.VT.plusDays(3))
                .mean_kgHa());
    }

    /** Variances of independent doubts add: the trials' own spread, and the weight of the disease model squared times its. */
    @Test
    void doubt_about_the_disease_model_widens_the_draws() {
        Cases zone = scouted(60).spread(0);
        ProtectionOption o = Cases.fungicide(22, 10);
        double trials = variance(ProtectionWorth.gained_kgHa(
                scouted(60).spread(0).with(ProtectionAssumption.BLEND, 0).build(), o));
        double both = variance(ProtectionWorth.gained_kgHa(zone.build(), o));
        ProtectionCase c = zone.build();
        double model =
                new SeverityOutlook(c).saved(c.futures().get(0), o.date()).variance_kg2Ha2();
        assertThat(model).isGreaterThan(0);
        assertThat(both).isCloseTo(trials + 0.25 * model, within(1e-6 * both));
    }

    private static double variance(double[] values) {
        double mean = mean(values);
        return Arrays.stream(values).map(v -> (v - mean) * (v - mean)).average().orElseThrow();
    }

    /** The growth of the class SeverityGrowth, done here for one severity, one rate and three efficacies. */
    @Test
    void the_disease_model_holds_growth_up_from_the_pass_to_r5() {
        ProtectionCase c = plain().spread(0)
                .site(Cases.site(5, PreviousCrop.CORN, Optional.of(WeatherRisk.MODERATE)))
                .with(ProtectionAssumption.GROWTH_DOUBT, 0)
                .lesions(Cases.severity(Disease.NORTHERN_LEAF_BLIGHT, 0.001))
                .build();
        CropAhead crop = c.futures().get(0);
        // Scouted 2 days before tassel, R5 42 days after it; a pass on day 20 works 14 d in full and 8 d fading to 3/7.
        double days = 44;
        double effect = 14 + 8 * (1 + 6.0 / 14) / 2;
        double expected = 0;
        for (double efficacy : new double[] {0.4, 0.6, 0.8}) {
            double without = SeverityGrowth.after(0.001, 0.12, days);
            double with = SeverityGrowth.after(0.001, 0.12, days - efficacy * effect);
            expected += 0.6 * (Math.max(0, without - 0.08) - Math.max(0, with - 0.08)) * crop.yield_kgHa() / 3;
        }
        assertThat(new SeverityOutlook(c).saved(crop, Cases.VT.plusDays(20)).mean_kgHa())
                .isCloseTo(expected, within(1e-6));
    }

    @Test
    void the_mean_of_the_grid_is_that_of_the_mixture() {
        double little = FungicideResponse.prior(FungicideKind.QOI, false).mean_kgHa();
        double much = FungicideResponse.prior(FungicideKind.QOI, true).mean_kgHa();
        ProtectionOption o = Cases.fungicide(Cases.VT.plusDays(3), FungicideKind.QOI, false, 22, 10);
        assertThat(mean(ProtectionWorth.gained_kgHa(plain(0.3).build(), o)))
                .isCloseTo(0.845 * (0.7 * little + 0.3 * much), within(1e-9));
    }

    @Test
    void half_way_from_r3_to_r4_half_of_the_gain_is_left() {
        ProtectionCase c = plain(0.3).spread(0).build();
        ProtectionOption early = Cases.fungicide(Cases.VT.plusDays(3), FungicideKind.DMI_QOI, false, 22, 10);
        ProtectionOption late = Cases.fungicide(Cases.VT.plusDays(24), FungicideKind.DMI_QOI, false, 22, 10);
        assertThat(mean(ProtectionWorth.gained_kgHa(c, late)))
                .isCloseTo(0.5 * mean(ProtectionWorth.gained_kgHa(c, early)), within(1e-9));
    }

    @Test
    void costs_that_grow_with_each_bushel_raise_the_break_even_price() {
        double gained_kgHa = 100 * Cases.BU;
        Prices plain = new Prices(4.20, 0, 1, Map.of());
        Prices hauled = new Prices(4.20, 0.30, 1, Map.of());
        double free = PassWorth.of(new double[] {gained_kgHa}, 200 / AC, plain).breakEvenCorn_usdBu();
        assertThat(free).isCloseTo(2, within(1e-9));
        assertThat(PassWorth.of(new double[] {gained_kgHa}, 200 / AC, hauled).breakEvenCorn_usdBu())
                .isCloseTo(2.30, within(1e-9));
        assertThat(PassWorth.of(new double[] {-1}, 200, plain).breakEvenCorn_usdBu())
                .isInfinite();
    }

    @Test
    void after_r3_less_is_left_to_gain_and_from_r4_on_nothing_of_the_trials() {
        CropAhead crop = Cases.ahead(Cases.VT, 190 * Cases.BU);
        assertThat(crop.timing(Cases.VT)).isEqualTo(1);
        assertThat(crop.timing(crop.r3())).isEqualTo(1);
        assertThat(crop.timing(crop.r3().plusDays(4))).isEqualTo(0.5);
        assertThat(crop.timing(crop.r4())).isZero();
        assertThat(crop.timing(crop.r5())).isZero();
    }

    @Test
    void aphids_let_off_their_fungi_take_from_a_fungicide_and_a_selective_insecticide_gives_it_back() {
        ProtectionOption alone = Cases.fungicide(22, 10);
        double calm = mean(ProtectionWorth.gained_kgHa(plain(0.5).build(), alone));
        ProtectionCase c = plain(0.5).aphids(60, 60, 0.1).build();
        double flared = mean(ProtectionWorth.gained_kgHa(c, alone));
        double selective = mean(ProtectionWorth.gained_kgHa(c, Cases.with(alone, Insecticide.Reach.SELECTIVE, "")));
        double broad = mean(ProtectionWorth.gained_kgHa(c, Cases.with(alone, Insecticide.Reach.BROAD, "")));
        assertThat(flared).isLessThan(calm);
        assertThat(selective).isGreaterThan(flared).isGreaterThan(broad);
    }

    @Test
    void the_mean_of_the_insect_draws_is_exact_for_any_chance() {
        ProtectionOption o = Cases.fungicide(22, 10);
        double sure = insects(1, o);
        for (double chance : new double[] {0, 0.03, 0.1, 0.34}) {
            assertThat(insects(chance, o)).isCloseTo(chance * sure, within(1e-6));
        }
        assertThat(sure).isNegative();
    }

    /** Gain with aphids at some chance less the gain with none. */
    private static double insects(double chance, ProtectionOption o) {
        ProtectionCase with =
                plain(0.5).with(ProtectionAssumption.APHIDS_UNSEEN, chance).build();
        return mean(ProtectionWorth.gained_kgHa(with, o))
                - mean(ProtectionWorth.gained_kgHa(plain(0.5).build(), o));
    }

    @Test
    void own_strips_move_the_expected_gain() {
        ProtectionOption o = Cases.fungicide(22, 10);
        double before = mean(ProtectionWorth.gained_kgHa(plain(0.5).build(), o));
        double poor = mean(ProtectionWorth.gained_kgHa(
                plain(0.5).strips(new StripEvidence(8, -100, 300 * 300)).build(), o));
        assertThat(poor).isLessThan(before);
    }

    @Test
    void advice_tells_money_chance_and_evidence_side_by_side() {
        ProtectionOption o = Cases.fungicide(22, 10);
        ProtectionOption both = new ProtectionOption(
                o.date(), Placement.BOTH, o.fungicide(), o.insecticide(), false, o.passCost_usdHa(), 0, 0);
        ProtectionAdvice advice = ProtectionWorth.advise(scouted(70).build(), both);
        assertThat(advice.mayBeAdvised()).isTrue();
        Said expected = advice.why().get(0).said();
        assertThat(expected.code()).isEqualTo("protect.expected");
        assertThat(expected.values())
                .containsEntry("mean", Measure.MONEY_RATE.of(advice.worth().mean_usdHa()))
                .containsEntry("bad", Measure.MONEY_RATE.of(advice.worth().badCase_usdHa()));
        assertThat(bu(advice.why().get(0), "yield")).isCloseTo(7.6, within(.05));
        assertThat(advice.why())
                .extracting(r -> r.said().toString())
                .anyMatch(s -> s.startsWith("protect.known{known=UNDER_CANOPY"))
                .anyMatch(s -> s.startsWith(
                        "threshold.above{seen=seen.on-plants{disease=GRAY_LEAF_SPOT, shows=70, plants=100}"))
                .anyMatch(s -> s.startsWith("protect.disease-ahead{disease=GRAY_LEAF_SPOT"))
                .anyMatch(s -> s.startsWith("protect.response-above{trials="))
                .anyMatch(s -> s.matches("protect.flare.*days=\\[\\d+-07-22, \\d+-07-29, \\d+-08-05].*"));
        assertThat(advice.assumptions())
                .contains(ProtectionAssumption.EFFICACY, ProtectionAssumption.APHID_LOSS)
                .doesNotContain(ProtectionAssumption.SEVERE_HIGH);
    }

    @Test
    void a_zone_that_nobody_scouted_is_told_to_scout_first() {
        ProtectionAdvice advice = ProtectionWorth.advise(plain().build(), Cases.fungicide(22, 10));
        assertThat(advice.why())
                .hasAtLeastOneElementOfType(ProtectionReasons.ScoutFirst.class)
                .hasAtLeastOneElementOfType(SiteScore.class);
        assertThat(advice.assumptions()).contains(ProtectionAssumption.SEVERE_MODERATE);
    }

    @Test
    void tar_spot_says_that_its_weather_model_is_off() {
        ProtectionCase c = plain().lesions(Cases.counted(Disease.TAR_SPOT, 4)).build();
        assertThat(ProtectionWorth.advise(c, Cases.fungicide(22, 10)).why())
                .extracting(ProtectionReason::said)
                .contains(TarSpotModel.WHY_OFF);
    }

    @Test
    void a_pass_without_a_product_or_with_impossible_losses_is_refused() {
        ProtectionOption o = Cases.fungicide(22, 10);
        assertThatThrownBy(() -> new ProtectionOption(
                        o.date(), o.placement(), Optional.empty(), Optional.empty(), false, 20, 0, 0))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("protection.no-product");
        assertThatThrownBy(() -> new ProtectionOption(
                        o.date(), o.placement(), o.fungicide(), Optional.empty(), false, 20, 0.7, 0.4))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("protection.losses-out-of-range");
    }

    @Test
    void a_setting_outside_its_range_is_refused_with_the_range() {
        assertThatThrownBy(() -> ProtectionSettings.USUAL.with(ProtectionAssumption.EFFICACY, 0.95))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("assumption.out-of-range at EFFICACY");
    }

    /** Neither aphids nor, unless given, a view on disease. */
    private static Cases plain() {
        return Cases.zoneOnItsOwn().with(ProtectionAssumption.APHIDS_UNSEEN, 0);
    }

    private static Cases plain(double chanceSevere) {
        return plain().with(ProtectionAssumption.SEVERE_LOW, chanceSevere)
                .with(ProtectionAssumption.SEVERE_MODERATE, chanceSevere)
                .with(ProtectionAssumption.SEVERE_HIGH, chanceSevere);
    }

    private static Cases scouted(int shows) {
        return plain().site(Cases.site(3, PreviousCrop.CORN, Optional.of(WeatherRisk.MODERATE)))
                .lesions(Cases.counted(Disease.GRAY_LEAF_SPOT, shows));
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }
}
