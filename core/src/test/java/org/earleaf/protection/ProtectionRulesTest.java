// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Disease;
import org.earleaf.field.Incidence;
import org.earleaf.field.PreviousCrop;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.LesionSighting;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.ProtectionReason;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Rules of extension services on when not to spray; the sentences are our own. */
class ProtectionRulesTest {
    private static final SiteFacts SUSCEPTIBLE = Cases.site(3, PreviousCrop.CORN, Optional.of(WeatherRisk.MODERATE));

    @Test
    void a_pass_at_tassel_above_the_threshold_may_be_advised() {
        assertThat(refusals(scouted(80), on(3, false))).isEmpty();
    }

    @Test
    void nothing_is_advised_from_r4_on() {
        assertThat(refusals(scouted(80), on(27, false))).isEmpty();
        assertThat(refusals(scouted(80), on(29, false)))
                .hasOnlyElementsOfType(ProtectionRules.TooLate.class)
                .hasSize(1);
        assertThat(refusals(scouted(80), on(45, false))).hasOnlyElementsOfType(ProtectionRules.TooLate.class);
    }

    @Test
    void southern_rust_on_the_ear_leaf_may_still_be_treated_at_r4_and_not_at_r5() {
        LesionSighting leaf = Cases.severity(Disease.SOUTHERN_RUST, 0.02);
        LesionSighting counted = new LesionSighting(
                leaf.date(), leaf.disease(), leaf.leaf(), Optional.of(new Incidence(70, 100)), leaf.severity());
        assertThat(refusals(Cases.zoneOnItsOwn().site(SUSCEPTIBLE).lesions(leaf), on(32, false)))
                .hasOnlyElementsOfType(ProtectionRules.Undecided.class);
        Cases rust = Cases.zoneOnItsOwn().site(SUSCEPTIBLE).lesions(counted);
        assertThat(refusals(rust, on(32, false))).isEmpty();
        assertThat(refusals(rust, on(45, false))).hasOnlyElementsOfType(ProtectionRules.TooLate.class);
    }

    @Test
    void no_surfactant_between_eight_leaves_and_tassel_in_any_future() {
        // Tassel falls between 10 and 14 July: on the 13th one future in five is not there yet.
        assertThat(refusals(scouted(80), on(1, true))).hasAtLeastOneElementOfType(ProtectionRules.ArrestedEars.class);
        assertThat(refusals(scouted(80), on(2, true))).isEmpty();
        assertThat(refusals(scouted(80).with(ProtectionAssumption.BEFORE_TASSEL, 0.3), on(1, false)))
                .isEmpty();
        assertThat(refusals(scouted(80).with(ProtectionAssumption.BEFORE_TASSEL, 0.3), on(1, true)))
                .hasOnlyElementsOfType(ProtectionRules.ArrestedEars.class);
    }

    @Test
    void a_surfactant_with_an_insecticide_alone_arrests_ears_as_well() {
        ProtectionOption both =
                Cases.with(on(-6, true), Insecticide.Reach.SELECTIVE, "aphids by the neighbour's count");
        ProtectionOption alone = new ProtectionOption(
                both.date(), both.placement(), Optional.empty(), both.insecticide(), true, 20, 0, 0);
        assertThat(refusals(Cases.zoneOnItsOwn(), alone)).hasOnlyElementsOfType(ProtectionRules.ArrestedEars.class);
    }

    @Test
    void before_tassel_it_is_too_early() {
        assertThat(refusals(scouted(80), on(-6, false))).hasOnlyElementsOfType(ProtectionRules.TooEarly.class);
        assertThat(refusals(scouted(80), on(-40, true))).hasOnlyElementsOfType(ProtectionRules.TooEarly.class);
    }

    @Test
    void one_pass_after_tassel_is_enough_and_an_early_one_does_not_count() {
        assertThat(refusals(scouted(80).made(Cases.VT.plusDays(1)), on(12, false)))
                .hasOnlyElementsOfType(ProtectionRules.SecondPass.class);
        assertThat(refusals(scouted(80).made(Cases.VT.minusDays(30)), on(12, false)))
                .isEmpty();
    }

    @Test
    void below_the_threshold_undecided_or_unseen_nothing_is_sprayed() {
        assertThat(refusals(scouted(12), on(3, false)))
                .hasOnlyElementsOfType(ProtectionRules.BelowThreshold.class)
                .singleElement()
                .extracting(r -> r.said().toString())
                .asString()
                .startsWith("protect.below-threshold{finding=threshold.below{seen=seen.on-plants")
                .contains("shows=12, plants=100");
        assertThat(refusals(scouted(55), on(3, false)))
                .hasOnlyElementsOfType(ProtectionRules.Undecided.class)
                .singleElement()
                .extracting(r -> r.said().toString())
                .asString()
                .contains("threshold.look-at-more");
        assertThat(refusals(Cases.zoneOnItsOwn(), on(3, false)))
                .hasOnlyElementsOfType(ProtectionRules.NotScouted.class);
    }

    @Test
    void an_insecticide_along_with_it_needs_a_reason_of_its_own() {
        ProtectionOption both = Cases.with(on(3, false), Insecticide.Reach.SELECTIVE, "");
        assertThat(refusals(scouted(80), both)).hasOnlyElementsOfType(ProtectionRules.InsecticideWithoutReason.class);
        assertThat(refusals(dry(80).aphids(60, 10, 0), both))
                .hasOnlyElementsOfType(ProtectionRules.InsecticideWithoutReason.class);
        assertThat(refusals(dry(80).aphids(60, 40, 0), both)).isEmpty();
        assertThat(refusals(scouted(80).aphids(60, 40, 0), both))
                .hasOnlyElementsOfType(ProtectionRules.InsecticideWithoutReason.class);
        assertThat(refusals(
                        scouted(80), Cases.with(on(3, false), Insecticide.Reach.BROAD, "egg masses on 8 % of plants")))
                .isEmpty();
    }

    @Test
    void with_aphids_or_their_enemies_present_a_broad_insecticide_is_refused() {
        ProtectionOption broad = Cases.with(on(3, false), Insecticide.Reach.BROAD, "");
        assertThat(refusals(dry(80).aphids(60, 80, 0.4), broad))
                .hasOnlyElementsOfType(ProtectionRules.PreferSelective.class);
    }

    /** What words say of an insecticide and what its dollars say, over counts, water, stage and company. */
    @Test
    void words_on_aphids_and_their_dollars_agree() {
        for (double perPlant : new double[] {5, 20, 40, 60, 100, 300, 500, 1500}) {
            for (int plants : new int[] {5, 20, 40, 70, 95}) {
                for (boolean dry : new boolean[] {true, false}) {
                    for (int day : new int[] {3, 8, 14}) {
                        agree(dry(80).site(Cases.susceptible(dry)).aphids(perPlant, plants, 0), day);
                    }
                }
            }
        }
    }

    private static void agree(Cases zone, int day) {
        LocalDate date = Cases.VT.plusDays(day);
        ProtectionAdvice alone = ProtectionWorth.advise(zone.build(), Cases.insecticide(date, 10));
        ProtectionAdvice without = ProtectionWorth.advise(zone.build(), on(day, false));
        ProtectionAdvice with =
                ProtectionWorth.advise(zone.build(), Cases.with(on(day, false), Insecticide.Reach.SELECTIVE, ""));
        double adds_usdHa = with.worth().mean_usdHa() - without.worth().mean_usdHa();
        said(alone, alone.worth().mean_usdHa());
        said(with, adds_usdHa);
    }

    /** May be made: it gains. Refused as too dear: it loses. The dollars told are those it is worth. */
    private static void said(ProtectionAdvice advice, double adds_usdHa) {
        boolean dear = advice.refusals().stream().anyMatch(ProtectionRules.InsecticideLoses.class::isInstance);
        if (advice.mayBeAdvised()) {
            assertThat(adds_usdHa).isPositive();
        }
        if (dear) {
            assertThat(adds_usdHa).isNotPositive();
        }
        assertThat(advice.why())
                .filteredOn(ProtectionRules.AphidsSaved.class::isInstance)
                .singleElement()
                .satisfies(r -> {
                    ProtectionRules.AphidsSaved saved = (ProtectionRules.AphidsSaved) r;
                    assertThat(saved.worth_usdHa() - saved.cost_usdHa()).isCloseTo(adds_usdHa, within(1e-6));
                });
    }

    /** Illinois extension 1997: from 50 a plant on half of the plants in drought, from 400 where there is water. */
    @Test
    void at_the_published_level_an_insecticide_about_pays_for_itself() {
        assertThat(net_usdAc(true, 50, 50)).isBetween(-8.0, 8.0);
        assertThat(net_usdAc(false, 400, 50)).isBetween(-8.0, 8.0);
        assertThat(net_usdAc(true, 20, 30)).isNegative();
        assertThat(net_usdAc(false, 50, 70)).isNegative();
        assertThat(net_usdAc(true, 200, 70)).isPositive();
    }

    private static double net_usdAc(boolean dry, double perPlant, int plants) {
        ProtectionCase c = Cases.zoneOnItsOwn()
                .site(Cases.susceptible(dry))
                .aphids(perPlant, plants, 0)
                .build();
        return Units.HA_PER_AC
                * ProtectionWorth.advise(c, Cases.insecticide(Cases.VT.plusDays(3), 10))
                        .worth()
                        .mean_usdHa();
    }

    @Test
    void tar_spot_found_may_be_treated_from_tassel_to_milk_and_its_doubt_and_the_next_look_are_told() {
        Cases zone = Cases.zoneOnItsOwn()
                .site(Cases.site(5, PreviousCrop.SOYBEAN, Optional.empty()))
                .lesions(Cases.counted(Disease.TAR_SPOT, 5));
        assertThat(refusals(zone, on(3, false))).isEmpty();
        assertThat(refusals(zone, on(18, false))).isEmpty();
        assertThat(refusals(zone, on(29, false))).hasOnlyElementsOfType(ProtectionRules.TooLate.class);
        ProtectionAdvice advice = ProtectionWorth.advise(zone.build(), on(3, false));
        assertThat(advice.why())
                .filteredOn(TarSpotFound.class::isInstance)
                .singleElement()
                .satisfies(r -> {
                    TarSpotFound found = (TarSpotFound) r;
                    assertThat(found.spread().low()).isLessThan(found.spread().likely());
                    assertThat(found.spread().high())
                            .isGreaterThan(3 * found.spread().likely());
                    assertThat(found.next().from()).isEqualTo(found.seen().plusDays(7));
                    assertThat(found.next().by()).isEqualTo(found.seen().plusDays(14));
                });
        assertThat(advice.why()).extracting(r -> r.said().code()).contains("tar-spot.next", "tar-spot.off");
        assertThat(ProtectionWorth.advise(
                                zone.lesions(Cases.counted(Disease.TAR_SPOT, 0)).build(), on(3, false))
                        .why())
                .noneMatch(TarSpotFound.class::isInstance);
    }

    private static java.util.List<ProtectionReason> refusals(Cases zone, ProtectionOption o) {
        return ProtectionWorth.advise(zone.build(), o).refusals();
    }

    private static Cases scouted(int shows) {
        return Cases.zoneOnItsOwn().site(SUSCEPTIBLE).lesions(Cases.counted(Disease.GRAY_LEAF_SPOT, shows));
    }

    private static Cases dry(int shows) {
        return scouted(shows).site(Cases.susceptible(true));
    }

    private static ProtectionOption on(int daysAfterTassel, boolean surfactant) {
        LocalDate date = Cases.VT.plusDays(daysAfterTassel);
        return Cases.fungicide(date, FungicideKind.DMI_QOI, surfactant, 22, 10);
    }
}
