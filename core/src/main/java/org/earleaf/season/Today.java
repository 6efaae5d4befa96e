// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/** What one day hands from phase to phase; nothing here outlives the day. Lanes by member, cells as in SeasonState. */
final class Today {
    final double[] tmax;
    final double[] tmin;
    final double[] tmean;
    final double[] rain;
    final double[] solar;
    final double[] et0;
    final double[] dew;
    /** Rain, irrigation [mm]. */
    final double[] given;

    final double[] wetLeaves;
    final double[] nni;
    final double[] transpirable;
    final double[] growth;
    /** Water reaching the ground by column, and what of it went in [mm of column]. */
    final double[][] reaching;

    final double[][] entered;
    /** Water leaving each layer downward [mm of column]. */
    final double[][] flux;
    /** Wettest state of the day [mm]. */
    final double[][] peak;

    final double[][] warmth2;
    final double[][] warmth22;
    final double[][] roots;
    final double[][] drawn;
    final double[][] supplyNitrate;
    final double[][] supplyAmmonium;
    final double[] scratch;
    final double[] scratch2;
    final double[] scratch3;
    final double[] scratch4;
    boolean anyWater;

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
        reaching = new double[2][members];
        entered = new double[2][members];
        flux = new double[SeasonState.CELLS][members];
        peak = new double[SeasonState.CELLS][members];
        warmth2 = new double[SeasonState.LAYERS][members];
        warmth22 = new double[SeasonState.LAYERS][members];
        roots = new double[SeasonState.CELLS][members];
        drawn = new double[SeasonState.CELLS][members];
        supplyNitrate = new double[SeasonState.CELLS][members];
        supplyAmmonium = new double[SeasonState.CELLS][members];
        scratch = new double[members];
        scratch2 = new double[members];
        scratch3 = new double[members];
        scratch4 = new double[members];
    }
}
