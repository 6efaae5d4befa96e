// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.earleaf.app.store.Tanks.T;

import java.util.List;
import org.earleaf.app.RecordCopy;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.load.LoadLine;
import org.earleaf.load.LoadState;
import org.earleaf.load.Overridden;
import org.earleaf.load.TankLoad;
import org.junit.jupiter.api.Test;

/** What the store asks of a mix and its tank before it is poured. */
class LoadMixTest extends WithLoads {
    @Test
    void a_tank_that_held_something_else_is_not_filled_before_it_was_cleaned_out() {
        reserved("a", "1", 5);
        loads.applied("a", mixed("a").version(), "A", T);
        TankLoad next = Tanks.load("n", "2", "highboy", 5, 1, 500);
        loads.add(RecordCopy.with(
                next,
                "lines",
                List.of(RecordCopy.with(
                        RecordCopy.with(
                                RecordCopy.with(next.lines().get(0), "goods.product", "UAN 32"),
                                "goods.labelled",
                                false),
                        "planned",
                        org.earleaf.mix.Amount.volume(.01, "gal")))));
        FarmStoreTest.put(
                store,
                RecordCopy.with(
                        Tanks.farm(),
                        "shelf.stock",
                        List.of(Tanks.lot("A", 8), RecordCopy.with(Tanks.lot("U", 800), "product", "UAN 32"))));
        loads.reserve("n", 1, "A", T);
        assertThatThrownBy(() -> loads.mixing("n", 2, Tanks.LOOKED, "A", T))
                .hasMessageContaining("tank.not-clean")
                .hasMessageContaining("tank.held{products=[Demo P], load=a}");
        loads.cleaned("highboy", "three rinses", "A", T.plusSeconds(1));
        assertThat(loads.findResidue(loads.get("n").load())).isEmpty();
        assertThat(loads.mixing("n", 2, Tanks.LOOKED, "A", T).load().state()).isEqualTo(LoadState.MIXING);
    }

    @Test
    void only_a_rule_that_stops_the_load_is_set_aside() {
        planned("a", "1", 5);
        assertThatThrownBy(() -> loads.override(
                        "a", 1, "C02", stop -> Overridden.of(stop, "C. Adviser", "agronomist", "why", T)))
                .hasMessageContaining("override.no-stop");
        TankLoad load = Tanks.load("b", "1", "highboy", 5, 1, 500);
        LoadLine oil = new LoadLine(
                2,
                new LoadLine.Goods("Oil", false, false, java.util.Set.of("OIL"), java.util.Set.of("COC")),
                1,
                org.earleaf.mix.Amount.volume(.001, "gal"),
                Double.NaN,
                List.of());
        loads.add(RecordCopy.with(load, "lines", List.of(load.lines().get(0), oil)));
        // V12: between V8 and tassel.
        assertThatThrownBy(() -> loads.reserve("b", 1, "A", T)).hasMessageContaining("mix.quarrel{rule=C02}");
        assertThatThrownBy(() ->
                        loads.override("b", 1, "C02", stop -> Overridden.of(stop, "C. Adviser", "grower", "why", T)))
                .hasMessageContaining("override.other-role");
        Kept aside = loads.override(
                "b", 1, "C02", stop -> Overridden.of(stop, "C. Adviser", "agronomist", "2 rows to try", T));
        assertThat(loads.get("b").load().overridden()).isEqualTo(aside.load().overridden());
        assertThat(loads.findings(aside.load())).noneMatch(f -> f.isStop());
    }

    @Test
    void a_load_kept_before_heel_and_overrides_were_is_read_as_one_without() {
        TankLoad load = Tanks.load("a", "job", "highboy", 10, 1, 500);
        String old = LoadJson.text(load).replace("\"unapplied_m3\":0.0,", "").replace("\"overridden\":[],", "");
        assertThat(old).doesNotContain("unapplied").doesNotContain("overridden");
        assertThat(LoadJson.load(old, Names.PLAIN)).isEqualTo(load);
    }
}
