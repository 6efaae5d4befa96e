// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import java.util.Map;
import java.util.Set;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.load.Labels;
import org.earleaf.load.LoadPlan;
import org.earleaf.load.LoadPlanner;
import org.earleaf.load.LoadSheet;
import org.earleaf.load.Recipes;
import org.earleaf.load.TankAdvice;
import org.earleaf.load.TankLimit;
import org.earleaf.units.EarleafException;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** What labels and kinds of product add to a plan of loads. */
class MixFactsTest {
    private static final MixLine F1 = Recipes.line("Demo F1", 10, "fl oz/ac", "SC");
    private static final MixLine AMS = Recipes.line("AMS", 8.5, "lb/100 gal", "AMS");
    private static final MixLine OIL = Recipes.line("Oil", 1, "% v/v", "COC");
    private static final MixLine SPREADER = Recipes.line("Spreader", .25, "% v/v", "NIS");

    private static LabelEntry f1(Set<String> after, Set<String> never) {
        return RecordCopy.with(RecordCopy.with(Labels.F1, "inTank.after", after), "inTank.neverWith", never);
    }

    private static MixFacts facts(double stage, LabelEntry... entries) {
        Product fungicide = new Product("demo f1", "SC", 1, 1, "usd/gal", null, "", "", ProductKind.FUNGICIDE);
        return new MixFacts(new LabelBook(List.of(entries)), List.of(fungicide), "corn", stage, Set.of());
    }

    private static LoadPlan plan(MixFacts facts, MixLine... lines) {
        return LoadPlanner.plan(new LoadJob(
                List.of(lines),
                Recipes.ac(40),
                Recipes.gpa(15),
                Recipes.gal(1000),
                Recipes.gal(5),
                0,
                LoadJob.Split.EQUAL,
                Set.of(),
                facts));
    }

    private static List<String> order(LoadPlan plan) {
        return plan.loads().get(0).steps().stream()
                .filter(s -> s.part() == MixStep.Part.PRODUCT)
                .map(MixStep::product)
                .toList();
    }

    @Test
    void a_label_s_word_on_order_comes_before_the_rank_and_is_the_reason() {
        assertThat(order(plan(MixFacts.NONE, F1, SPREADER))).containsExactly("Demo F1", "Spreader");
        LoadPlan told = plan(facts(31, f1(Set.of("nis"), Set.of())), F1, SPREADER);
        assertThat(order(told)).containsExactly("Spreader", "Demo F1");
        assertThat(told.loads().get(0).steps().get(2).before()).containsExactly("Spreader");
        assertThat(told.loads().get(0).steps().get(1).before()).isEmpty();
        assertThat(LoadSheet.of(told, "", java.util.Optional.empty(), List.of(), false)
                        .get(0)
                        .part()
                        .products())
                .extracting(LoadSheet.Goes::product)
                .containsExactly("Spreader", "Demo F1");
        assertThat(order(plan(facts(31, f1(Set.of("spreader"), Set.of())), F1, SPREADER)))
                .containsExactly("Spreader", "Demo F1");
        assertThat(order(plan(facts(31, f1(Set.of("WC"), Set.of())), F1, AMS))).containsExactly("AMS", "Demo F1");
    }

    @Test
    void labels_that_each_want_the_other_first_are_refused() {
        LabelEntry i1 = Labels.entry("Spreader", "corn", false, List.of(), Map.of());
        MixFacts circle =
                facts(31, f1(Set.of("Spreader"), Set.of()), RecordCopy.with(i1, "inTank.after", Set.of("SC")));
        assertThatThrownBy(() -> plan(circle, F1, SPREADER))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("[Demo F1, Spreader]");
    }

    @Test
    void what_a_label_forbids_in_one_tank_is_said_and_stops() {
        TankAdvice advice =
                plan(facts(31, f1(Set.of(), Set.of("coc"))), F1, OIL).advice();
        assertThat(advice.forbidden())
                .containsExactly(Said.of("mix.label-forbids", "product", "Demo F1", "other", "Oil"));
        assertThat(advice.isStop()).isTrue();
        TankAdvice good =
                plan(facts(31, f1(Set.of(), Set.of("coc"))), F1, SPREADER).advice();
        assertThat(good.forbidden()).isEmpty();
        assertThat(good.isStop()).isFalse();
    }

    @Test
    void the_kind_of_a_product_lets_a_rule_speak_at_its_stage() {
        TankAdvice early = plan(facts(12, Labels.F1), F1, SPREADER).advice();
        assertThat(early.quarrels()).extracting(MixRules.Found::id).containsExactly("C02");
        assertThat(early.isStop()).isTrue();
        assertThat(plan(facts(31, Labels.F1), F1, SPREADER).advice().quarrels()).isEmpty();
        TankAdvice minded = plan(
                        MixFacts.NONE, Recipes.line("A", 4, "fl oz/ac", "EC"), Recipes.line("B", 2, "oz/ac", "WG"))
                .advice();
        assertThat(minded.quarrels()).extracting(MixRules.Found::weight).containsExactly(MixRules.Weight.MIND);
        assertThat(minded.isStop()).isFalse();
    }

    @Test
    void limits_jar_and_cleanout_come_with_the_plan_and_its_sheets() {
        LoadPlan plan = plan(facts(31, Labels.F1), F1, SPREADER);
        TankAdvice advice = plan.advice();
        assertThat(advice.limits())
                .extracting(TankLimit::item)
                .contains(LabelItem.REENTRY, LabelItem.HARVEST)
                .doesNotContain(LabelItem.SEASON);
        assertThat(advice.jar()).isPresent();
        assertThat(advice.jarAsked()).isFalse();
        assertThat(advice.cleanout().heel_m3()).isEqualTo(Recipes.gal(5));
        assertThat(LoadSheet.of(plan, "", java.util.Optional.empty(), List.of(), false)
                        .get(0)
                        .advice())
                .isEqualTo(advice);
        assertThat(plan(MixFacts.NONE, F1).advice().jar()).isEmpty();
    }

    @Test
    void a_nitrogen_solution_that_carries_a_mix_asks_for_a_jar_test() {
        MixLine uan = Recipes.line("UAN 32", 12, "gal/ac", "SL");
        TankAdvice advice = plan(facts(8, Labels.F1), F1, uan).advice();
        assertThat(advice.jarAsked()).isTrue();
        assertThat(facts(8).words(uan)).contains("nitrogen solution", "sl", "uan 32");
        assertThat(plan(facts(8, Labels.F1), F1, Recipes.line("UAN 32", 2, "gal/ac", "SL"))
                        .advice()
                        .jarAsked())
                .isFalse();
    }
}
