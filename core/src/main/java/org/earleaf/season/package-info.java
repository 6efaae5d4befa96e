/**
 * Season: what crop and soil do, day by day, from before planting to maturity.
 *
 * <p>In: zones, passes, weather. Out: state by day (stage, height, roots, water and nitrogen by cell, losses), yield.
 * Two columns (at the row, between rows) by six layers; one kernel serves one run and an ensemble: its state is flat
 * arrays with a member axis. Never: clock, files, random numbers. Start at {@link org.earleaf.season.ZoneSeason}. Not here: whether a pass pays
 * (decide), whether a rig fits (farm).
 */
package org.earleaf.season;
