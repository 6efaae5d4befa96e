// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.Yield;
import org.earleaf.units.Flag;

/**
 * Where a zone stands on a day and what lies ahead of it if nothing more is done.
 *
 * @param on the day
 * @param trace the likeliest run: observed weather to {@code on}, then the future with the median yield
 * @param stage words of the trade: "before planting", "planted", "V9", "VT", "R1" ... "R6"
 * @param leafCollars collars on {@code on}
 * @param height_cm on {@code on}
 * @param nShort first day growth is held back by nitrogen
 * @param yield_kgHa dry grain
 * @param limitedBy what binds the yield in most futures
 * @param calendar the dates that work is planned by
 * @param nniByDay spread of the nitrogen nutrition index, one per day of the trace
 * @param reach one per rig
 * @param waterBalance_mm unexplained remainder of the run, sum of absolute values
 * @param nitrogenBalance_kgHa likewise
 */
public record Outlook(
        Zone zone,
        LocalDate on,
        SeasonTrace trace,
        String stage,
        double leafCollars,
        Spread height_cm,
        DateSpread nShort,
        Spread yield_kgHa,
        Yield.Limit limitedBy,
        FieldCalendar calendar,
        List<Spread> nniByDay,
        List<OutOfReach> reach,
        double waterBalance_mm,
        double nitrogenBalance_kgHa,
        List<Flag> flags) {
    public Outlook {
        nniByDay = List.copyOf(nniByDay);
        reach = List.copyOf(reach);
        flags = List.copyOf(flags);
    }

    /** The middle date over the futures; empty when half of them never reach it. */
    public Optional<LocalDate> emergence() {
        return calendar.emergence().p50();
    }

    /** The middle date over the futures; empty when half of them never reach it. */
    public Optional<LocalDate> silk() {
        return calendar.silk().p50();
    }

    /** The middle date over the futures; empty when half of them never reach it. */
    public Optional<LocalDate> maturity() {
        return calendar.maturity().p50();
    }

    /** Index of {@code on} in the trace. */
    public int today() {
        return trace.day(on);
    }
}
