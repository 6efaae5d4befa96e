// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.weather.Forcing;

/**
 * What one day hands from phase to phase; nothing here outlives the day. Lanes by member, by column (at its top cell),
 * by layer or by cell, as in SeasonState.
 */
final class Today {
    final double[] tmax;
    final double[] tmin;
    final double[] tmean;
    final double[] rain;
    final double[] solar;
    final double[] et0;
    final double[] dew;
    /** Rain and irrigation [mm]. */
    final double[] given;

    final double[] wetLeaves;
    final double[] nni;
    final double[] transpirable;
    final double[] growth;
    // by column: water reaching the ground, and what of it went in [mm of column]
    final double[] reaching;
    final double[] entered;
    // by cell
    /** Water leaving the cell downward [mm of column]. */
    final double[] flux;
    /** Wettest state of the day [mm]. */
    final double[] peak;

    final double[] warmth2;
    final double[] warmth22;
    final double[] moist;
    final double[] roots;
    final double[] drawn;
    final double[] fromNitrate;
    final double[] fromAmmonium;
    // by cell, and below the last ones for the ground
    /** Water of the day reaching each cell from above while it fills them. */
    final double[] arriving;

    /** What goes down into each cell of what drains, or of what it carries; nothing of this into the top. */
    final double[] through;

    /** Free pores, by cell. */
    final double[] space;
    // work space of any phase, by member, column, layer, cell
    final double[][] member = new double[6][];
    final double[][] column = new double[7][];
    final double[][] layer = new double[6][];
    final double[][] cell = new double[4][];
    boolean anyWater;
    /** Whether any member has come up. */
    boolean anyUp;

    Today(int members) {
        tmax = new double[members];
        tmin = new double[members];
        tmean = new double[members];
        rain = new double[members];
        solar = new double[members];
        et0 = new double[members];
        dew = new double[members];
        given = new double[members];
        wetLeaves = new double[members];
        nni = new double[members];
        transpirable = new double[members];
        growth = new double[members];
        int columns = 2 * members;
        reaching = new double[columns];
        entered = new double[columns];
        int cells = SeasonState.CELLS * members;
        flux = new double[cells];
        peak = new double[cells];
        warmth2 = new double[cells];
        warmth22 = new double[cells];
        moist = new double[cells];
        roots = new double[cells];
        drawn = new double[cells];
        fromNitrate = new double[cells];
        fromAmmonium = new double[cells];
        arriving = new double[cells + columns];
        through = new double[cells + columns];
        space = new double[cells];
        workSpace(member, members);
        workSpace(column, columns);
        workSpace(layer, SeasonState.LAYERS * members);
        workSpace(cell, cells);
    }

    /** What the weather of a day brings a member. */
    void read(int m, Forcing weather, int day) {
        tmax[m] = weather.tmax_C()[day];
        tmin[m] = weather.tmin_C()[day];
        tmean[m] = 0.5 * (tmax[m] + tmin[m]);
        rain[m] = weather.rain_mm()[day];
        solar[m] = weather.solar_MJm2()[day];
        et0[m] = weather.et0_mm()[day];
        dew[m] = weather.dew_mm()[day];
    }

    private static void workSpace(double[][] arrays, int length) {
        for (int k = 0; k < arrays.length; k++) {
            arrays[k] = new double[length];
        }
    }
}
