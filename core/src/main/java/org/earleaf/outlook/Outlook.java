// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.Yield;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/**
 * Where a zone stands on a day and what lies ahead of it if nothing more is done.
 *
 * @param on the day
 * @param trace the likeliest run: observed weather to {@code on}, then the future with the median yield
 * @param calendar the dates that work is planned by
 * @param reach one per rig
 */
public record Outlook(
        Zone zone,
        LocalDate on,
        SeasonTrace trace,
        Stand stand,
        Ahead ahead,
        FieldCalendar calendar,
        List<OutOfReach> reach,
        Remainder remainder,
        List<Flag> flags) {
    private static final double TOLD_FROM = .1;

    /**
     * How the crop stands on the day.
     *
     * @param stage in letters of the trade, "V9", "VT", "R1" ... "R6", or that it is planted, or not yet
     */
    public record Stand(Said stage, double leafCollars, Spread height_cm) {}

    /**
     * What comes of it.
     *
     * @param nShort first day growth is held back by nitrogen
     * @param nniByDay spread of the nitrogen nutrition index, one per day of the trace
     * @param yield_kgHa dry grain
     * @param limitedBy what binds the yield in most futures
     * @param replant what planting a thin stand again would bring; empty where none was counted
     */
    public record Ahead(
            DateSpread nShort,
            List<Spread> nniByDay,
            Spread yield_kgHa,
            Yield.Limit limitedBy,
            Optional<Replant> replant) {
        public Ahead {
            nniByDay = List.copyOf(nniByDay);
        }
    }

    /** What the run leaves unexplained, as sums of absolute values. */
    public record Remainder(double water_mm, double nitrogen_kgHa) {}

    public Outlook {
        reach = List.copyOf(reach);
        flags = List.copyOf(flags);
    }

    public Said stage() {
        return stand.stage();
    }

    public double leafCollars() {
        return stand.leafCollars();
    }

    public Spread height_cm() {
        return stand.height_cm();
    }

    public DateSpread nShort() {
        return ahead.nShort();
    }

    public Spread yield_kgHa() {
        return ahead.yield_kgHa();
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

    /** Share of futures in which the crop is not ripe before a killing frost or the end of the run. */
    public double unripe() {
        return 1 - calendar.maturity().probability();
    }

    /** The same told, where it is one future in ten or more. */
    public Optional<Said> notRipe() {
        return unripe() < TOLD_FROM
                ? Optional.empty()
                : Optional.of(Said.of("outlook.not-ripe", "chance", Measure.CHANCE.of(unripe())));
    }

    /** Index of {@code on} in the trace. */
    public int today() {
        return trace.day(on);
    }
}
