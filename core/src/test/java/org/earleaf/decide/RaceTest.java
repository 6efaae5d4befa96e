// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Optional;
import java.util.concurrent.ForkJoinPool;
import org.earleaf.decide.NitrogenOptions.Answer;
import org.earleaf.decide.NitrogenOptions.Search;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Held against the search that runs every choice on all members. */
class RaceTest {
    /** What counts as tied anyway. */
    private static final double TIED_USDHA = 1 / Units.HA_PER_AC;

    private static Answer answer(double starter_kgHa, Search search, SideBySide how) {
        TestFarm farm = new TestFarm().starter(starter_kgHa);
        return NitrogenOptions.of(ZoneEnsemble.of(farm.farm(), farm.zone(), TestFarm.ON, false), how, search);
    }

    private static double worth(Answer a) {
        return a.proposed().map(o -> o.worth().mean_usdHa()).orElse(0.0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 60, 120, 220})
    void the_race_proposes_what_the_search_through_all_does_or_what_is_worth_the_same(double starter_kgHa) {
        Answer raced = answer(starter_kgHa, Search.RACED, SideBySide.IN_TURN);
        Answer all = answer(starter_kgHa, Search.ALL, SideBySide.IN_TURN);
        assertThat(raced.proposed().isPresent()).isEqualTo(all.proposed().isPresent());
        assertThat(raced.proposed().map(Option::rig)).isEqualTo(all.proposed().map(Option::rig));
        assertThat(worth(raced)).isCloseTo(worth(all), within(TIED_USDHA));
        assertThat(raced.simulated()).isLessThan(all.simulated() / 3);
    }

    @Test
    void what_the_race_leaves_is_worth_to_the_last_bit_what_it_is_in_the_search_through_all() {
        Answer raced = answer(60, Search.RACED, SideBySide.IN_TURN);
        Answer all = answer(60, Search.ALL, SideBySide.IN_TURN);
        assertThat(raced.options()).isNotEmpty().allSatisfy(o -> {
            Optional<Option> same = all.options().stream()
                    .filter(x -> x.date().equals(o.date()) && x.application().equals(o.application()))
                    .findFirst();
            assertThat(same).isPresent();
            assertThat(same.orElseThrow().alone().mean_usdHa())
                    .isEqualTo(o.alone().mean_usdHa());
        });
    }

    @Test
    void threads_change_nothing() {
        ForkJoinPool pool = new ForkJoinPool(2);
        try {
            assertThat(answer(60, Search.RACED, SideBySide.in(pool)).options())
                    .isEqualTo(answer(60, Search.RACED, SideBySide.IN_TURN).options());
        } finally {
            pool.shutdown();
        }
    }
}
