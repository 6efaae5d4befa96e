// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.Findings.lbAc;
import static org.earleaf.load.Labels.BOOK;
import static org.earleaf.load.Labels.F1;
import static org.earleaf.load.Labels.F2;
import static org.earleaf.load.Labels.f1;
import static org.earleaf.load.Labels.f2;
import static org.earleaf.load.Labels.flozAc;
import static org.earleaf.load.Labels.made;
import static org.earleaf.load.Labels.work;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelLimit;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** What labels say to a mix, and to an active ingredient that comes in more than one product. */
class LabelMixTest {
    private static final LocalDate JUNE = LocalDate.of(2026, 6, 20);
    private static final LocalDate JULY = LocalDate.of(2026, 7, 3);

    private static List<LabelFinding> check(LabelWork work, GroundUse... ground) {
        return LabelCheck.of(BOOK, work, List.of(ground));
    }

    private static LabelFinding of(List<LabelFinding> findings, String product, Enum<?> limit) {
        return findings.stream()
                .filter(f -> f.product().equals(product) && f.what() == limit)
                .findFirst()
                .orElseThrow(() -> new AssertionError(product + ", " + limit + " not in " + findings));
    }

    @Test
    void a_tank_mix_that_a_label_forbids_by_name_active_group_or_class_is_stopped() {
        for (String word : List.of("demo f2", "democonazole", "FRAC 3")) {
            LabelBook book = new LabelBook(List.of(F2, Labels.with(F1, F1.clock(), F1.actives(), Set.of(word))));
            LabelFinding stop =
                    LabelCheck.of(book, Labels.work(f1(8), f2(2)), List.of()).get(0);
            assertThat(stop.product()).isEqualTo("Demo F1");
            assertThat(stop.said()).isEqualTo(Said.of("label.never-with", "other", "Demo F2"));
        }
        LabelWork.Part oil = new LabelWork.Part("Demo Oil", 2, false, false, Set.of("COC"));
        LabelBook noOil = new LabelBook(List.of(Labels.with(F1, F1.clock(), F1.actives(), Set.of("coc"))));
        assertThat(LabelCheck.allows(LabelCheck.of(noOil, Labels.work(f1(8), oil), List.of())))
                .isFalse();
        LabelBook other =
                new LabelBook(List.of(F2, Labels.with(F1, F1.clock(), F1.actives(), Set.of("AMS", "FRAC 7"))));
        assertThat(LabelCheck.allows(LabelCheck.of(other, Labels.work(f1(8), f2(2)), List.of())))
                .isTrue();
        // Its own active ingredient is no reason against itself.
        LabelBook self = new LabelBook(List.of(Labels.with(F1, F1.clock(), F1.actives(), Set.of("demostrobin"))));
        assertThat(LabelCheck.allows(LabelCheck.of(self, Labels.work(f1(8)), List.of())))
                .isTrue();
    }

    @Test
    void the_stricter_of_two_labels_that_name_an_active_holds_even_for_a_pass_made_before() {
        List<ActiveIngredient> strict = List.of(Labels.active("democonazole", .9 * Labels.KGL, "FRAC 3", 0.15));
        LabelBook book = new LabelBook(List.of(Labels.with(F1, F1.clock(), strict, Set.of()), F2));
        List<LabelFinding> found =
                LabelCheck.of(book, Labels.work(f2(4)), List.of(made("p1", JULY, "Demo F1", flozAc(10))));
        assertThat(lbAc(found.get(0).planned())).isCloseTo(.1828, within(5e-5));
        assertThat(lbAc(found.get(0).allowed())).isCloseTo(.15, within(1e-9));
        assertThat(found.get(0).verdict()).isEqualTo(Verdict.OUTSIDE);
    }

    @Test
    void an_active_has_a_most_for_one_pass_over_all_products_of_the_mix() {
        ActiveIngredient c = Labels.active("democonazole", 3.6 * Labels.KGL, "FRAC 3", Double.NaN);
        ActiveIngredient single = new ActiveIngredient(
                c.name(), c.content(), 1, c.groups(), LabelLimit.of(Units.kgHa(.15)), LabelLimit.noneStated());
        LabelBook book = new LabelBook(List.of(F1, Labels.with(F2, F2.clock(), List.of(single), Set.of())));
        List<LabelFinding> found = LabelCheck.of(book, Labels.work(f2(4), f1(10)), List.of());
        LabelFinding one = of(found, "democonazole", LabelFinding.Limit.ACTIVE_SINGLE);
        assertThat(one.verdict()).isEqualTo(Verdict.OUTSIDE);
        assertThat(lbAc(one.by())).isCloseTo(.03281, within(5e-6));
        assertThat(of(LabelCheck.of(book, Labels.work(f2(4)), List.of()), "democonazole", one.what())
                        .verdict())
                .isEqualTo(Verdict.WITHIN);
    }

    @Test
    void a_pass_whose_actives_nobody_entered_stops_the_sum() {
        List<LabelFinding> found = check(work(f1(10)), made("p1", JUNE, "Unknown", 1));
        assertThat(found.get(0).product()).isEqualTo("unknown");
        assertThat(found.get(0).said()).isEqualTo(Said.of("label.actives-not-entered", "day", JUNE));
        assertThat(found.get(0).verdict()).isEqualTo(Verdict.NOT_ENTERED);
        GroundUse plain = new GroundUse("p2", JUNE, "UAN 32", 100, 32, false, GroundUse.State.MADE);
        assertThat(LabelCheck.allows(check(work(f1(10)), plain))).isTrue();
    }

    @Test
    void one_group_alone_twice_in_a_row_is_minded_and_never_stops() {
        List<LabelFinding> found = check(work(f2(4)), made("p1", JUNE, "Demo F2", flozAc(1)));
        LabelFinding mind = of(found, "Demo F2", LabelFinding.Limit.GROUPS);
        assertThat(mind.verdict()).isEqualTo(Verdict.MIND);
        assertThat(mind.isStop()).isFalse();
        assertThat(mind.said()).isEqualTo(Said.of("label.group-alone", "group", "FRAC 3"));
        assertThat(check(work(f2(2)), made("p1", JUNE, "Demo F1", flozAc(8))))
                .noneMatch(f -> f.what() == LabelFinding.Limit.GROUPS);
    }
}
