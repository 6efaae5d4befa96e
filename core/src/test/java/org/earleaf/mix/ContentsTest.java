// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.load.Recipes.ac;
import static org.earleaf.load.Recipes.gal;
import static org.earleaf.load.Recipes.gpa;

import java.util.SplittableRandom;
import org.earleaf.load.LoadPlanner;
import org.earleaf.load.Recipes;
import org.earleaf.mix.LoadJob.Split;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class ContentsTest {
    private static Contents tank() {
        return Contents.of(LoadPlanner.plan(LoadJob.of(Recipes.tassel(), ac(49), gpa(15), gal(980), Split.EQUAL))
                .loads()
                .get(0));
    }

    // Source: arithmetic by hand, 10 fl oz in 15 gal put on at 20 gal/ac.
    @Test
    void another_rate_on_the_second_rig_changes_the_dose() {
        double onGround = tank().onGround("Demo F1", gpa(20));
        assertThat(onGround / (Units.M3_PER_FLOZ / Units.M2_PER_AC)).isCloseTo(13.33, within(0.005));
        assertThat(tank().onGround("none such", gpa(20))).isZero();
    }

    @Test
    void parting_and_joining_keeps_every_product() {
        SplittableRandom random = new SplittableRandom(11);
        Contents whole = tank();
        for (int k = 0; k < 500; k++) {
            Contents.Parted parted = whole.part(random.nextDouble(1e-6, whole.volume_m3()));
            Contents again = parted.left().with(parted.moved());
            assertThat(again.volume_m3()).isCloseTo(whole.volume_m3(), within(1e-12));
            whole.amounts().forEach((product, amount) -> assertThat(
                            again.amounts().get(product).inside())
                    .isCloseTo(amount.inside(), within(1e-12)));
            assertThat(parted.moved().onGround("Demo F1", gpa(15)))
                    .isCloseTo(whole.onGround("Demo F1", gpa(15)), within(1e-15));
        }
    }

    @Test
    void more_than_is_in_the_tank_cannot_be_moved() {
        assertThatThrownBy(() -> tank().part(gal(736))).hasMessageContaining("735 gal");
        assertThatThrownBy(() -> tank().part(0)).hasMessageContaining("part load");
        assertThat(tank().part(gal(735)).left().volume_m3()).isCloseTo(0, within(1e-9));
    }

    // Source: arithmetic by hand, 60 ac left at 15 gal/ac with 735 gal in the tank.
    @Test
    void what_is_missing_for_the_ground_left() {
        assertThat(tank().missing_m3(ac(60), gpa(15)) / gal(1)).isCloseTo(165, within(1e-6));
        assertThat(tank().missing_m3(ac(40), gpa(15)) / gal(1)).isCloseTo(-135, within(1e-6));
    }
}
