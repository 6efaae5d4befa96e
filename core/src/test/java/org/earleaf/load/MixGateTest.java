// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.List;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class MixGateTest {
    @Test
    void mixed_cannot_be_reached_when_any_of_the_eight_conditions_is_not_met() {
        TankLoad keyed = TankLoads.keyed();
        int passed = 0;
        for (int bits = 0; bits < 256; bits++) {
            MixGate gate = new MixGate(
                    bit(bits, 0),
                    bit(bits, 1),
                    bit(bits, 2),
                    bit(bits, 3),
                    bit(bits, 4),
                    bit(bits, 5),
                    bit(bits, 6),
                    bit(bits, 7));
            assertThat(gate.problems("x")).hasSize(8 - Integer.bitCount(bits));
            assertThat(gate.isOpen()).isEqualTo(bits == 255);
            if (gate.isOpen()) {
                assertThat(keyed.mixed(gate, "A", TankLoads.T).state()).isEqualTo(LoadState.MIXED);
                passed++;
            } else {
                assertThatThrownBy(() -> keyed.mixed(gate, "A", TankLoads.T))
                        .hasMessageContaining("at where.load{id=load 1}: found");
            }
        }
        assertThat(passed).isEqualTo(1);
    }

    private static boolean bit(int bits, int k) {
        return (bits >> k & 1) == 1;
    }

    private static MixGate of(TankLoad load, int days, List<LabelFinding> findings) {
        return MixGate.of(load, TankLoads.DAY.plusDays(days), findings, new MixGate.Yard(true, true, true, true));
    }

    @Test
    void the_load_itself_tells_lock_stage_keys_and_order() {
        TankLoad keyed = TankLoads.keyed();
        assertThat(of(keyed, 0, List.of()).isOpen()).isTrue();
        assertThat(of(keyed, 3, List.of()).isOpen()).isTrue();
        assertThat(of(keyed, 4, List.of()).locked()).isFalse();
        assertThat(of(TankLoads.mixing(), 0, List.of()).keys()).isFalse();
        assertThat(of(TankLoads.planned(), 0, List.of()).locked()).isFalse();
        LabelFinding stop = new LabelFinding(
                LabelFinding.Verdict.OUTSIDE,
                "",
                "",
                LabelFinding.Limit.LABEL,
                new LabelFinding.Compared(Said.text(""), Said.text(""), Said.text("")),
                Said.text(""));
        assertThat(of(keyed, 0, List.of(stop)).labels()).isFalse();
        assertThat(of(TankLoads.mixing(), 0, List.of()).order()).isTrue();
    }

    @Test
    void keys_whose_times_run_against_the_order_are_seen() {
        TankLoad good = TankLoads.keyed();
        LoadLine late = good.lines().get(0);
        LoadLine early = good.lines().get(1);
        LoadLine swapped = new LoadLine(
                2,
                new LoadLine.Goods(early.product(), false, true, early.codes(), early.classes()),
                early.perHa(),
                early.planned(),
                early.most(),
                List.of(TankLoads.key(TankLoads.f1(), "A", 19), TankLoads.key(TankLoads.f1(), "B", 19)));
        assertThat(of(lines(good, late, swapped), 0, List.of()).order()).isFalse();
        assertThat(of(lines(good, late, early), 0, List.of()).order()).isTrue();
        LoadLine open = TankLoads.f1();
        assertThat(of(lines(good, late, open), 0, List.of()).order()).isTrue();
    }

    @Test
    void a_stage_need_not_be_fresh_for_plain_fertiliser() {
        LoadLine f1 = TankLoads.keyed().lines().get(1);
        LoadLine plain = new LoadLine(
                1,
                new LoadLine.Goods("UAN 32", false, false, f1.codes(), f1.classes()),
                f1.perHa(),
                f1.planned(),
                Double.NaN,
                f1.keys());
        TankLoad load = lines(TankLoads.planned(), plain).reserved(List.of(), "A", TankLoads.T);
        assertThat(of(load, 30, List.of()).locked()).isTrue();
    }

    private static TankLoad lines(TankLoad t, LoadLine... lines) {
        return RecordCopy.with(t, "lines", List.of(lines));
    }
}
