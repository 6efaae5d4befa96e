// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;

/** What a trace holds of one member, read off a run after a step. */
final class Tracing {
    private static final Daily[] DAILY = Daily.values();
    private static final Cell[] CELL = Cell.values();

    private Tracing() {}

    /** Writes the day that was stepped last. */
    static void record(SeasonRun run, int m, SeasonTrace trace) {
        int day = run.day() - 1;
        trace.begin(day);
        for (Daily what : DAILY) {
            trace.put(day, what, of(run, m, what));
        }
        for (int c = 0; c < SeasonTrace.COLUMNS; c++) {
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                for (Cell what : CELL) {
                    trace.put(day, what, c, i, of(run, m, what, c, i));
                }
            }
            trace.putSurface(day, c, run.balance().surface_kgHa(c, m));
        }
    }

    /** Writes the means of all members; sums of means are means of sums, so the trace still closes. */
    static void recordMean(SeasonRun run, SeasonTrace trace) {
        int day = run.day() - 1;
        trace.begin(day);
        for (Daily what : DAILY) {
            trace.put(day, what, mean(run, m -> of(run, m, what)));
        }
        for (int c = 0; c < SeasonTrace.COLUMNS; c++) {
            int column = c;
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                int layer = i;
                for (Cell what : CELL) {
                    trace.put(day, what, c, i, mean(run, m -> of(run, m, what, column, layer)));
                }
            }
            trace.putSurface(day, c, mean(run, m -> run.balance().surface_kgHa(column, m)));
        }
    }

    private static double mean(SeasonRun run, java.util.function.IntToDoubleFunction value) {
        double sum = 0;
        for (int m = 0; m < run.members(); m++) {
            sum += value.applyAsDouble(m);
        }
        return sum / run.members();
    }

    static double of(SeasonRun run, int m, Daily what) {
        SeasonState s = run.state();
        return switch (what) {
            case GDD -> s.gdd[m];
            case COLLARS -> s.collars[m];
            case REP -> s.rep[m];
            case LAI -> s.lai[m];
            case HEIGHT_CM -> s.height[m];
            case ROOT_MM -> s.rootDepth[m];
            case NNI -> run.nni(m);
            case SHOOT -> s.shoot[m];
            case SHOOT_N -> s.shootN[m];
            case ROOT_N -> s.rootN[m];
            case RAIN -> run.today().given[m];
            case ET0 -> run.today().et0[m];
            case TRANSPIRATION -> run.ledger(Ledger.TRANSPIRATION, m);
            case EVAPORATION -> run.ledger(Ledger.EVAPORATION, m);
            case INTERCEPTION -> run.ledger(Ledger.INTERCEPTION, m);
            case RUNOFF -> run.ledger(Ledger.RUNOFF, m);
            case DRAINAGE -> run.ledger(Ledger.DRAINAGE, m);
            case DEMAND -> run.ledger(Ledger.DEMAND_TODAY, m);
            case UPTAKE -> run.ledger(Ledger.UPTAKE_TODAY, m);
            case FERTILISED -> run.ledger(Ledger.FERTILISED, m);
            case DEPOSITED -> run.ledger(Ledger.DEPOSITED, m);
            case MINERALISED -> run.ledger(Ledger.MINERALISED, m);
            case TAKEN_BACK -> run.ledger(Ledger.TAKEN_BACK, m);
            case RESIDUE_NET -> run.ledger(Ledger.RESIDUE_TAKEN, m) - run.ledger(Ledger.RESIDUE_RELEASED, m);
            case LEACHED -> run.ledger(Ledger.LEACHED, m);
            case DENITRIFIED -> run.ledger(Ledger.DENITRIFIED, m);
            case VOLATILISED -> run.ledger(Ledger.VOLATILISED, m);
            case WATER_FACTOR -> s.waterFactor[m];
        };
    }

    static double of(SeasonRun run, int m, Cell what, int column, int layer) {
        SeasonState s = run.state();
        int cell = s.at(column, layer) + m;
        return switch (what) {
            case WATER -> s.water[cell];
            case NITRATE -> s.nitrate[cell];
            case AMMONIUM -> s.ammonium[cell];
            case UREA -> s.urea[cell];
            case ROOTS -> run.today().roots[cell];
        };
    }
}
