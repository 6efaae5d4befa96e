// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.field.Reading;
import org.earleaf.season.SeasonState.Ledger;

/**
 * Changes the nitrate of a member because a soil test says so, and books what was added or taken in the ledger, so that
 * its nitrogen still closes.
 */
public final class Correcting {
    private Correcting() {}

    /** Cells of a member; the same order for {@link #nitrate} and {@link #scale}. */
    public static int cells() {
        return SeasonState.CELLS;
    }

    /** Nitrate of a cell [kg N/ha of its column]. */
    public static double nitrate(SeasonRun run, int member, int cell) {
        return run.state().nitrate[cell * run.members() + member];
    }

    /** How much a reading says of a cell: 1 where cores were taken, 0.5 in the layer below, else 0. */
    public static double weight(SeasonRun run, Reading reading, int cell) {
        int layer = cell / 2;
        if (Observing.weight(run, reading, cell & 1) <= 0) {
            return 0;
        }
        if (Observing.reach(reading, layer) > 0) {
            return 1;
        }
        return layer > 0 && Observing.reach(reading, layer - 1) > 0 ? .5 : 0;
    }

    /** Multiplies the nitrate of a cell. */
    public static void scale(SeasonRun run, int member, int cell, double factor) {
        SeasonState s = run.state();
        int at = cell * s.members + member;
        double added = s.nitrate[at] * (factor - 1);
        s.nitrate[at] += added;
        s.ledger[Ledger.ASSIMILATED.ordinal()][member] += run.site().share[cell & 1] * added;
    }

    /** Nitrogen that soil tests have added to a member so far, below 0: taken from it [kg/ha of field]. */
    public static double assimilated_kgHa(SeasonRun run, int member) {
        return run.ledger(Ledger.ASSIMILATED, member);
    }
}
