// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.soil.SoilProfile;

/**
 * Everything a season carries from day to day, for any number of members: one array per quantity (and cell), members
 * innermost. Cells are numbered {@code column * 6 + layer}, column 0 the row, 1 the middle; amounts are per area of
 * their own column.
 */
final class SeasonState {
    static final int LAYERS = SoilProfile.LAYERS;
    static final int CELLS = 2 * LAYERS;
    /** Surface pools a column can hold at once. */
    static final int POOLS = 4;

    final int members;
    private final List<double[]> carried = new ArrayList<>();

    // cells
    final double[][] water;
    final double[][] nitrate;
    final double[][] ammonium;
    /** Part of the ammonium that an inhibitor or an ammonia band protects. */
    final double[][] guarded;

    final double[][] urea;
    final double[][] organic;
    /** Organic nitrogen of manure, quicker than the soil's own. */
    final double[][] manure;

    final double[][] airless;
    // columns
    final double[][] residueC;
    final double[][] residueN;
    final double[][] microbes;
    final SurfacePool[] pools = new SurfacePool[2 * POOLS];
    // members
    final double[] soilCover;
    final double[] buried;
    final double[] gdd;
    final double[] planted;
    final double[] collars;
    final double[] rep;
    final double[] lai;
    final double[] frost;
    final double[] frostCollars;
    final double[] killed;
    /** Water given from above for the day to come [mm]. */
    final double[] irrigation;

    final double[] height;
    final double[] rootDepth;
    final double[] shoot;
    final double[] shootN;
    final double[] rootN;
    final double[] waterFactor;
    final double[] nitrogenFactor;
    final double[][] soilTemperature;
    final double[] shootAtSilk;
    final double[] growthSum;
    final double[] growthDays;
    final double[] hotDays;
    final double[] kernelLoss;
    final double[] wetDays;
    final double[] guardHeat;
    final double[] guardAge;
    final double[] guardInhibitor;
    final double[] guardBand;
    // days since the run began, -1 while not reached
    final double[] emergenceDay;
    final double[] silkDay;
    final double[] blackLayerDay;
    final double[] shortDay;
    /** Sums and values of the day, one array per ledger line. */
    final double[][] ledger;

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
        MINERALISED,
        TAKEN_BACK,
        RESIDUE_TAKEN,
        RESIDUE_RELEASED,
        LEACHED,
        DENITRIFIED,
        VOLATILISED,
        WATER_AT_START,
        NITROGEN_AT_START,
        DEMAND_TODAY,
        SUPPLY_TODAY,
        UPTAKE_TODAY
    }

    SeasonState(int members) {
        this.members = members;
        water = lanes(CELLS);
        nitrate = lanes(CELLS);
        ammonium = lanes(CELLS);
        guarded = lanes(CELLS);
        urea = lanes(CELLS);
        organic = lanes(CELLS);
        manure = lanes(CELLS);
        airless = lanes(CELLS);
        residueC = lanes(2);
        residueN = lanes(2);
        microbes = lanes(2);
        soilTemperature = lanes(LAYERS);
        ledger = lanes(Ledger.values().length);
        for (int k = 0; k < pools.length; k++) {
            pools[k] = new SurfacePool();
        }
        soilCover = lane();
        buried = lane();
        gdd = lane();
        planted = lane();
        collars = lane();
        rep = lane();
        lai = lane();
        frost = lane();
        frostCollars = lane();
        killed = lane();
        irrigation = lane();
        height = lane();
        rootDepth = lane();
        shoot = lane();
        shootN = lane();
        rootN = lane();
        waterFactor = lane();
        nitrogenFactor = lane();
        shootAtSilk = lane();
        growthSum = lane();
        growthDays = lane();
        hotDays = lane();
        kernelLoss = lane();
        wetDays = lane();
        guardHeat = lane();
        guardAge = lane();
        guardInhibitor = lane();
        guardBand = lane();
        emergenceDay = lane();
        silkDay = lane();
        blackLayerDay = lane();
        shortDay = lane();
        for (double[] day : List.of(emergenceDay, silkDay, blackLayerDay, shortDay)) {
            Arrays.fill(day, -1);
        }
        Arrays.fill(frost, 1);
        Arrays.fill(waterFactor, 1);
        Arrays.fill(nitrogenFactor, 1);
    }

    private double[] lane() {
        double[] a = new double[members];
        carried.add(a);
        return a;
    }

    private double[][] lanes(int n) {
        double[][] all = new double[n][];
        for (int k = 0; k < n; k++) {
            all[k] = lane();
        }
        return all;
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

    List<double[]> carried() {
        return carried;
    }
}
