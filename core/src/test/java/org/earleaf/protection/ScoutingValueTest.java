// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Disease;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

class ScoutingValueTest {
    /**
     * By hand, without aphids: the pass costs 32 $/ac. Much disease nets 9.5 x 4.20 - 32 = +7.9, little 3.5 x 4.20 - 32 =
     * -17.3 $/ac. At a chance of 0.3 the pass is not made without scouting (-9.7); with the answer 0.3 x 7.9 = 2.4 $/ac.
     */
    @Test
    void knowing_which_class_is_worth_what_it_saves() {
        double worth = ScoutingValue.most_usdHa(zone(0.3).build(), Cases.fungicide(22, 10));
        assertThat(worth * Units.HA_PER_AC).isCloseTo(2.4, within(0.05));
    }

    @Test
    void an_answer_that_changes_nothing_is_worth_nothing() {
        assertThat(ScoutingValue.most_usdHa(zone(0).build(), Cases.fungicide(22, 10)))
                .isZero();
        assertThat(ScoutingValue.most_usdHa(zone(1).build(), Cases.fungicide(22, 10)))
                .isZero();
        assertThat(ScoutingValue.most_usdHa(zone(0.3).build(), Cases.fungicide(2, 3)))
                .isCloseTo(0, within(1e-9));
        assertThat(ScoutingValue.most_usdHa(zone(0.3).build(), Cases.fungicide(70, 30)))
                .isZero();
    }

    @Test
    void a_scouted_zone_needs_no_such_answer() {
        ProtectionCase c =
                zone(0.3).lesions(Cases.counted(Disease.GRAY_LEAF_SPOT, 40)).build();
        assertThat(ScoutingValue.most_usdHa(c, Cases.fungicide(22, 10))).isZero();
    }

    /** By hand, as above: where a look is asked for, a pass that always pays brings its mean only after one. */
    @Test
    void where_nothing_is_sprayed_unseen_looking_brings_all_that_a_pass_can() {
        double worth = ScoutingValue.beforeSpraying_usdHa(zone(0.3).build(), Cases.fungicide(22, 10));
        assertThat(worth * Units.HA_PER_AC).isCloseTo(2.4, within(0.05));
        // Costs of 5: much nets 9.5 x 4.20 - 5 = 34.9, little 3.5 x 4.20 - 5 = 9.7; 0.3 x 34.9 + 0.7 x 9.7 = 17.3.
        double always = ScoutingValue.beforeSpraying_usdHa(zone(0.3).build(), Cases.fungicide(2, 3));
        assertThat(always * Units.HA_PER_AC).isCloseTo(17.3, within(0.1));
        assertThat(ScoutingValue.beforeSpraying_usdHa(zone(0.3).build(), Cases.fungicide(70, 30)))
                .isZero();
    }

    private static Cases zone(double chanceSevere) {
        return Cases.zoneOnItsOwn()
                .with(ProtectionAssumption.APHIDS_UNSEEN, 0)
                .with(ProtectionAssumption.SEVERE_LOW, chanceSevere)
                .with(ProtectionAssumption.SEVERE_MODERATE, chanceSevere)
                .with(ProtectionAssumption.SEVERE_HIGH, chanceSevere);
    }
}
