// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.earleaf.mix.Amount;
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
        assertThatThrownBy(() -> LotStock.draw(SHED, "Demo F1", Amount.volume(6 * GAL, "gal")))
                .hasMessage("stock of Demo F1: found 5 gal free; expected 6 gal. Short of 1 gal: mend the count on the"
                        + " shelf, buy, or load less.");
        assertThatThrownBy(() -> LotStock.draw(SHED, "Demo X", Amount.volume(GAL, "gal")))
                .hasMessageContaining("0 gal free");
    }
}
