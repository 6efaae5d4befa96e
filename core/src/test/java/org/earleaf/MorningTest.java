// SPDX-License-Identifier: Apache-2.0
package org.earleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ForkJoinPool;
import org.earleaf.decide.SprayFarm;
import org.earleaf.farm.Farm;
import org.earleaf.field.Zone;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The brief is the same to the last bit whoever computes it. */
class MorningTest {
    private static final LocalDate ON = LocalDate.of(2024, 7, 12);
    private static Brief oneThread;

    @BeforeAll
    static void byOne() {
        oneThread = brief(1);
    }

    /** Three fields of the same farm. */
    private static Farm farm() {
        Farm f = new SprayFarm().lesions(ON.minusDays(1), 80).farm();
        List<Zone> zones = new ArrayList<>(f.zones());
        zones.add(named(f.zones().get(0), "Away"));
        zones.add(named(f.zones().get(0), "Far"));
        return new Farm(
                f.name(),
                f.site(),
                f.timeZone(),
                f.prices(),
                zones,
                f.passes(),
                f.readings(),
                f.irrigation(),
                f.manure(),
                f.nitrogen(),
                f.products(),
                f.rigs(),
                f.recipes(),
                f.stock(),
                f.boundaries(),
                f.weather(),
                f.flags());
    }

    private static Zone named(Zone z, String name) {
        return new Zone(
                name,
                z.zone(),
                z.area_ha(),
                z.crop(),
                z.planted(),
                z.relativeMaturity_d(),
                z.population_m2(),
                z.rowSpacing_m(),
                z.previousCrop(),
                z.drainage(),
                z.tillage(),
                z.residueCover(),
                z.curveNumber(),
                z.hybrid(),
                z.gddSilk(),
                z.gddBlackLayer(),
                z.yieldGoal_kgHa(),
                z.soil(),
                z.disease());
    }

    private static Brief brief(int threads) {
        ForkJoinPool pool = new ForkJoinPool(threads);
        try {
            Farm farm = farm();
            return pool.submit(() -> Morning.brief(farm, ON, Morning.answers(farm, ON, false)))
                    .join();
        } finally {
            pool.shutdown();
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 4})
    void any_number_of_threads_gives_the_same_brief(int threads) {
        assertThat(oneThread.passes()).isNotEmpty();
        assertThat(oneThread.outlooks()).hasSize(3);
        // NaN, a figure not given, is as good as NaN.
        assertThat(brief(threads))
                .usingRecursiveComparison()
                .withEqualsForType(Double::equals, Double.class)
                .isEqualTo(oneThread);
    }
}
