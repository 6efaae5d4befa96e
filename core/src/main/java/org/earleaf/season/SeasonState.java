// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import java.util.List;
import org.earleaf.soil.SoilProfile;

/**
 * Everything a season carries from day to day, for any number of members: one array per quantity, members innermost.
 * Cells stand in the order of depth, at each depth the row (column 0) before the middle (column 1), so that one loop runs
 * over all cells and members, and two neighbouring cells are one layer: see {@link #at}. What belongs to a whole column
 * stands where its top cell stands. Amounts are per area of their own column.
 */
final class SeasonState extends Columns.Carried {
    static final int LAYERS = SoilProfile.LAYERS;
    static final int CELLS = 2 * LAYERS;
    /** Surface pools a column can hold at once. */
    static final int POOLS = 4;

    // cells
    final double[] water = lane(CELLS);
    final double[] nitrate = lane(CELLS);
    final double[] ammonium = lane(CELLS);
    /** Part of the ammonium that an inhibitor or an ammonia band protects. */
    final double[] guarded = lane(CELLS);

    final double[] urea = lane(CELLS);
    final double[] organic = lane(CELLS);
    /** Organic nitrogen of manure, quicker than the soil's own. */
    final double[] manure = lane(CELLS);

    final double[] airless = lane(CELLS);
    /** Sums since the start by cell [kg N/ha of column]. */
    final double[] mineralised = lane(CELLS);

    final double[] takenBack = lane(CELLS);
    final double[] denitrified = lane(CELLS);
    // columns, at their top cells
    final double[] residueC = lane(2);
    final double[] residueN = lane(2);
    final double[] microbes = lane(2);
    final SurfacePool[] pools = new SurfacePool[2 * POOLS];
    /** Whether any member has any; what is nowhere need not be looked after. */
    boolean anyUrea;

    boolean anyManure;
    boolean anyGuarded;
    // members
    final double[] soilCover = lane();
    final double[] buried = lane();
    final double[] gdd = lane();
    final double[] collars = lane();
    final double[] rep = lane();
    final double[] lai = lane();
    final double[] frost = lane();
    final double[] frostCollars = lane();
    final double[] killed = lane();
    /** Water given from above for the day to come [mm]. */
    final double[] irrigation = lane();

    /** Plants that stand [1/m2]. */
    final double[] population = lane();

    /** Share of the plants that were left when others were lost before silk. */
    final double[] thinned = lane();

    final double[] height = lane();
    final double[] rootDepth = lane();
    final double[] shoot = lane();
    final double[] shootN = lane();
    final double[] rootN = lane();
    final double[] waterFactor = lane();
    final double[] nitrogenFactor = lane();
    final double[] soilTemperature = lane(LAYERS);
    final double[] shootAtSilk = lane();
    final double[] growthSum = lane();
    final double[] growthDays = lane();
    final double[] hotDays = lane();
    final double[] kernelLoss = lane();
    final double[] wetDays = lane();
    final double[] guardHeat = lane();
    final double[] guardAge = lane();
    final double[] guardInhibitor = lane();
    final double[] guardBand = lane();
    // days since the run began, -1 while not reached
    final double[] emergenceDay = lane();
    final double[] silkDay = lane();
    final double[] blackLayerDay = lane();
    final double[] shortDay = lane();
    /** Nitrogen that the shoot needs to grow freely [kg/ha]. */
    final double[] critical = lane();
    /** Sums and values of the day, one array per ledger line. */
    final double[][] ledger = lanes(Ledger.values().length);

    /** Water [mm] and nitrogen [kg/ha] of field: sums since the run began unless said. */
    enum Ledger {
        RAIN,
        DEW,
        IRRIGATION,
        INTERCEPTION,
        RUNOFF,
        DRAINAGE,
        TRANSPIRATION,
        EVAPORATION,
        TABLE_WATER,
        FERTILISED,
        DEPOSITED,
        ASSIMILATED,
        /** These three are kept by cell. */
        MINERALISED,
        TAKEN_BACK,
        DENITRIFIED,
        RESIDUE_TAKEN,
        RESIDUE_RELEASED,
        LEACHED,
        VOLATILISED,
        WATER_AT_START,
        NITROGEN_AT_START,
        DEMAND_TODAY,
        SUPPLY_TODAY,
        UPTAKE_TODAY
    }

    SeasonState(int members) {
        super(members);
        for (int k = 0; k < pools.length; k++) {
            pools[k] = new SurfacePool();
        }
        for (double[] day : List.of(emergenceDay, silkDay, blackLayerDay, shortDay)) {
            Arrays.fill(day, -1);
        }
        Arrays.fill(frost, 1);
        Arrays.fill(thinned, 1);
        Arrays.fill(waterFactor, 1);
        Arrays.fill(nitrogenFactor, 1);
    }

    /** Where the lanes of a cell begin. */
    int at(int column, int layer) {
        return (2 * layer + column) * members;
    }

    /** One application lying on the surface of a column; empty where all amounts are 0. */
    final class SurfacePool {
        final double[] urea = lane();
        /** Hydrolysed, alkaline: what ammonia is lost from. */
        final double[] alkaline = lane();

        final double[] ammonium = lane();
        final double[] nitrate = lane();
        final double[] age = lane();
        final double[] contact = lane();
        final double[] band = lane();
        final double[] ureaseInhibitor = lane();
        final double[] nitrificationInhibitor = lane();
        /** Whether any member has anything here. */
        boolean used;
    }

    /** Takes over members of another state, lane by lane. */
    void copy(SeasonState other, int[] from) {
        for (int a = 0; a < carried().size(); a++) {
            double[] here = carried().get(a);
            double[] there = other.carried().get(a);
            for (int block = 0; block * members < here.length; block++) {
                Columns.gather(there, block * other.members, from, here, block * members);
            }
        }
        for (int p = 0; p < pools.length; p++) {
            pools[p].used = other.pools[p].used;
        }
        anyUrea = other.anyUrea;
        anyManure = other.anyManure;
        anyGuarded = other.anyGuarded;
    }

    double[] snapshot(int day) {
        int size = carried().stream().mapToInt(a -> a.length).sum();
        double[] all = new double[size + pools.length + 4];
        int at = 0;
        for (double[] a : carried()) {
            System.arraycopy(a, 0, all, at, a.length);
            at += a.length;
        }
        for (SurfacePool pool : pools) {
            all[at++] = pool.used ? 1 : 0;
        }
        all[at++] = anyUrea ? 1 : 0;
        all[at++] = anyManure ? 1 : 0;
        all[at++] = anyGuarded ? 1 : 0;
        all[at] = day;
        return all;
    }

    /** Puts everything back as it was; the day it was taken on. */
    int restore(double[] snapshot) {
        int at = 0;
        for (double[] a : carried()) {
            System.arraycopy(snapshot, at, a, 0, a.length);
            at += a.length;
        }
        for (SurfacePool pool : pools) {
            pool.used = snapshot[at++] > 0;
        }
        anyUrea = snapshot[at++] > 0;
        anyManure = snapshot[at++] > 0;
        anyGuarded = snapshot[at++] > 0;
        return (int) snapshot[at];
    }
}
