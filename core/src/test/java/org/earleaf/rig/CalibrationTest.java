// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Limits: common practice, no source (30 days, 500 ac, 2 % of density); times and weights worked by hand. */
class CalibrationTest {
    private static final Instant T = Instant.parse("2026-06-01T12:00:00Z");
    private static final Calibration WATER = new Calibration(T, 998.2);

    private static String lapsed(double density_kgM3, double ground_ac, Duration later, Optional<Instant> changed) {
        return Calibration.lapsed(
                Optional.of(WATER),
                new Calibration.Since(T.plus(later), changed, density_kgM3, ground_ac * Units.HA_PER_AC),
                Settings.USUAL);
    }

    private static String lapsed(Duration later) {
        return lapsed(998.2, 0, later, Optional.empty());
    }

    @Test
    void without_a_catch_test_nothing_holds() {
        assertThat(Calibration.lapsed(
                        Optional.empty(), new Calibration.Since(T, Optional.empty(), 1000, 0), Settings.USUAL))
                .isEqualTo("no catch test of its outlets");
    }

    @Test
    void it_holds_for_thirty_days_and_for_five_hundred_acres() {
        assertThat(lapsed(Duration.ofDays(30))).isEmpty();
        assertThat(lapsed(Duration.ofDays(30).plusSeconds(1)))
                .isEqualTo("a catch test 30 days old; it holds 30 (assumption)");
        assertThat(lapsed(998.2, 500, Duration.ofDays(1), Optional.empty())).isEmpty();
        assertThat(lapsed(998.2, 501, Duration.ofDays(1), Optional.empty()))
                .isEqualTo("a catch test 501 ac ago; it holds 500 ac (assumption)");
        Settings strict = Settings.USUAL.with(Setting.CALIBRATION_DAYS, 7);
        Calibration.Since eight = new Calibration.Since(T.plus(Duration.ofDays(8)), Optional.empty(), 998.2, 0);
        assertThat(Calibration.lapsed(Optional.of(WATER), eight, strict)).contains("8 days old; it holds 7");
    }

    @Test
    void another_liquid_ends_it_from_two_percent_of_density_on_either_way() {
        assertThat(lapsed(998.2 * 1.02, 0, Duration.ZERO, Optional.empty())).isEmpty();
        assertThat(lapsed(998.2 * .98, 0, Duration.ZERO, Optional.empty())).isEmpty();
        assertThat(lapsed(998.2 * .979, 0, Duration.ZERO, Optional.empty())).contains("more than 2 % apart");
        // 32 % nitrogen solution weighs 11.06 lb/gal, water at 20 °C 8.33: extension density tables.
        assertThat(lapsed(1325.3, 0, Duration.ZERO, Optional.empty()))
                .isEqualTo("a catch test with a liquid of 8.33 lb/gal, and one of 11.06 lb/gal goes out: more than 2 %"
                        + " apart");
    }

    @Test
    void new_nozzles_or_plates_end_it_and_a_catch_after_them_holds() {
        assertThat(lapsed(998.2, 0, Duration.ofDays(2), Optional.of(T.plusSeconds(1))))
                .isEqualTo("nozzles or plates changed since the last catch test");
        assertThat(lapsed(998.2, 0, Duration.ofDays(2), Optional.of(T))).isEmpty();
        assertThat(lapsed(998.2, 0, Duration.ofDays(2), Optional.of(T.minusSeconds(1))))
                .isEmpty();
    }
}
