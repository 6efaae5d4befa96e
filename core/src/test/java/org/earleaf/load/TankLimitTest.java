// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** In a mix the strictest label holds for all of it, as record forms and labels ask; worked by hand. */
class TankLimitTest {
    private static final LabelEntry I1 = Labels.entry(
            "Demo I1",
            "corn",
            false,
            List.of(Labels.active("demothrin", Labels.KGL, "IRAC 3A", .1)),
            Map.of(
                    LabelItem.SINGLE, "3.2 fl oz/ac",
                    LabelItem.HARVEST, "21 days",
                    LabelItem.REENTRY, "24 h",
                    LabelItem.WIND_MOST, "15 mph",
                    LabelItem.CARRIER, "5 gal/ac",
                    LabelItem.FINEST, "F",
                    LabelItem.NITROGEN_CARRIER, "no",
                    LabelItem.RESTRICTED, "yes"));
    private static final LabelEntry F1 = Labels.with(Labels.F1, LabelItem.NITROGEN_CARRIER, "yes");
    private static final LabelBook BOOK = new LabelBook(List.of(F1, I1));

    private static Optional<TankLimit> limit(LabelItem item, String... products) {
        return TankLimit.of(BOOK, "corn", List.of(products)).stream()
                .filter(t -> t.item() == item)
                .findFirst();
    }

    private static Said said(LabelItem item, String figure, String product) {
        return Said.of("tank.limit", "item", item, "figure", figure, "product", product);
    }

    private static Said both(LabelItem item) {
        Said one = limit(item, "Demo F1", "Demo I1").orElseThrow().said();
        assertThat(limit(item, "Demo I1", "Demo F1").orElseThrow().said()).isEqualTo(one);
        return one;
    }

    @Test
    void the_longest_interval_and_the_narrowest_wind_hold_for_both() {
        assertThat(both(LabelItem.REENTRY)).isEqualTo(said(LabelItem.REENTRY, "24 h", "Demo I1"));
        assertThat(both(LabelItem.HARVEST)).isEqualTo(said(LabelItem.HARVEST, "30 d", "Demo F1"));
        assertThat(both(LabelItem.WIND_LEAST)).isEqualTo(said(LabelItem.WIND_LEAST, "3 mph", "Demo F1"));
        assertThat(both(LabelItem.WIND_MOST)).isEqualTo(said(LabelItem.WIND_MOST, "10 mph", "Demo F1"));
        assertThat(both(LabelItem.CARRIER)).isEqualTo(said(LabelItem.CARRIER, "10 gal/ac", "Demo F1"));
        assertThat(both(LabelItem.FINEST)).isEqualTo(said(LabelItem.FINEST, "M", "Demo F1"));
    }

    @Test
    void a_yes_that_forbids_and_a_no_that_does_not_let_win() {
        assertThat(both(LabelItem.INVERSION)).isEqualTo(said(LabelItem.INVERSION, "yes", "Demo F1"));
        assertThat(both(LabelItem.RESTRICTED)).isEqualTo(said(LabelItem.RESTRICTED, "yes", "Demo I1"));
        assertThat(both(LabelItem.NITROGEN_CARRIER)).isEqualTo(said(LabelItem.NITROGEN_CARRIER, "no", "Demo I1"));
    }

    @Test
    void what_no_label_states_and_amounts_of_one_product_are_left_out() {
        assertThat(limit(LabelItem.AIR_MOST, "Demo F1", "Demo I1")).isEmpty();
        assertThat(limit(LabelItem.SINGLE, "Demo F1", "Demo I1")).isEmpty();
        assertThat(TankLimit.of(BOOK, "wheat", List.of("Demo F1"))).isEmpty();
        assertThat(TankLimit.of(BOOK, "corn", List.of("Demo X"))).isEmpty();
    }
}
