// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Until when a catch test of a rig's outlets holds: until nozzles or plates are changed, another liquid goes through
 * them, or time or ground has run out.
 *
 * <pre>
 * |d/dc - 1| at most 0.02;  t - tc at most D;  ground since at most A
 *
 * d dc  density now, at the catch         [kg/m3]
 * D     days that it holds                [d]   30 (assumption)
 * A     ground on which it holds          [ha]  500 ac (assumption)
 * Range any
 * Source common practice, no source; days and ground are settings of the farm
 * Check  CalibrationTest
 * </pre>
 *
 * @param caught when the outlets were caught
 * @param density_kgM3 of what was caught
 */
public record Calibration(Instant caught, double density_kgM3) {
    private static final double SAME_LIQUID = .02;
    private static final double EPS = 1e-9;

    /**
     * What has happened since.
     *
     * @param changed when nozzles or plates were changed last
     * @param density_kgM3 of what goes out now
     * @param ground_ha covered by the rig since the catch
     */
    public record Since(Instant now, Optional<Instant> changed, double density_kgM3, double ground_ha) {}

    /** Why there is none that holds; empty where the newest does. */
    public static Optional<Said> lapsed(Optional<Calibration> newest, Since since, Settings settings) {
        return newest.isPresent() ? newest.get().lapsed(since, settings) : Optional.of(Said.of("calibration.none"));
    }

    private Optional<Said> lapsed(Since since, Settings settings) {
        if (since.changed().filter(caught::isBefore).isPresent()) {
            return Optional.of(Said.of("calibration.changed"));
        }
        if (Math.abs(since.density_kgM3() / density_kgM3 - 1) > SAME_LIQUID + EPS) {
            return Optional.of(Said.of(
                    "calibration.other-liquid",
                    "was",
                    Measure.DENSITY.of(density_kgM3),
                    "now",
                    Measure.DENSITY.of(since.density_kgM3())));
        }
        double days = settings.of(Setting.CALIBRATION_DAYS);
        long since_d = Duration.between(caught, since.now()).toDays();
        if (Duration.between(caught, since.now()).toSeconds()
                > days * Duration.ofDays(1).toSeconds()) {
            return Optional.of(
                    Said.of("calibration.old", "days", Measure.DAYS.of(since_d), "most", Measure.DAYS.of(days)));
        }
        double most_ha = settings.of(Setting.CALIBRATION_AREA);
        if (since.ground_ha() > most_ha * (1 + EPS)) {
            return Optional.of(Said.of(
                    "calibration.ground",
                    "ground",
                    Measure.AREA.of(since.ground_ha()),
                    "most",
                    Measure.AREA.of(most_ha)));
        }
        return Optional.empty();
    }
}
