// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.junit.jupiter.api.Test;

class GroupRunsTest {
    private static final LabelEntry A = of("A", "FRAC 3");
    private static final LabelEntry B = of("B", "FRAC 11");
    private static final LabelEntry W = of("W", "HRAC 9");
    private static final LabelBook BOOK = new LabelBook(List.of(A, B, W, of("AB", "FRAC 3", "FRAC 11")));

    private static LabelEntry of(String product, String... groups) {
        List<org.earleaf.label.ActiveIngredient> actives = new ArrayList<>();
        for (String g : groups) {
            actives.add(Labels.active("active of " + g, 1, g, Double.NaN));
        }
        return Labels.entry(product, "corn", false, actives, Map.of());
    }

    /** Products day after day; the one in capitals behind a star is asked about. */
    private static GroundJobs jobs(String... products) {
        List<GroundUse> uses = new ArrayList<>();
        for (int k = 0; k < products.length; k++) {
            boolean asked = products[k].startsWith("*");
            uses.add(new GroundUse(
                    "j" + k,
                    LocalDate.of(2026, 5, 1).plusDays(k),
                    products[k].replace("*", ""),
                    1,
                    1,
                    true,
                    asked ? GroundUse.State.ASKED : GroundUse.State.MADE));
        }
        return GroundJobs.of(uses, 1);
    }

    @Test
    void passes_in_a_row_share_a_group() {
        assertThat(GroupRuns.longest(jobs("*A"), BOOK, A)).isEqualTo(1);
        assertThat(GroupRuns.longest(jobs("A", "*A"), BOOK, A)).isEqualTo(2);
        assertThat(GroupRuns.longest(jobs("A", "B", "*A"), BOOK, A)).isEqualTo(1);
        assertThat(GroupRuns.longest(jobs("A", "AB", "*A", "A", "B", "A"), BOOK, A))
                .isEqualTo(4);
    }

    @Test
    void a_weed_spray_or_an_unknown_product_does_not_break_a_row_of_fungicides() {
        assertThat(GroupRuns.longest(jobs("A", "W", "unknown", "*A"), BOOK, A)).isEqualTo(2);
    }

    @Test
    void a_group_with_another_beside_it_does_not_stand_alone() {
        assertThat(GroupRuns.of(jobs("A", "*A"), BOOK, A)).contains("FRAC 3");
        assertThat(GroupRuns.of(jobs("AB", "*A"), BOOK, A)).isEmpty();
        assertThat(GroupRuns.of(jobs("A", "*A", "B"), BOOK, A)).contains("FRAC 3");
        assertThat(GroupRuns.of(jobs("B", "*A"), BOOK, A)).isEmpty();
    }

    @Test
    void a_product_without_groups_is_in_no_row() {
        LabelEntry none = of("N");
        assertThat(GroupRuns.longest(jobs("*N"), new LabelBook(List.of(none)), none))
                .isZero();
    }
}
