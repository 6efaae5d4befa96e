// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.earleaf.outlook.Outlook;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/**
 * What a count of plants does to the outlook and the advice. Nafziger 1994 (stand-yield.csv): planted in early May, 14,000
 * plants/ac make .79 of a full stand's yield, 20,000 make .92, and 10,000 make .67 (8,000, beyond the table, .58 or so).
 */
class StandAdviceTest {
    private static final LocalDate ON = LocalDate.of(2024, 6, 12);
    private static final LocalDate COUNTED = ON.minusDays(2);

    private static double yield_kgHa(TestFarm farm) {
        return outlook(farm.starter(220)).yield_kgHa().p50();
    }

    private static Outlook outlook(TestFarm farm) {
        return Outlooks.of(farm.farm(), farm.zone(), ON, false);
    }

    private static TestFarm counted(double plants_ac) {
        return new TestFarm().stand(COUNTED, plants_ac / Units.M2_PER_AC);
    }

    private static NitrogenOptions.Answer answer(TestFarm farm) {
        return NitrogenOptions.of(farm.farm(), farm.zone(), ON, false, SideBySide.IN_TURN);
    }

    private static double best_kgHa(NitrogenOptions.Answer answer) {
        return answer.options().get(0).worth().mean_usdHa() > 0
                ? answer.options().get(0).nitrogen_kgHa()
                : 0;
    }

    @Test
    void yield_follows_what_stands() {
        double full = yield_kgHa(new TestFarm());
        assertThat(yield_kgHa(counted(8_000)) / full).isCloseTo(.58, within(.2));
        assertThat(yield_kgHa(counted(14_000)) / full).isCloseTo(.79, within(.2));
        assertThat(yield_kgHa(counted(20_000)) / full).isCloseTo(.92, within(.12));
        assertThat(yield_kgHa(counted(8_000))).isLessThan(yield_kgHa(counted(14_000)));
    }

    @Test
    void a_thin_stand_gets_less_nitrogen_than_a_full_one() {
        NitrogenOptions.Answer full = answer(new TestFarm());
        NitrogenOptions.Answer thin = answer(counted(8_000));
        assertThat(best_kgHa(thin)).isLessThan(best_kgHa(full));
        assertThat(thin.options().get(0).worth().mean_usdHa())
                .isLessThan(full.options().get(0).worth().mean_usdHa());
    }
}
