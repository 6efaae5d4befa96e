// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.field.Pass;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Outlook;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * A plain alarm, whatever the model thinks: the last nitrate test of the top foot was low, late in the vegetative stages
 * (from V8 to tassel), and nothing has been put on since.
 *
 * @param nitrate_mgKg as tested
 * @param threshold_mgKg the farm's own, or the usual one (common practice, no source)
 */
public record LowNitrate(Zone zone, LocalDate tested, int collars, double nitrate_mgKg, double threshold_mgKg)
        implements Reason {
    private static final double LATE_COLLARS = 8;
    private static final int STANDS_D = 21;

    public static Optional<LowNitrate> find(Farm farm, Outlook outlook) {
        Zone zone = outlook.zone();
        LocalDate on = outlook.on();
        return farm.findReading(zone, Reading::isOfTopFoot, on.minusDays(STANDS_D), on)
                .filter(r -> isLate(outlook.trace(), r.date()) && !wasFedSince(farm, zone, r.date(), on))
                .map(r -> new LowNitrate(
                        zone,
                        r.date(),
                        (int) outlook.trace().at(outlook.trace().day(r.date()), Daily.COLLARS),
                        r.value(),
                        farm.settings().of(Setting.LOW_NITRATE)))
                .filter(a -> a.nitrate_mgKg() < a.threshold_mgKg());
    }

    private static boolean isLate(SeasonTrace trace, LocalDate date) {
        int day = trace.day(date);
        return day >= 0
                && day < trace.days()
                && trace.at(day, Daily.COLLARS) >= LATE_COLLARS
                && trace.at(day, Daily.REP) <= 0;
    }

    private static boolean wasFedSince(Farm farm, Zone zone, LocalDate tested, LocalDate on) {
        return farm.passes().stream()
                .anyMatch(p -> p.isOn(zone)
                        && p.state() == Pass.State.MADE
                        && p.nitrogen_kgHa() > 0
                        && !p.date().isBefore(tested)
                        && !p.date().isAfter(on));
    }

    @Override
    public Said said() {
        return Said.of(
                "alarm.low-nitrate",
                "zone",
                zone.label(),
                "nitrate",
                Measure.CONCENTRATION.of(nitrate_mgKg),
                "day",
                tested,
                "collars",
                collars,
                "threshold",
                Measure.CONCENTRATION.of(threshold_mgKg));
    }
}
