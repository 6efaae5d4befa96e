// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.earleaf.decide.SprayFarm;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.units.RecordCopy;
import org.earleaf.units.SideBySide;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The brief is the same to the last bit whoever computes it. */
class MorningTest {
    private static final LocalDate ON = LocalDate.of(2024, 7, 12);
    private static Brief inTurn;

    @BeforeAll
    static void inTurn() {
        Farm farm = farm();
        inTurn = Briefs.of(farm, ON);
    }

    /** Three fields of the same farm. */
    private static Farm farm() {
        Farm f = new SprayFarm().lesions(ON.minusDays(1), 80).farm();
        Zone home = f.zones().get(0);
        return RecordCopy.with(f, "ground.zones", List.of(home, named(home, "Away"), named(home, "Far")));
    }

    private static Zone named(Zone z, String name) {
        return RecordCopy.with(z, "called", ZoneName.of(name, z.zone()));
    }

    private static Brief brief(int threads) {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Farm farm = farm();
            return Briefs.of(farm, ON, Morning.answers(farm, ON, false, SideBySide.in(pool)));
        } finally {
            pool.shutdown();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 2, 4})
    void any_number_of_threads_gives_the_same_brief(int threads) {
        assertThat(inTurn.passes()).isNotEmpty();
        assertThat(inTurn.outlooks()).hasSize(3);
        // NaN, a figure not given, is as good as NaN.
        assertThat(brief(threads))
                .usingRecursiveComparison()
                .withEqualsForType(Double::equals, Double.class)
                .isEqualTo(inTurn);
    }
}
