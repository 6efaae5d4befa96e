// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;

/** Copies one member's day from a run into a trace. */
final class Tracing {
    private Tracing() {}

    /** Writes the day that was stepped last. */
    static void record(SeasonRun run, int m, SeasonTrace trace) {
        int day = run.day() - 1;
        SeasonState s = run.state();
        Today t = run.today();
        trace.begin(day);
        crop(trace, day, run, m);
        trace.put(day, Daily.RAIN, t.given[m]);
        trace.put(day, Daily.ET0, t.et0[m]);
        trace.put(day, Daily.WATER_FACTOR, s.waterFactor[m]);
        trace.put(day, Daily.DEMAND, run.ledger(Ledger.DEMAND_TODAY, m));
        trace.put(day, Daily.UPTAKE, run.ledger(Ledger.UPTAKE_TODAY, m));
        trace.put(day, Daily.TRANSPIRATION, run.ledger(Ledger.TRANSPIRATION, m));
        trace.put(day, Daily.EVAPORATION, run.ledger(Ledger.EVAPORATION, m));
        trace.put(day, Daily.INTERCEPTION, run.ledger(Ledger.INTERCEPTION, m));
        trace.put(day, Daily.RUNOFF, run.ledger(Ledger.RUNOFF, m));
        trace.put(day, Daily.DRAINAGE, run.ledger(Ledger.DRAINAGE, m));
        trace.put(day, Daily.FERTILISED, run.ledger(Ledger.FERTILISED, m));
        trace.put(day, Daily.DEPOSITED, run.ledger(Ledger.DEPOSITED, m));
        trace.put(day, Daily.MINERALISED, run.ledger(Ledger.MINERALISED, m));
        trace.put(day, Daily.TAKEN_BACK, run.ledger(Ledger.TAKEN_BACK, m));
        double residue = run.ledger(Ledger.RESIDUE_TAKEN, m) - run.ledger(Ledger.RESIDUE_RELEASED, m);
        trace.put(day, Daily.RESIDUE_NET, residue);
        trace.put(day, Daily.LEACHED, run.ledger(Ledger.LEACHED, m));
        trace.put(day, Daily.DENITRIFIED, run.ledger(Ledger.DENITRIFIED, m));
        trace.put(day, Daily.VOLATILISED, run.ledger(Ledger.VOLATILISED, m));
        cells(trace, day, run, m);
    }

    private static void crop(SeasonTrace trace, int day, SeasonRun run, int m) {
        SeasonState s = run.state();
        trace.put(day, Daily.GDD, s.gdd[m]);
        trace.put(day, Daily.COLLARS, s.collars[m]);
        trace.put(day, Daily.REP, s.rep[m]);
        trace.put(day, Daily.LAI, s.lai[m]);
        trace.put(day, Daily.HEIGHT_CM, s.height[m]);
        trace.put(day, Daily.ROOT_MM, s.rootDepth[m]);
        trace.put(day, Daily.NNI, run.nni(m));
        trace.put(day, Daily.SHOOT, s.shoot[m]);
        trace.put(day, Daily.SHOOT_N, s.shootN[m]);
        trace.put(day, Daily.ROOT_N, s.rootN[m]);
    }

    private static void cells(SeasonTrace trace, int day, SeasonRun run, int m) {
        SeasonState s = run.state();
        for (int c = 0; c < 2; c++) {
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                int k = c * SeasonState.LAYERS + i;
                trace.put(day, Cell.WATER, c, i, s.water[k][m]);
                trace.put(day, Cell.NITRATE, c, i, s.nitrate[k][m]);
                trace.put(day, Cell.AMMONIUM, c, i, s.ammonium[k][m]);
                trace.put(day, Cell.UREA, c, i, s.urea[k][m]);
                trace.put(day, Cell.ROOTS, c, i, run.today().roots[k][m]);
            }
            trace.putSurface(day, c, run.balance().surface_kgHa(c, m));
        }
    }
}
