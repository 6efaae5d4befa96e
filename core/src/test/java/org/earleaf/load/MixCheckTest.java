// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.load.LabelFinding.Verdict;
import org.earleaf.mix.LabelWork;
import org.earleaf.mix.MixRules;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** What a load is told of its mix and of crops that follow; the rules are those of the table of quarrels. */
class MixCheckTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 20);
    private static final LabelEntry F1 = RecordCopy.with(Labels.F1, "plantBack_d", Map.of("alfalfa", 29.5));
    private static final LabelEntry H2 = RecordCopy.with(
            Labels.entry("Demo H2", "soybean", false, List.of(Labels.active("demothodim", .2, "HRAC 1", 1)), Map.of()),
            "plantBack_d",
            Map.of("corn", 30.0));
    private static final LabelBook BOOK = new LabelBook(List.of(F1, H2));

    private static LabelWork.Part part(String product, String... classes) {
        return new LabelWork.Part(product, 1, false, true, Set.of(classes));
    }

    private static List<LabelFinding> of(LabelWork work, GroundUse... ground) {
        return MixCheck.of(BOOK, work, List.of(ground));
    }

    @Test
    void a_quarrel_that_stops_is_outside_and_others_are_to_be_minded() {
        LabelWork early = Works.stage(Labels.work(part("Demo X", "fungicide"), part("Oil", "COC")), 12);
        assertThat(of(early)).singleElement().satisfies(f -> {
            assertThat(f.verdict()).isEqualTo(Verdict.OUTSIDE);
            assertThat(f.isStop()).isTrue();
            assertThat(f.sentence().code()).isEqualTo("label.finding-mix");
            assertThat(f.said()).isEqualTo(Said.of("mix.quarrel", "rule", MixRules.Rule.C02));
        });
        LabelWork grit = Labels.work(part("Lime", "calcium"), part("AMS", "AMS"));
        assertThat(of(grit)).extracting(LabelFinding::verdict).containsExactly(Verdict.OUTSIDE);
        LabelWork dry = Labels.work(part("A", "EC"), part("B", "WG"));
        assertThat(of(dry)).extracting(LabelFinding::verdict).containsExactly(Verdict.MIND);
    }

    @Test
    void what_went_on_this_season_counts_and_what_went_before_it_does_not() {
        LabelBook phosphate = new LabelBook(List.of(
                Labels.entry("Soil I", "corn", false, List.of(Labels.active("x", .1, "IRAC 1B", 1)), Map.of())));
        LabelWork work = Works.stage(Labels.work(part("H", "HRAC 2")), 3);
        GroundUse now = Labels.made("before", DAY.minusDays(60), "Soil I", 1);
        GroundUse longAgo = Labels.made("before", work.standing().cropBegins().minusDays(1), "Soil I", 1);
        GroundUse first = Labels.made("before", work.standing().cropBegins(), "Soil I", 1);
        assertThat(MixCheck.of(phosphate, work, List.of(now))).hasSize(1);
        assertThat(MixCheck.of(phosphate, work, List.of(first))).hasSize(1);
        assertThat(MixCheck.of(phosphate, work, List.of(longAgo))).isEmpty();
    }

    @Test
    void crops_that_may_not_follow_are_told_with_their_day() {
        assertThat(of(Labels.work(DAY, Labels.f1(10))))
                .extracting(LabelFinding::said)
                .containsExactly(
                        Said.of("label.plant-back-after", "crop", "alfalfa", "day", LocalDate.of(2026, 8, 19)));
    }

    @Test
    void an_earlier_pass_whose_label_keeps_this_crop_off_is_told() {
        LabelWork work = Labels.work(DAY, part("X"));
        assertThat(of(work, Labels.made("a", DAY.minusDays(29), "demo h2", 1)))
                .extracting(LabelFinding::said)
                .containsExactly(Said.of(
                        "label.plant-back-earlier", "days", 29L, "crop", "corn", "day", LocalDate.of(2026, 7, 21)));
        assertThat(of(work, Labels.made("a", DAY.minusDays(30), "Demo H2", 1))).isEmpty();
        assertThat(of(work, Labels.made("a", DAY.plusDays(1), "Demo H2", 1))).isEmpty();
        assertThat(of(work, Labels.made("a", DAY, "Demo H2", 1))).hasSize(1);
        assertThat(of(work, Labels.made("a", DAY.minusDays(1), "Demo F1", 1))).isEmpty();
    }

    @Test
    void of_several_entries_of_a_product_the_one_that_counts_and_the_longest_time_hold() {
        LabelEntry older = RecordCopy.with(H2, "plantBack_d", Map.of("corn", 90.0));
        LabelEntry alfalfa =
                RecordCopy.with(RecordCopy.with(H2, "title.crop", "alfalfa"), "plantBack_d", Map.of("corn", 45.0));
        LabelEntry waiting = RecordCopy.with(older, "look", LabelEntry.Look.first("A", Labels.NOW));
        LabelBook book = new LabelBook(List.of(older, H2, alfalfa, waiting));
        assertThat(book.plantBack_d(" demo h2", "Corn")).isEqualTo(45);
        assertThat(book.plantBack_d("Demo H2", "wheat")).isZero();
        assertThat(book.plantBack_d("Demo X", "corn")).isZero();
    }
}
