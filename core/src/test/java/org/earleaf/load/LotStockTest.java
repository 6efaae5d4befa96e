// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.earleaf.Refused;
import org.earleaf.mix.Amount;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class LotStockTest {
    private static final double GAL = Units.M3_PER_GAL;
    private static final List<LotStock> SHED = List.of(
            new LotStock("Demo F1", "old", 2 * GAL, false),
            new LotStock("Demo I1", "I", 9 * GAL, false),
            new LotStock("Demo F1", "empty", 0, false),
            new LotStock("Demo F1", "by weight", 50, true),
            new LotStock("Demo F1", "new", 3 * GAL, false));

    @Test
    void the_first_lot_in_goes_out_first() {
        List<LotStock.Draw> draws = LotStock.draw(SHED, "demo f1", Amount.volume(4 * GAL, "gal"));
        assertThat(draws)
                .containsExactly(
                        new LotStock.Draw("Demo F1", "old", 2 * GAL, false),
                        new LotStock.Draw("Demo F1", "new", 2 * GAL, false));
        assertThat(LotStock.draw(SHED, "Demo F1", Amount.volume(GAL, "gal"))).hasSize(1);
        assertThat(LotStock.draw(SHED, "Demo F1", new Amount(50, true, "lb"))).hasSize(1);
        assertThat(LotStock.draw(SHED, "Demo F1", Amount.volume(5 * GAL * (1 + 1e-11), "gal")))
                .hasSize(2);
    }

    @Test
    void what_the_shelf_does_not_hold_is_refused_with_how_much_is_short() {
        Problem problem = Refused.by(() -> LotStock.draw(SHED, "Demo F1", Amount.volume(6 * GAL, "gal")));
        assertThat(problem.code()).isEqualTo("stock.short");
        assertThat(problem.seen()).isEqualTo(Said.of("found.free", "amount", gallons(5)));
        assertThat(problem.rule().values())
                .containsEntry("wanted", gallons(6))
                .extracting(values -> ((Said) values.get("short")).values().get("amount"))
                .isInstanceOfSatisfying(
                        Quantity.class, q -> assertThat(q.entered()).isEqualTo(1));
        assertThatThrownBy(() -> LotStock.draw(SHED, "Demo X", Amount.volume(GAL, "gal")))
                .hasMessageContaining("stock.short");
    }

    private static Said gallons(double count) {
        return Amount.volume(count * GAL, "gal").told();
    }
}
