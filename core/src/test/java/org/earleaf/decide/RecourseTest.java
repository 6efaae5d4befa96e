// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Comparator;
import java.util.List;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** What must hold of a pass that another may follow, whatever the weather. */
class RecourseTest {
    private static final NitrogenOptions.Answer POOR = answer(new TestFarm().starter(20));

    private static NitrogenOptions.Answer answer(TestFarm farm) {
        return NitrogenOptions.of(farm.farm(), farm.zone(), TestFarm.ON, false, SideBySide.IN_TURN);
    }

    private static List<Option> followed(NitrogenOptions.Answer answer) {
        return answer.options().stream().filter(o -> o.then().isPresent()).toList();
    }

    @Test
    void a_pass_that_another_may_follow_is_worth_what_it_is_alone_and_what_the_other_adds() {
        assertThat(followed(POOR)).isNotEmpty().allSatisfy(o -> {
            FollowUp then = o.then().orElseThrow();
            assertThat(then.adds_usdHa()).isPositive();
            assertThat(o.worth().mean_usdHa()).isCloseTo(then.alone().mean_usdHa() + then.adds_usdHa(), within(1e-6));
            assertThat(o.worth().cost_usdHa()).isGreaterThan(then.alone().cost_usdHa());
            assertThat(then.date())
                    .isAfter(o.date().plusDays(6))
                    .isBefore(o.date().plusDays(22));
        });
    }

    @Test
    void a_second_pass_adds_more_to_a_small_first_one() {
        List<Option> today = POOR.options().stream()
                .filter(o -> o.date().equals(TestFarm.ON))
                .filter(o -> o.placement() == POOR.options().get(0).placement())
                .sorted(Comparator.comparingDouble(Option::nitrogen_kgHa))
                .toList();
        assertThat(today).hasSizeGreaterThan(1);
        Option followed =
                today.stream().filter(o -> o.then().isPresent()).findFirst().orElseThrow();
        double small = followed.then().orElseThrow().adds_usdHa();
        Option most = today.get(today.size() - 1);
        assertThat(most.nitrogen_kgHa()).isGreaterThan(followed.nitrogen_kgHa());
        double large = most.then().map(FollowUp::adds_usdHa).orElse(0.);
        assertThat(small).isGreaterThan(large);
    }

    @Test
    void what_follows_hangs_on_the_rain_and_is_told() {
        Option o = followed(POOR).get(0);
        FollowUp then = o.then().orElseThrow();
        assertThat(then.steps().stream().mapToDouble(FollowUp.Step::share).sum())
                .isCloseTo(1, within(1e-9));
        assertThat(then.steps().get(0).fromRain_mm()).isZero();
        assertThat(then.steps().get(then.steps().size() - 1).toRain_mm()).isInfinite();
        assertThat(then.steps())
                .allSatisfy(s -> assertThat(Units.lbAc(s.nitrogen_kgHa())).isIn(0.0, 40.0, 80.0));
        assertThat(o.why()).anySatisfy(r -> assertThat(r.said().code()).isEqualTo("then.look-again"));
    }

    @Test
    void a_field_that_has_enough_after_the_first_pass_is_not_driven_twice() {
        Option most = answer(new TestFarm().starter(120)).options().stream()
                .filter(o -> o.date().equals(TestFarm.ON))
                .max(Comparator.comparingDouble(Option::nitrogen_kgHa))
                .orElseThrow();
        assertThat(most.then()).isEmpty();
    }
}
