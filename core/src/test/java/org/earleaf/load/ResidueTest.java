// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.earleaf.mix.Cleanout;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class ResidueTest {
    private static TankLoad with(LoadLine... lines) {
        return RecordCopy.with(TankLoads.planned(), "lines", List.of(lines));
    }

    @Test
    void a_tank_is_cleaned_of_what_does_not_go_in_again() {
        TankLoad both = with(TankLoads.i2(), TankLoads.f1());
        TankLoad one = with(TankLoads.f1());
        assertThat(Residue.of(one, both, Labels.BOOK)).isEmpty();
        Residue rest = Residue.of(both, one, Labels.BOOK).orElseThrow();
        assertThat(rest.products()).containsExactly("Demo I2");
        TankLoad plain = with(RecordCopy.with(TankLoads.i2(), "goods.labelled", false));
        assertThat(Residue.of(plain, one, Labels.BOOK)).isEmpty();
    }

    @Test
    void residue_may_hurt_a_crop_that_no_label_names() {
        TankLoad one = with(TankLoads.f1());
        TankLoad killer = with(RecordCopy.with(TankLoads.i2(), "goods.product", "Demo H2"));
        Residue rest = Residue.of(killer, one, Labels.BOOK).orElseThrow();
        assertThat(rest.hurts()).containsExactly("Demo H2");
        assertThat(rest.said())
                .isEqualTo(Said.of(
                        "tank.held-hurts",
                        "products",
                        List.of("Demo H2"),
                        "load",
                        "load 1",
                        "hurts",
                        List.of("Demo H2")));
        Residue harmless = Residue.of(with(TankLoads.i2()), one, Labels.BOOK).orElseThrow();
        assertThat(harmless.hurts()).isEmpty();
        assertThat(harmless.said()).isEqualTo(Said.of("tank.held", "products", List.of("Demo I2"), "load", "load 1"));
    }

    // Worked by hand: 12 gal that do not drain, 60 gal each time: (12/72)^3 = 1/216, (12/72)^4 = 1/1296 < 1/1000.
    @Test
    void the_rinses_go_by_what_the_tank_held() {
        Residue rest = Residue.of(with(TankLoads.i2()), with(TankLoads.f1()), Labels.BOOK)
                .orElseThrow();
        Cleanout clean = rest.cleanout(12 * Units.M3_PER_GAL, 600 * Units.M3_PER_GAL, Labels.BOOK);
        assertThat(clean.rinses()).isEqualTo(4);
        assertThat(clean.left()).isCloseTo(1 / 1296.0, within(1e-12));
        assertThat(clean.steps()).contains(Cleanout.Step.NO_BLEACH);
    }
}
