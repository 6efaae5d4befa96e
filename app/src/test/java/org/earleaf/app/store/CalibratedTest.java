// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import org.earleaf.app.RecordCopy;
import org.earleaf.farm.Farm;
import org.earleaf.load.Calibrated;
import org.earleaf.load.LoadState;
import org.earleaf.load.TankLoad;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class CalibratedTest {
    private static final Instant T = Tanks.T;

    @TempDir
    Path folder;

    private static Catches.Caught caught(Instant at) {
        return new Catches.Caught(
                "highboy", at, "A", "size 05 at 40 psi, water", 1e-4, List.of(1e-4, 1e-4, 1e-4), 998.2);
    }

    private static TankLoad applied(int k, Instant at) {
        TankLoad load = Tanks.load("l" + k, "j", "Highboy", 5, 1, 500);
        load = RecordCopy.with(load, "state", LoadState.APPLIED);
        return RecordCopy.with(load, "events", List.of(new TankLoad.Event(at, "A", Said.of("load.event.applied"))));
    }

    @Test
    void it_goes_by_the_newest_catch_by_changes_and_by_the_ground_since() {
        try (FarmStore store = FarmStore.create(folder.resolve("earleaf.db"))) {
            Catches catches = store.catches();
            Farm farm = Tanks.farm();
            TankLoad next = Tanks.load("n", "j", "highboy", 5, 1, 500);
            assertThat(Calibrated.lapsed(next, farm, catches, List.of(), T)).contains(Said.of("calibration.none"));
            catches.keep(caught(T));
            assertThat(Calibrated.lapsed(next, farm, catches, List.of(), T)).isEmpty();
            // 79 ac each: six are 474 ac, seven 553; those before the catch do not count.
            List<TankLoad> six = java.util.stream.IntStream.range(0, 6)
                    .mapToObj(k -> applied(k, T.plusSeconds(60)))
                    .toList();
            assertThat(Calibrated.lapsed(next, farm, catches, six, T)).isEmpty();
            List<TankLoad> seven = new java.util.ArrayList<>(six);
            seven.add(applied(7, T));
            assertThat(Calibrated.lapsed(next, farm, catches, seven, T)).isEmpty();
            seven.add(applied(8, T.plusSeconds(60)));
            assertThat(Calibrated.lapsed(next, farm, catches, seven, T))
                    .map(Said::code)
                    .contains("calibration.ground");
            TankLoad uan = RecordCopy.with(
                    next, "lines", List.of(RecordCopy.with(next.lines().get(0), "goods.product", "UAN 32")));
            assertThat(Calibrated.lapsed(uan, farm, catches, List.of(), T))
                    .map(Said::code)
                    .contains("calibration.other-liquid");
            assertThatThrownBy(() -> catches.changed("highboy", " ", "A", T)).hasMessageContaining("account.missing");
            catches.changed("Highboy", "plates of 2 mm", "A", T.plusSeconds(1));
            assertThat(Calibrated.lapsed(next, farm, catches, List.of(), T.plusSeconds(2)))
                    .contains(Said.of("calibration.changed"));
            catches.keep(caught(T.plusSeconds(3)));
            assertThat(Calibrated.lapsed(next, farm, catches, List.of(), T.plusSeconds(4)))
                    .isEmpty();
            assertThat(catches.findNewest("highboy").orElseThrow()).isEqualTo(caught(T.plusSeconds(3)));
        }
    }
}
