// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Set;
import org.earleaf.field.Placement;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.junit.jupiter.api.Test;

class ClearanceFitTest {
    private static final double IN = 0.0254;

    private static Rig rig(double clearance_m) {
        return new Rig(
                RigId.called("Highboy"),
                "self-propelled",
                new Rig.Clearance(clearance_m, Double.NaN),
                new Rig.Boom(27.4, 2, 1e5, 4e5),
                new Rig.Tank(3.8, 0, 0),
                new Rig.Pace(2, 6, 0.65),
                Set.of(Placement.ROW_BASE),
                20);
    }

    @Test
    void a_crop_with_its_margin_may_just_touch_the_clearance() {
        assertThat(ClearanceFit.clears(rig(1.85), Placement.ROW_BASE, 1.80)).isTrue();
        assertThat(ClearanceFit.clears(rig(1.85), Placement.ROW_BASE, 1.801)).isFalse();
        assertThat(ClearanceFit.clears(rig(0), Placement.BY_AIR, 3)).isTrue();
    }

    @Test
    void says_by_how_much_a_crop_is_too_tall() {
        assertThat(ClearanceFit.tooTall(rig(72 * IN), Placement.ROW_BASE, 75 * IN))
                .hasValueSatisfying(said -> {
                    assertThat(said.code()).isEqualTo("reach.too-tall");
                    assertThat(said.values())
                            .containsEntry("rig", "Highboy")
                            .containsEntry("crop", Measure.SPAN.of(75 * IN))
                            .containsEntry("margin", Measure.SPAN.of(ClearanceFit.MARGIN_M))
                            .containsEntry("clearance", Measure.SPAN.of(72 * IN));
                    assertThat(((Measured) said.values().get("over")).value())
                            .isCloseTo(3 * IN + ClearanceFit.MARGIN_M, within(1e-9));
                });
        assertThat(ClearanceFit.tooTall(rig(72 * IN), Placement.ROW_BASE, 60 * IN))
                .isEmpty();
    }

    // Source: geometry by hand, treads of 120 and 126 in on 30-in rows with 18-in tyres.
    @Test
    void wheels_in_the_middle_of_rows() {
        assertThat(ClearanceFit.wheelOffset_m(120 * IN, 30 * IN, false)).isCloseTo(0, within(1e-9));
        assertThat(ClearanceFit.wheelRoom_m(120 * IN, 30 * IN, 18 * IN, false)).isCloseTo(6 * IN, within(1e-9));
        assertThat(ClearanceFit.wheelRoom_m(126 * IN, 30 * IN, 18 * IN, false)).isCloseTo(3 * IN, within(1e-9));
        // Centred on a row the wheels of a 150-in tread run in middles: 75 in = (2 + 1/2) rows.
        assertThat(ClearanceFit.wheelOffset_m(150 * IN, 30 * IN, true)).isCloseTo(0, within(1e-9));
        assertThat(ClearanceFit.wheelsFit(3 * IN, 8)).isTrue();
        assertThat(ClearanceFit.wheelsFit(3 * IN, 11)).isFalse();
    }

    // Source: arithmetic; corn of 100 in and 20 in above it need a boom at 120 in.
    @Test
    void a_boom_must_rise_over_the_crop_and_hoses_reach_the_ground() {
        assertThat(ClearanceFit.boomFits(100 * IN, 20 * IN, 20 * IN, 96 * IN)).isFalse();
        assertThat(ClearanceFit.boomFits(70 * IN, 20 * IN, 20 * IN, 96 * IN)).isTrue();
        assertThat(ClearanceFit.hosesReach(80 * IN, 72 * IN)).isTrue();
        assertThat(ClearanceFit.hosesReach(84 * IN, 72 * IN)).isFalse();
    }
}
