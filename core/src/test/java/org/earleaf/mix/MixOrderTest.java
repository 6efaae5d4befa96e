// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.load.Recipes.line;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.SplittableRandom;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class MixOrderTest {
    private static MixLine of(String form) {
        String unit = MixForm.parse(form, Said.text("")).isDry() ? "lb/ac" : "fl oz/ac";
        return line("Demo " + form, 1, form.equals("AMS") ? "lb/100 gal" : unit, form);
    }

    private static List<String> forms(List<MixLine> lines) {
        return lines.stream().map(line -> line.form().code()).toList();
    }

    // Source: the extension mnemonic AMS, wettables, agitate, suspensions, soluble liquids, emulsifiables, surfactants.
    @Test
    void six_products_in_the_order_of_the_mnemonic() {
        List<MixLine> lines = List.of(of("EC"), of("NIS"), of("WG"), of("SC"), of("AMS"), of("SL"));
        assertThat(forms(MixOrder.of(lines, Set.of()))).containsExactly("AMS", "WG", "SC", "SL", "EC", "NIS");
    }

    @Test
    void drift_agents_and_micronutrients_go_last_and_antifoam_first() {
        List<MixLine> lines = List.of(of("DRIFT"), of("MSO"), of("MICRONUTRIENT"), of("ANTIFOAM"), of("OD"));
        assertThat(forms(MixOrder.of(lines, Set.of())))
                .containsExactly("ANTIFOAM", "OD", "MSO", "MICRONUTRIENT", "DRIFT");
    }

    @Test
    void the_order_does_not_hang_on_how_the_products_are_listed() {
        List<MixLine> lines = new ArrayList<>();
        for (MixForm form : MixForm.listAll()) {
            if (!form.isNever()) {
                lines.add(of(form.code()));
            }
        }
        lines.add(line("Another", 2, "fl oz/ac", "SC"));
        lines.add(line("another", 3, "fl oz/ac", "SC"));
        Set<MixOrder.Before> labels = Set.of(new MixOrder.Before("Demo EC", "Demo WG"));
        List<MixLine> order = MixOrder.of(lines, labels);
        Random random = new Random(9);
        for (int k = 0; k < 300; k++) {
            Collections.shuffle(lines, random);
            assertThat(MixOrder.of(lines, labels)).isEqualTo(order);
        }
    }

    @Test
    void a_label_overrides_the_rank_and_one_more_never_breaks_another() {
        SplittableRandom random = new SplittableRandom(10);
        String[] codes = {"AMS", "WG", "SC", "SL", "EC", "NIS", "DRIFT"};
        List<MixLine> lines = new ArrayList<>();
        for (String code : codes) {
            lines.add(of(code));
        }
        for (int k = 0; k < 300; k++) {
            Set<MixOrder.Before> labels = new HashSet<>();
            // Pairs along a random line of the products can never form a circle.
            List<MixLine> hidden = new ArrayList<>(lines);
            Collections.shuffle(hidden, new Random(k));
            for (int pair = 0; pair < 6; pair++) {
                int a = random.nextInt(0, 6);
                int b = random.nextInt(a + 1, 7);
                labels.add(new MixOrder.Before(
                        hidden.get(a).product(), hidden.get(b).product()));
                List<String> order = MixOrder.of(lines, labels).stream()
                        .map(MixLine::product)
                        .toList();
                assertThat(order).hasSize(7);
                for (MixOrder.Before label : labels) {
                    assertThat(order.indexOf(label.first())).isLessThan(order.indexOf(label.then()));
                }
            }
        }
    }

    @Test
    void labels_in_a_circle_are_refused_with_the_names() {
        List<MixLine> lines = List.of(of("SC"), of("EC"), of("WG"));
        Set<MixOrder.Before> circle =
                Set.of(new MixOrder.Before("Demo SC", "Demo EC"), new MixOrder.Before("Demo EC", "Demo SC"));
        assertThatThrownBy(() -> MixOrder.of(lines, circle)).hasMessageContaining("[Demo EC, Demo SC]");
    }

    @Test
    void a_label_on_a_product_that_is_not_in_the_mix_binds_nothing() {
        Set<MixOrder.Before> absent = Set.of(new MixOrder.Before("Demo OD", "Demo WG"));
        assertThat(forms(MixOrder.of(List.of(of("SC"), of("WG")), absent))).containsExactly("WG", "SC");
    }

    // Source: catalogue of pesticide formulation types, 7th edition 2017: granules, baits and seed treatments.
    @Test
    void what_is_never_sprayed_is_refused() {
        for (String code : new String[] {"GR", "RB", "CB", "FS", "DS", "WS", "LS", "ES", "UL", "SU", "g"}) {
            assertThatThrownBy(() -> MixForm.parse(code, Said.text("recipe.csv, row 2, column form")))
                    .as(code)
                    .hasMessageContaining("form.never")
                    .hasMessageContaining("row 2");
        }
        assertThatThrownBy(() -> MixForm.parse("XX", Said.text("form")))
                .hasMessageContaining("form.unknown at form: found XX");
    }

    @Test
    void words_used_in_the_us_mean_the_same() {
        assertThat(MixForm.parse("wdg", Said.text("")).code()).isEqualTo("WG");
        assertThat(MixForm.parse("F", Said.text("")).code()).isEqualTo("SC");
        assertThat(MixForm.parse(" As ", Said.text("")).code()).isEqualTo("SL");
        assertThat(MixForm.parse("drift", Said.text("")).rank()).isEqualTo(9);
    }

    @Test
    void every_form_in_the_table_says_how_and_why() {
        assertThat(MixForm.listAll()).hasSizeGreaterThan(40).allSatisfy(form -> {
            assertThat(form.how()).isNotNull();
            assertThat(form.why() == MixWhy.NEVER).isEqualTo(form.isNever());
        });
    }
}
