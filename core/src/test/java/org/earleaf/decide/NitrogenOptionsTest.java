// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.field.Placement;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** What must hold of advice whatever the weather: directions, limits, and agreement with the season model itself. */
class NitrogenOptionsTest {
    /** Of the farm as most tests take it, worked out once. */
    private static final NitrogenOptions.Answer USUAL = answer(new TestFarm());

    private static NitrogenOptions.Answer answer(TestFarm farm) {
        return NitrogenOptions.of(farm.farm(), farm.zone(), TestFarm.ON, false, SideBySide.IN_TURN);
    }

    private static Outlook outlook(TestFarm farm) {
        return Outlooks.of(farm.farm(), farm.zone(), TestFarm.ON, false);
    }

    private static double bestRate(TestFarm farm) {
        return answer(farm).options().get(0).nitrogen_kgHa();
    }

    @Test
    void options_cover_dates_placements_rates_and_rigs_best_first() {
        List<Option> all = USUAL.options();
        assertThat(all.stream().map(Option::placement).distinct()).contains(Placement.ROW_BASE);
        assertThat(all.stream().map(Option::date).distinct().count()).isGreaterThan(3);
        assertThat(all)
                .isSortedAccordingTo((a, b) ->
                        Double.compare(b.worth().mean_usdHa(), a.worth().mean_usdHa()));
        assertThat(all).allSatisfy(o -> {
            assertThat(o.worth().p10_usdHa()).isLessThanOrEqualTo(o.worth().p90_usdHa());
            assertThat(o.worth().badCase_usdHa()).isLessThanOrEqualTo(o.worth().mean_usdHa() + 1e-9);
            assertThat(o.why()).isNotEmpty().allSatisfy(r -> assertThat(r.said().code())
                    .isNotBlank());
        });
    }

    @Test
    void dearer_nitrogen_never_raises_the_rate_and_dearer_corn_never_lowers_it() {
        assertThat(bestRate(new TestFarm().nitrogen(1.2))).isLessThanOrEqualTo(bestRate(new TestFarm().nitrogen(.6)));
        assertThat(bestRate(new TestFarm().corn(6.5))).isGreaterThanOrEqualTo(bestRate(new TestFarm().corn(3.5)));
    }

    @Test
    void a_well_fed_field_is_left_alone() {
        assertThat(answer(new TestFarm().starter(220)).proposed()).isEmpty();
        assertThat(USUAL.proposed()).isPresent();
    }

    @Test
    void a_taller_crop_never_adds_reach() {
        for (OutOfReach shorter : outlook(new TestFarm().height(90)).reach()) {
            OutOfReach taller = outlook(new TestFarm().height(130)).reach().stream()
                    .filter(r -> r.rig().equals(shorter.rig()))
                    .findFirst()
                    .orElseThrow();
            LocalDate never = LocalDate.MAX;
            assertThat(taller.date().orElse(never))
                    .isBeforeOrEqualTo(shorter.date().orElse(never));
        }
    }

    @Test
    void nothing_is_proposed_that_no_rig_can_reach() {
        NitrogenOptions.Answer low = answer(new TestFarm().clearance(20).alone());
        assertThat(low.options()).isEmpty();
        assertThat(low.proposed()).isEmpty();
    }

    /** Minnesota trials as summarised by state extension: nothing over the leaves beyond V7. */
    @Test
    void nothing_is_sprayed_over_leaves_beyond_the_seventh_collar() {
        NitrogenOptions.Answer a = USUAL;
        assertThat(a.outlook().leafCollars()).isGreaterThan(7);
        assertThat(a.options()).noneMatch(o -> o.placement() == Placement.BROADCAST);
    }

    @Test
    void weather_after_the_day_is_not_used_without_hindsight() {
        Option dry = answer(new TestFarm().rainAfter(0)).options().get(0);
        Option wet = answer(new TestFarm().rainAfter(3)).options().get(0);
        assertThat(dry).isEqualTo(wet);
    }

    @Test
    void worth_is_the_gain_of_the_season_with_the_pass_over_the_season_without() {
        TestFarm farm = new TestFarm();
        NitrogenOptions.Answer a = answer(farm);
        Option o = a.options().get(0);
        Outlook with = Outlooks.with(farm.farm(), farm.zone(), TestFarm.ON, false, o);
        double gained =
                Units.buAc(with.yield_kgHa().p50() - a.outlook().yield_kgHa().p50());
        double meanGained = Units.buAc(o.worth().meanYieldGain_kgHa());
        assertThat(gained).isCloseTo(meanGained, within(0.5 * meanGained));
        assertThat(with.nShort().probability())
                .isLessThanOrEqualTo(a.outlook().nShort().probability());
    }

    @Test
    void the_same_question_has_the_same_answer_to_the_last_bit() {
        assertThat(answer(new TestFarm()).options()).isEqualTo(USUAL.options());
    }
}
