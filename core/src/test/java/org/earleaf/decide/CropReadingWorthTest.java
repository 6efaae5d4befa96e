// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.units.Ranks;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Limits that any value of information must keep (Raiffa & Schlaifer 1961), on a crop near a rig's clearance. */
class CropReadingWorthTest {
    private static final double HEIGHT_CM = height_cm();
    /** Clears the crop in about two of three futures, with the room that is kept above it. */
    private static final double DOUBTFUL_IN = HEIGHT_CM / 100 / Units.M_PER_IN + 3;

    private static double height_cm() {
        TestFarm farm = new TestFarm();
        ZoneEnsemble futures = ZoneEnsemble.of(farm.farm(), farm.zone(), TestFarm.ON, false);
        return Ranks.mean(Baseline.each(futures.members(), futures.members()::height_cm));
    }

    private static NitrogenOptions.Answer answer(TestFarm farm) {
        return NitrogenOptions.of(farm.farm(), farm.zone(), TestFarm.ON, false, SideBySide.IN_TURN);
    }

    @Test
    void a_height_is_worth_a_share_of_the_pass_that_it_may_allow() {
        NitrogenOptions.Answer a = answer(new TestFarm().alone().clearance(DOUBTFUL_IN));
        assertThat(a.options()).isEmpty();
        assertThat(a.cropReading().inDoubt()).contains("highboy");
        double pass = answer(new TestFarm().alone().clearance(160))
                .options()
                .get(0)
                .worth()
                .mean_usdHa();
        assertThat(a.cropReading().height_usdHa()).isBetween(1.0, .6 * pass);
    }

    @Test
    void what_cannot_change_a_choice_is_worth_nothing() {
        CropReadingWorth never = answer(new TestFarm().alone().clearance(160)).cropReading();
        assertThat(never.height_usdHa()).isCloseTo(0, within(1.0));
        CropReadingWorth enough = answer(
                        new TestFarm().alone().clearance(DOUBTFUL_IN).starter(260))
                .cropReading();
        assertThat(enough.height_usdHa()).isCloseTo(0, within(1e-9));
    }

    @Test
    void a_crop_measured_yesterday_leaves_less_to_learn() {
        assertThat(heightSpread(new TestFarm().height(HEIGHT_CM))).isLessThan(heightSpread(new TestFarm()));
    }

    private static double heightSpread(TestFarm farm) {
        ZoneEnsemble futures = ZoneEnsemble.of(farm.farm(), farm.zone(), TestFarm.ON, false);
        Spread height = Spread.of(Baseline.each(futures.members(), futures.members()::height_cm));
        return height.p90() - height.p10();
    }
}
