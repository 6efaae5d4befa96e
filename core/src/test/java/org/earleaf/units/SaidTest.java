// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SaidTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 1);

    @Test
    void equals_by_code_and_values_and_keeps_their_order() {
        Said said = Said.of("nitrogen.short-about", "day", DAY, "chance", Measure.CHANCE.of(.8));
        assertThat(said).isEqualTo(Said.of("nitrogen.short-about", "day", DAY, "chance", Measure.CHANCE.of(.8)));
        assertThat(said).isNotEqualTo(Said.of("nitrogen.short-about", "day", DAY.plusDays(1)));
        assertThat(said.values().keySet()).containsExactly("day", "chance");
    }

    @Test
    void refuses_values_that_no_catalogue_can_tell() {
        assertThatThrownBy(() -> Said.of("a.b", "x", Optional.of(1))).hasMessageContaining("java.util.Optional");
        assertThatThrownBy(() -> Said.of("a.b", "x", List.of(new Object()))).hasMessageContaining("java.lang.Object");
        assertThatThrownBy(() -> Said.of("a.b", "x", null)).hasMessageContaining("null");
        assertThatThrownBy(() -> Said.of("a.b", "x")).hasMessageContaining("pairs");
        assertThatThrownBy(() -> Said.of("a.b", "x", 1, "x", 2)).hasMessageContaining("twice");
        assertThatThrownBy(() -> Said.of("A sentence.")).hasMessageContaining("code");
    }

    @Test
    void cannot_be_changed_from_outside() {
        List<Object> list = new ArrayList<>(List.of("a"));
        Said said = Said.of("a.b", "list", list);
        list.add("b");
        assertThat(said.values()).containsEntry("list", List.of("a"));
        assertThatThrownBy(() -> said.values().put("more", 1)).isInstanceOf(UnsupportedOperationException.class);
    }

    @Test
    void a_problem_with_a_code_tells_logs_the_code_the_place_and_what_was_found() {
        Problem problem = Problem.of(
                "rate.above-most",
                Said.of("where.line", "file", "passes.csv", "line", 3),
                Said.text("900 lb N/ac"),
                "most",
                Measure.NITROGEN_RATE.of(336));
        assertThat(new EarleafException(problem))
                .hasMessage("rate.above-most at where.line{file=passes.csv, line=3}: found 900 lb N/ac");
        assertThat(problem.next().code()).isEqualTo("problem.rate.above-most.todo");
        assertThat(problem.at(Said.text("line 4")).code()).isEqualTo("rate.above-most");
    }
}
