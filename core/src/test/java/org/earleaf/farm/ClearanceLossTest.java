// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

class ClearanceLossTest {
    private static final double FT = 0.3048;

    // Source: the logistic by hand (assumed curve): x 0.25, x50 0.20 at VT.
    @Test
    void corn_of_96_inches_under_72_at_tasselling() {
        double hurt = ClearanceLoss.hurt(96, 72, 30, false);
        assertThat(hurt).isCloseTo(0.7311, within(5e-5));
        assertThat(ClearanceLoss.fieldLoss(hurt, ClearanceLoss.LOST_PER_HURT, 4, 36))
                .isCloseTo(0.0487, within(5e-5));
        assertThat(ClearanceLoss.rowsUnder(120 * 0.0254, 30 * 0.0254)).isEqualTo(4);
    }

    @Test
    void nothing_is_hurt_below_the_clearance_and_more_with_height_stage_and_brittle_days() {
        assertThat(ClearanceLoss.hurt(72, 72, 30, true)).isZero();
        assertThat(ClearanceLoss.hurt(60, 72, 30, true)).isZero();
        assertThat(ClearanceLoss.hurt(100, 72, 30, false)).isGreaterThan(ClearanceLoss.hurt(90, 72, 30, false));
        assertThat(ClearanceLoss.hurt(90, 72, 31, false)).isGreaterThan(ClearanceLoss.hurt(90, 72, 30, false));
        assertThat(ClearanceLoss.hurt(90, 72, 30, false)).isGreaterThan(ClearanceLoss.hurt(90, 72, 15, false));
        assertThat(ClearanceLoss.hurt(90, 72, 15, false)).isGreaterThan(ClearanceLoss.hurt(90, 72, 10, false));
        assertThat(ClearanceLoss.hurt(90, 72, 15, true)).isGreaterThan(ClearanceLoss.hurt(90, 72, 15, false));
    }

    // Source: geometry by hand, 15 passes x 2 ends x 2 tracks x 1.5 ft x 180 ft / 43560.
    @Test
    void headlands_crossed() {
        double ac = ClearanceLoss.crushed_m2(15, 1.5 * FT, 180 * FT, true) / 4046.8564224;
        assertThat(ac).isCloseTo(0.3719, within(5e-5));
        assertThat(ClearanceLoss.crushed_m2(15, 1, 1, false) / ClearanceLoss.crushed_m2(15, 1, 1, true))
                .isCloseTo(1.6, within(1e-9));
    }
}
