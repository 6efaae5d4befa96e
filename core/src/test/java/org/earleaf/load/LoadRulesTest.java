// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.junit.jupiter.api.Test;

/** What is looked at before mixing is a rule of the load, whichever form or command asks. */
class LoadRulesTest {
    private static List<Problem> refused(Set<BeforeMixing> looked) {
        MixStart start = new MixStart(looked, Optional.empty(), "");
        return catchThrowableOfType(
                        EarleafException.class, () -> TankLoads.reserved().mixing(start, "A. Grower", TankLoads.T))
                .problems();
    }

    @Test
    void nothing_is_poured_before_each_thing_was_looked_at() {
        assertThat(TankLoads.reserved().isLabelled()).isTrue();
        for (BeforeMixing look : BeforeMixing.values()) {
            assertThat(refused(EnumSet.complementOf(EnumSet.of(look))))
                    .singleElement()
                    .satisfies(p -> {
                        assertThat(p.code()).isEqualTo("load.not-looked");
                        assertThat(p.seen().values()).containsEntry("looks", List.of(look));
                    });
        }
        assertThat(refused(Set.of()))
                .singleElement()
                .satisfies(p -> assertThat(p.seen().values()).containsEntry("looks", List.of(BeforeMixing.values())));
        assertThat(TankLoads.reserved()
                        .mixing(TankLoads.LOOKED, "A. Grower", TankLoads.T)
                        .state())
                .isEqualTo(LoadState.MIXING);
    }

    @Test
    void a_load_without_a_label_asks_for_the_tank_and_the_gear() {
        TankLoad plain = org.earleaf.units.RecordCopy.with(
                TankLoads.reserved(),
                "lines",
                TankLoads.reserved().lines().stream()
                        .map(l -> org.earleaf.units.RecordCopy.with(l, "goods.labelled", false))
                        .toList());
        assertThat(BeforeMixing.of(plain))
                .containsExactlyInAnyOrder(BeforeMixing.GEAR_ON, BeforeMixing.TANK_AS_EXPECTED);
    }
}
