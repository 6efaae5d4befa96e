// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

class MixRulesTest {
    private static List<String> ids(double stage, String crop, Set<String> earlier, String... parts) {
        List<Set<String>> mix = java.util.Arrays.stream(parts)
                .map(p -> Set.of(p.split(" \\+ ")))
                .toList();
        return MixRules.of(mix, earlier, crop, stage).stream()
                .map(MixRules.Found::id)
                .toList();
    }

    @Test
    void surfactant_with_a_fungicide_is_stopped_between_v8_and_tassel_of_corn() {
        assertThat(ids(8, "Corn", Set.of(), "NIS", "sc + fungicide")).containsExactly("C02");
        assertThat(ids(29.9, "corn", Set.of(), "NIS", "SC + fungicide")).containsExactly("C02");
        assertThat(ids(7.9, "corn", Set.of(), "NIS", "SC + fungicide")).isEmpty();
        assertThat(ids(30, "corn", Set.of(), "NIS", "SC + fungicide")).isEmpty();
        assertThat(ids(12, "soybean", Set.of(), "NIS", "SC + fungicide")).isEmpty();
        assertThat(ids(12, "corn", Set.of(), "SC + fungicide")).isEmpty();
        MixRules.Found stop = MixRules.of(List.of(Set.of("NIS"), Set.of("fungicide")), Set.of(), "corn", 12)
                .get(0);
        assertThat(stop.weight()).isEqualTo(MixRules.Weight.STOP);
        assertThat(stop.rule()).isEqualTo(MixRules.Rule.C02);
    }

    @Test
    void a_word_that_one_product_bears_alone_needs_no_other() {
        assertThat(ids(3, "corn", Set.of(), "DRIFT")).containsExactly("C08");
        // One product that bears both words is not two.
        assertThat(ids(3, "corn", Set.of(), "EC + WG")).isEmpty();
        assertThat(ids(3, "corn", Set.of(), "WG", "EC")).containsExactly("C03");
    }

    @Test
    void an_organophosphate_earlier_in_the_season_stops_some_herbicides_on_corn() {
        assertThat(ids(5, "corn", Set.of("IRAC 1B"), "HRAC 2")).containsExactly("C06");
        assertThat(ids(5, "corn", Set.of("IRAC 3A"), "HRAC 2")).isEmpty();
        assertThat(ids(5, "corn", Set.of(), "HRAC 27", "IRAC 1B")).containsExactly("C15");
    }

    @Test
    void calcium_with_a_sulfate_never_meets() {
        assertThat(ids(99, "wheat", Set.of(), "calcium", "AMS")).containsExactly("C11");
    }
}
