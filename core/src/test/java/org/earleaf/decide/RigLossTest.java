// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.field.Placement;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.protection.RigLoss;
import org.junit.jupiter.api.Test;

class RigLossTest {
    private static RigLoss loss(double clearance_in, Placement placement, double height_in) {
        Rig rig = new Rig(
                RigId.called("r"),
                "self-propelled",
                new Rig.Clearance(clearance_in * .0254, Double.NaN),
                new Rig.Boom(27.432, 1, 1e5, 4e5),
                new Rig.Tank(4, 0, 0),
                new Rig.Pace(2, 5, .65),
                Set.of(placement),
                20);
        double[] heights_cm = {height_in * 2.54, height_in * 2.54};
        return RigLoss.of(
                new TestFarm().zone(), rig, placement, heights_cm, new double[] {30, 30}, ProtectionSettings.USUAL);
    }

    /** By hand: corn of 96 in under a clearance of 72 in at tassel hurts .7311 of the plants, x .6 x 4 of 36 rows. */
    @Test
    void corn_taller_than_the_clearance_is_bent_under_the_belly() {
        assertThat(loss(72, Placement.OVER_THE_TOP, 96).injury()).isCloseTo(.7311 * .6 * 4 / 36, within(2e-5));
        assertThat(loss(100, Placement.OVER_THE_TOP, 96).injury()).isZero();
    }

    /** By hand: 30 ha are 547.7 m square, 20 passes x 4 x .46 m x 54.86 m of headland are 2019 m2 of 300,000. */
    @Test
    void headlands_are_crushed_by_every_rig_on_the_ground_and_by_none_in_the_air() {
        assertThat(loss(100, Placement.BOTH, 96).tracks()).isCloseTo(2019.0 / 300_000, within(1e-5));
        assertThat(loss(72, Placement.BY_AIR, 96)).isEqualTo(new RigLoss(0, 0));
    }
}
