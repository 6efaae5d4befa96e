// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Product;
import org.earleaf.farm.ProductKind;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LabelDraftTest {
    private static final Draft USUAL = Draft.of(
            "product", "leaf guard",
            "crop", "Corn",
            "item", "harvest",
            "value", "21 days",
            "entered_by", "Ann Demo",
            "entered_on", "2026-02-01");

    private static final Shelf SHELF = new Shelf() {
        private final Product guard =
                new Product("Leaf Guard", "SC", 1.1, Double.NaN, "", null, "", "", ProductKind.FUNGICIDE);

        @Override
        public Optional<Product> find(String name) {
            return name.equalsIgnoreCase(guard.name()) ? Optional.of(guard) : Optional.empty();
        }

        @Override
        public List<NitrogenProduct> nitrogen() {
            return List.of();
        }

        @Override
        public List<String> names() {
            return List.of(guard.name());
        }

        @Override
        public boolean isWhole() {
            return true;
        }
    };

    private static Entered<List<LabelEntry>> entered(Draft... drafts) {
        Gathered gathered = new Gathered();
        List<LabelDraft.Line> lines = new ArrayList<>();
        for (Draft draft : drafts) {
            LabelDraft.line(new DraftParts(draft, gathered), SHELF, ZoneOffset.UTC)
                    .ifPresent(lines::add);
        }
        List<LabelEntry> entries = gathered.isClear() ? LabelDraft.entries(lines, SHELF) : List.of();
        return gathered.with(() -> entries);
    }

    @Test
    void lines_of_a_product_and_crop_make_one_entry() {
        LabelEntry entry = entered(USUAL, USUAL.with("item", "wind_most").with("value", "10 mph"))
                .orThrow()
                .get(0);
        assertThat(entry.product()).isEqualTo("Leaf Guard");
        assertThat(entry.crop()).isEqualTo("corn");
        assertThat(entry.figure(LabelItem.HARVEST).limit().value()).isEqualTo(21);
        assertThat(entry.figure(LabelItem.WIND_MOST).entered()).isEqualTo("10 mph");
    }

    @ParameterizedTest
    @CsvSource({
        "product, Leaf Gard, product.unknown, product",
        "item, dry, label.item-unknown, item",
        "item, '', cell.empty, item",
        "item, group, label.of-missing, of",
        "of, demostrobin, label.of-not-here, of",
        "value, '', cell.empty, value",
        "value, three weeks, label.unreadable, value",
        "value, 366 days, label.implausible, value",
        "crop, '', label.no-crop, crop",
        "entered_by, '', cell.empty, entered_by",
        "entered_on, yesterday, date.unreadable, entered_on",
        "second_look_by, Ben Demo, label.look-half, second_look_on",
        "second_look_on, 2026-02-03, label.look-half, second_look_by"
    })
    void a_line_that_breaks_a_rule_is_told_at_its_part(String part, String text, String code, String at) {
        assertThat(entered(USUAL.with(part, text)).problems())
                .extracting(Problem::code, Problem::where)
                .containsExactly(org.assertj.core.groups.Tuple.tuple(code, at));
    }

    @ParameterizedTest
    @CsvSource({
        "wind_most, 41 mph",
        "air_most, 150 F",
        "rainfast, 168 h",
        "harvest, 366 days",
        "grazing, 366 days",
        "reentry, 9000 h"
    })
    void a_figure_beyond_any_label_is_a_slip(String item, String value) {
        assertThat(entered(USUAL.with("item", item).with("value", value)).problems())
                .extracting(Problem::code)
                .containsExactly("label.implausible");
    }

    @Test
    void a_second_look_is_no_earlier_than_the_first_and_the_same_in_every_line() {
        Draft early = USUAL.with("second_look_by", "Ben Demo").with("second_look_on", "2026-01-31");
        assertThat(entered(early).problems()).extracting(Problem::code).containsExactly("label.looked-before-entered");
        Draft other = USUAL.with("item", "wind_most").with("value", "10 mph").with("entered_by", "Ben Demo");
        assertThat(entered(USUAL, other).problems()).extracting(Problem::code).containsExactly("label.two-looks");
        assertThat(entered(USUAL, USUAL).problems()).extracting(Problem::code).containsExactly("label.item-twice");
    }
}
