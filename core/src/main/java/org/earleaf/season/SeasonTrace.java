// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import org.earleaf.soil.SoilProfile;

/**
 * What one run did, day by day (end-of-day values). Column 0 is the row, column 1 the middle; cell amounts are per area
 * of their own column, as in the model; {@link #field} brings them to the area of the field.
 */
public final class SeasonTrace {
    /**
     * Below this nitrogen index the crop is short of nitrogen: .93 of the published critical curve with 34 (plateau of
     * Ziadi et al. 2008, Agron. J. 100:271), which is .855 of that of {@link CropNitrogen}.
     */
    public static final double SHORT_NNI = .855;

    private static final double CLOSED_LAI = 3;
    public static final int COLUMNS = 2;
    public static final int ROW = 0;
    public static final int MIDDLE = 1;

    /** One value a day. Sums run from the start of the run. */
    public enum Daily {
        /** Thermal time since planting [°F d]. */
        GDD,
        /** Leaf collars; 0 before emergence. */
        COLLARS,
        /** 0 at silk, 1 at black layer. */
        REP,
        LAI,
        /** Canopy height [cm]. */
        HEIGHT_CM,
        /** Depth of the root front [mm]. */
        ROOT_MM,
        /** Nitrogen nutrition index at the end of the day. */
        NNI,
        /** Shoot dry matter [kg/ha]. */
        SHOOT,
        /** Nitrogen in the shoot [kg/ha]. */
        SHOOT_N,
        /** Nitrogen in roots and root deposits [kg/ha]. */
        ROOT_N,
        /** Rain and irrigation of the day [mm]. */
        RAIN,
        /** Reference evapotranspiration of the day [mm]. */
        ET0,
        /** Sums [mm]. */
        TRANSPIRATION,
        EVAPORATION,
        INTERCEPTION,
        RUNOFF,
        DRAINAGE,
        /** Nitrogen wanted, and taken, this day [kg/ha]. */
        DEMAND,
        UPTAKE,
        /** Sums [kg N/ha of field]. */
        FERTILISED,
        DEPOSITED,
        MINERALISED,
        /** Taken back by soil microbes and clay. */
        TAKEN_BACK,
        /** Taken by residue less given back by it and its microbes. */
        RESIDUE_NET,
        LEACHED,
        DENITRIFIED,
        VOLATILISED,
        /** Water stress factor of the day, 1 none. */
        WATER_FACTOR
    }

    /** One value a day and cell. */
    public enum Cell {
        /** Water [mm]. */
        WATER,
        /** [kg N/ha of the column]. */
        NITRATE,
        AMMONIUM,
        UREA,
        /** Root activity 0 to 1. */
        ROOTS
    }

    private static final int DAILY = Daily.values().length;
    private static final int CELLS = COLUMNS * SoilProfile.LAYERS;
    /** Surface nitrogen per column follows the cells. */
    private static final int WIDTH = DAILY + Cell.values().length * CELLS + COLUMNS;

    private final LocalDate first;
    private final double rowShare;
    private final double[] values;
    private int filled;

    SeasonTrace(LocalDate first, int days, double rowShare) {
        this.first = first;
        this.rowShare = rowShare;
        this.values = new double[days * WIDTH];
    }

    /** A trace that goes on from here without touching this one. */
    public SeasonTrace copy() {
        SeasonTrace other = new SeasonTrace(first, values.length / WIDTH, rowShare);
        System.arraycopy(values, 0, other.values, 0, values.length);
        other.filled = filled;
        return other;
    }

    void begin(int day) {
        filled = day + 1;
    }

    void put(int day, Daily what, double value) {
        values[day * WIDTH + what.ordinal()] = value;
    }

    void put(int day, Cell what, int column, int layer, double value) {
        values[cellIndex(day, what, column, layer)] = value;
    }

    void putSurface(int day, int column, double value) {
        values[(day + 1) * WIDTH - COLUMNS + column] = value;
    }

    private static int cellIndex(int day, Cell what, int column, int layer) {
        return day * WIDTH + DAILY + what.ordinal() * CELLS + column * SoilProfile.LAYERS + layer;
    }

    public LocalDate first() {
        return first;
    }

    /** Days filled so far. */
    public int days() {
        return filled;
    }

    public LocalDate date(int day) {
        return first.plusDays(day);
    }

    /** Index of a date, clamped to the days filled. */
    public int day(LocalDate date) {
        int k = (int) ChronoUnit.DAYS.between(first, date);
        return Math.max(0, Math.min(filled - 1, k));
    }

    /** Share of the ground in the row column. */
    public double rowShare() {
        return rowShare;
    }

    public double share(int column) {
        return column == ROW ? rowShare : 1 - rowShare;
    }

    /** Whether leaves close the rows (leaf area 3; common practice, no source). */
    public boolean isClosed(int day) {
        return at(day, Daily.LAI) >= CLOSED_LAI;
    }

    public double at(int day, Daily what) {
        return values[day * WIDTH + what.ordinal()];
    }

    /** Per area of the column. */
    public double at(int day, Cell what, int column, int layer) {
        return values[cellIndex(day, what, column, layer)];
    }

    /** The same, per area of field. */
    public double field(int day, Cell what, int column, int layer) {
        return share(column) * at(day, what, column, layer);
    }

    /** Nitrogen lying on the surface of a column [kg/ha of field]. */
    public double surface(int day, int column) {
        return share(column) * values[(day + 1) * WIDTH - COLUMNS + column];
    }
}
