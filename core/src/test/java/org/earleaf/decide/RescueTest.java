// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.function.Predicate;
import org.earleaf.brief.Brief;
import org.earleaf.brief.Briefs;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.field.Placement;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** What can still be done when none of the farm's own rigs fits, and what it costs. */
class RescueTest {
    private static NitrogenOptions.Answer answer(TestFarm farm) {
        return NitrogenOptions.of(farm.farm(), farm.zone(), TestFarm.ON, false, SideBySide.IN_TURN);
    }

    @Test
    void nothing_is_hired_while_an_own_rig_fits() {
        assertThat(answer(new TestFarm()).options().stream()
                        .filter(o -> o.date().equals(TestFarm.ON)))
                .isNotEmpty()
                .noneMatch(o -> o.rig().startsWith("hired"));
    }

    @Test
    void a_high_rig_and_urea_by_air_are_weighed_once_no_own_rig_fits_and_the_reason_is_told() {
        List<Option> all = answer(new TestFarm().starter(20).clearance(20)).options();
        assertThat(all.stream().map(Option::rig).distinct())
                .containsExactlyInAnyOrder("hired high-clearance rig", "hired aircraft");
        assertThat(all).filteredOn(o -> o.placement() == Placement.BY_AIR).allSatisfy(o -> {
            assertThat(o.product()).isEqualTo("urea");
            assertThat(o.liquid()).isFalse();
            assertThat(o.productRate()).isCloseTo(o.nitrogen_kgHa() / .46, within(1e-9));
        });
        assertThat(all).allSatisfy(o -> assertThat(o.why())
                .anySatisfy(r -> assertThat(r.said().code()).isEqualTo("hire.at-usual-price")));
    }

    @Test
    void the_farm_sets_what_hiring_costs_and_how_tall_a_crop_the_hired_rig_clears() {
        TestFarm dear = new TestFarm().starter(20).clearance(20).setting(Setting.HIRED_RIG_COST, 80 / Units.HA_PER_AC);
        Option same = onRow(answer(dear), o -> true);
        Option cheap =
                onRow(answer(new TestFarm().starter(20).clearance(20)), o -> o.nitrogen_kgHa() == same.nitrogen_kgHa());
        assertThat(alone(same).cost_usdHa() - alone(cheap).cost_usdHa())
                .isCloseTo((80 - 16) / Units.HA_PER_AC, within(1e-6));
        TestFarm low = new TestFarm().starter(20).clearance(20).setting(Setting.HIRED_RIG_CLEARANCE, .6);
        assertThat(answer(low).options()).isNotEmpty().allMatch(o -> o.rig().equals("hired aircraft"));
    }

    private static Worth alone(Option o) {
        return o.then().map(FollowUp::alone).orElse(o.worth());
    }

    private static Option onRow(NitrogenOptions.Answer a, Predicate<Option> which) {
        return a.options().stream()
                .filter(o -> o.placement() == Placement.ROW_BASE && o.date().equals(TestFarm.ON) && which.test(o))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void the_brief_proposes_the_rescue_or_says_why_nothing_is_best() {
        Farm poor = new TestFarm().starter(20).clearance(20).farm();
        Brief brief = Briefs.of(poor, TestFarm.ON);
        assertThat(brief.passes()).hasSize(1);
        assertThat(brief.passes().get(0).rig()).startsWith("hired");
        Farm fed = new TestFarm().starter(200).clearance(20).farm();
        Brief none = Briefs.of(fed, TestFarm.ON);
        assertThat(none.passes()).isEmpty();
        assertThat(none.leftOut())
                .singleElement()
                .satisfies(l -> assertThat(l.reason().toString()).contains("left-out.hire-loses{rig=hired"));
    }
}
