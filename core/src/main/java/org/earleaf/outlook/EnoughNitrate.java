// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.Setting;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/**
 * A rule of trials over the model: where the top foot tests so much nitrate from V3 on, more nitrogen has not paid.
 *
 * <pre>
 * holds = test >= critical, at random over the row, nothing banded in the 60 days before, for 21 days
 *         and until 20 lb/ac have been lost since
 *
 * Range  V3 to tassel
 * Source critical 25 ppm: Iowa State extension, late-spring nitrate test; Blackmer et al. 1989, J. Prod. Agric. 2:103
 *        (from memory); how long it holds: own construct
 * Check  SoilTestSweepTest
 * </pre>
 *
 * @param nitrate_mgKg as tested
 * @param critical_mgKg the farm's own, or the usual one
 */
public record EnoughNitrate(LocalDate tested, double nitrate_mgKg, double critical_mgKg) {
    private static final double FROM_COLLARS = 3;
    private static final int STANDS_D = 21;
    private static final double LOST_KGHA = 20 * Units.KGHA_PER_LBAC;

    /** @param trace of the zone up to its decision day at least */
    static Optional<EnoughNitrate> find(ZoneEnsemble futures, SeasonTrace trace) {
        Zone zone = futures.zone();
        LocalDate on = futures.decisionDay();
        double critical = futures.farm().settings().of(Setting.ENOUGH_NITRATE);
        return futures.farm()
                .findReading(
                        zone,
                        r -> r.isOfTopFoot() && r.position() == Reading.Position.RANDOM,
                        on.minusDays(STANDS_D),
                        on)
                .filter(r -> r.value() >= critical && isTime(trace, r.date()))
                .filter(r -> !futures.season().isBanded(r.date()) && lost(trace, r.date(), on) < LOST_KGHA)
                .map(r -> new EnoughNitrate(r.date(), r.value(), critical));
    }

    /** From which reading on a test taken this morning would show enough; infinite where none would. */
    public static double above_mgKg(ZoneEnsemble futures, SeasonTrace trace) {
        LocalDate on = futures.decisionDay();
        return isTime(trace, on) && !futures.season().isBanded(on)
                ? futures.farm().settings().of(Setting.ENOUGH_NITRATE)
                : Double.POSITIVE_INFINITY;
    }

    private static boolean isTime(SeasonTrace trace, LocalDate date) {
        int day = trace.day(date);
        return day >= 0
                && day < trace.days()
                && trace.at(day, Daily.COLLARS) >= FROM_COLLARS
                && trace.at(day, Daily.REP) <= 0;
    }

    private static double lost(SeasonTrace trace, LocalDate from, LocalDate to) {
        return lost(trace, trace.day(to)) - lost(trace, trace.day(from));
    }

    private static double lost(SeasonTrace trace, int day) {
        return trace.at(day, Daily.LEACHED) + trace.at(day, Daily.DENITRIFIED);
    }

    public Said said() {
        return Said.of(
                "test.enough",
                "nitrate",
                Measure.CONCENTRATION.of(nitrate_mgKg),
                "day",
                tested,
                "critical",
                Measure.CONCENTRATION.of(critical_mgKg));
    }
}
