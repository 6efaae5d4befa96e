// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Limits: common practice, no source (30 days, 500 ac, 2 % of density); times and weights worked by hand. */
class CalibrationTest {
    private static final Instant T = Instant.parse("2026-06-01T12:00:00Z");
    private static final Calibration WATER = new Calibration(T, 998.2);

    private static Optional<Said> lapsed(
            double density_kgM3, double ground_ac, Duration later, Optional<Instant> changed) {
        return Calibration.lapsed(
                Optional.of(WATER),
                new Calibration.Since(T.plus(later), changed, density_kgM3, ground_ac * Units.HA_PER_AC),
                Settings.USUAL);
    }

    private static Optional<Said> lapsed(Duration later) {
        return lapsed(998.2, 0, later, Optional.empty());
    }

    @Test
    void without_a_catch_test_nothing_holds() {
        assertThat(Calibration.lapsed(
                        Optional.empty(), new Calibration.Since(T, Optional.empty(), 1000, 0), Settings.USUAL))
                .contains(Said.of("calibration.none"));
    }

    @Test
    void it_holds_for_thirty_days_and_for_five_hundred_acres() {
        assertThat(lapsed(Duration.ofDays(30))).isEmpty();
        assertThat(lapsed(Duration.ofDays(30).plusSeconds(1)))
                .contains(Said.of("calibration.old", "days", Measure.DAYS.of(30), "most", Measure.DAYS.of(30)));
        assertThat(lapsed(998.2, 500, Duration.ofDays(1), Optional.empty())).isEmpty();
        assertThat(lapsed(998.2, 501, Duration.ofDays(1), Optional.empty()))
                .map(Said::code)
                .contains("calibration.ground");
        Settings strict = Settings.USUAL.with(Setting.CALIBRATION_DAYS, 7);
        Calibration.Since eight = new Calibration.Since(T.plus(Duration.ofDays(8)), Optional.empty(), 998.2, 0);
        assertThat(Calibration.lapsed(Optional.of(WATER), eight, strict))
                .contains(Said.of("calibration.old", "days", Measure.DAYS.of(8), "most", Measure.DAYS.of(7)));
    }

    @Test
    void another_liquid_ends_it_from_two_percent_of_density_on_either_way() {
        assertThat(lapsed(998.2 * 1.02, 0, Duration.ZERO, Optional.empty())).isEmpty();
        assertThat(lapsed(998.2 * .98, 0, Duration.ZERO, Optional.empty())).isEmpty();
        assertThat(lapsed(998.2 * .979, 0, Duration.ZERO, Optional.empty()))
                .map(Said::code)
                .contains("calibration.other-liquid");
        // 32 % nitrogen solution weighs 11.06 lb/gal, water at 20 °C 8.33: extension density tables.
        assertThat(lapsed(1325.3, 0, Duration.ZERO, Optional.empty()))
                .contains(Said.of(
                        "calibration.other-liquid",
                        "was",
                        Measure.DENSITY.of(998.2),
                        "now",
                        Measure.DENSITY.of(1325.3)));
    }

    @Test
    void new_nozzles_or_plates_end_it_and_a_catch_after_them_holds() {
        assertThat(lapsed(998.2, 0, Duration.ofDays(2), Optional.of(T.plusSeconds(1))))
                .contains(Said.of("calibration.changed"));
        assertThat(lapsed(998.2, 0, Duration.ofDays(2), Optional.of(T))).isEmpty();
        assertThat(lapsed(998.2, 0, Duration.ofDays(2), Optional.of(T.minusSeconds(1))))
                .isEmpty();
    }
}
