// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;
import org.earleaf.season.parameter.ParameterSet;
import org.jspecify.annotations.Nullable;

/**
 * Moves between members, layers and cells that several phases share. The compiler makes vector code only of loops in
 * which all arrays are read and written at the same index, so amounts are first laid side by side and then computed
 * with. One member by itself has its own short way; it adds in the same order. Also what lays lanes out.
 */
final class Columns {
    private Columns() {}

    /** Lays the values of the members out in every cell, layer or column of an array. */
    static void spread(double[] member, double[] out) {
        int n = member.length;
        if (n == 1) {
            Arrays.fill(out, member[0]);
            return;
        }
        for (int at = 0; at < out.length; at += n) {
            System.arraycopy(member, 0, out, at, n);
        }
    }

    /** A value by layer, the same for all members. */
    static double[] byLayer(int members, IntToDoubleFunction value) {
        double[] all = new double[SeasonState.LAYERS * members];
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            Arrays.fill(all, i * members, (i + 1) * members, value.applyAsDouble(i));
        }
        return all;
    }

    /** Takes the cells of the two columns apart, layer after layer. */
    static void part(double[] cells, double[] row, double[] middle) {
        int n = row.length / SeasonState.LAYERS;
        if (n == 1) {
            for (int i = 0; i < row.length; i++) {
                row[i] = cells[2 * i];
                middle[i] = cells[2 * i + 1];
            }
            return;
        }
        for (int at = 0; at < row.length; at += n) {
            System.arraycopy(cells, 2 * at, row, at, n);
            System.arraycopy(cells, 2 * at + n, middle, at, n);
        }
    }

    /** Puts the cells of the two columns together again. */
    static void join(double[] row, double[] middle, double[] cells) {
        int n = row.length / SeasonState.LAYERS;
        if (n == 1) {
            for (int i = 0; i < row.length; i++) {
                cells[2 * i] = row[i];
                cells[2 * i + 1] = middle[i];
            }
            return;
        }
        for (int at = 0; at < row.length; at += n) {
            System.arraycopy(row, at, cells, 2 * at, n);
            System.arraycopy(middle, at, cells, 2 * at + n, n);
        }
    }

    /** Sum over all cells down to a layer of an amount per area of column, on the area of the field. */
    static void sum(double[] cells, int layers, double[] share, double[] block, double[] sum) {
        Arrays.fill(sum, 0);
        book(cells, 0, 2 * layers, share, block, sum);
    }

    /** Books amounts of the two columns of the layer beginning at {@code at} on the area of the field. */
    static void book(double[] columns, int at, double[] share, double[] block, double[] line) {
        book(columns, at, 2, share, block, line);
    }

    private static void book(double[] cells, int at, int count, double[] share, double[] block, double[] line) {
        int n = line.length;
        if (n == 1) {
            for (int k = 0; k < count; k++) {
                line[0] += share[k & 1] * cells[at + k];
            }
            return;
        }
        for (int k = 0; k < count; k++) {
            System.arraycopy(cells, at + k * n, block, 0, n);
            add(block, share[k & 1], line);
        }
    }

    private static void add(double[] block, double share, double[] line) {
        for (int m = 0; m < line.length; m++) {
            line[m] += share * block[m];
        }
    }

    static void add(double[] amounts, double[] line) {
        for (int m = 0; m < line.length; m++) {
            line[m] += amounts[m];
        }
    }

    /** Takes over members of another run, from one block of lanes into another. */
    static void gather(double[] there, int at, int[] from, double[] here, int to) {
        for (int m = 0; m < from.length; m++) {
            here[to + m] = there[at + from[m]];
        }
    }

    /** Whether any value is above zero. */
    static boolean anyPositive(double[] values) {
        for (double v : values) {
            if (v > 0) {
                return true;
            }
        }
        return false;
    }

    /** Lanes that are carried from day to day and copied together; above their class, so that its fields can be made of it. */
    abstract static class Carried {
        final int members;
        private final List<double[]> carried = new ArrayList<>();

        Carried(int members) {
            this.members = members;
        }

        final double[] lane() {
            return lane(1);
        }

        /** So many lanes behind each other. */
        final double[] lane(int n) {
            double[] a = new double[n * members];
            carried.add(a);
            return a;
        }

        final double[][] lanes(int n) {
            double[][] all = new double[n][];
            for (int k = 0; k < n; k++) {
                all[k] = lane();
            }
            return all;
        }

        final List<double[]> carried() {
            return carried;
        }
    }

    /**
     * Values laid out by layer or member, in the order in which they are asked for. A run that goes on from another takes
     * over what the trunk laid out at the same place. Above their class, so that its fields can be made of it.
     */
    abstract static class LaidOut {
        static final int LAYERS = SeasonState.LAYERS;

        final SeasonSetup setup;
        final List<ParameterSet> sets;
        final int members;
        private final List<double[]> laid = new ArrayList<>();

        // only while laying out: a site must not keep its trunk alive
        private @Nullable LaidOut trunk;
        private int[] from;

        LaidOut(SeasonSetup setup, List<ParameterSet> sets, @Nullable LaidOut trunk, int[] from) {
            this.setup = setup;
            this.sets = List.copyOf(sets);
            this.members = sets.size();
            this.trunk = trunk;
            this.from = from;
        }

        /** Nothing more is laid out. */
        final void end() {
            trunk = null;
            from = new int[0];
        }

        interface OfLayer {
            double of(int layer, ParameterSet set);
        }

        final double[] byLayer(OfLayer value) {
            if (trunk != null) {
                return gathered(trunk, LAYERS);
            }
            double[] all = new double[LAYERS * members];
            for (int i = 0; i < LAYERS; i++) {
                for (int m = 0; m < members; m++) {
                    all[i * members + m] = value.of(i, sets.get(m));
                }
            }
            laid.add(all);
            return all;
        }

        final double[] byMember(ToDoubleFunction<ParameterSet> value) {
            if (trunk != null) {
                return gathered(trunk, 1);
            }
            double[] all = sets.stream().mapToDouble(value).toArray();
            laid.add(all);
            return all;
        }

        /** What the trunk laid out at this place, of the members that are taken over. */
        private double[] gathered(LaidOut trunk, int blocks) {
            double[] there = trunk.laid.get(laid.size());
            double[] here = new double[blocks * members];
            for (int block = 0; block < blocks; block++) {
                Columns.gather(there, block * trunk.members, from, here, block * members);
            }
            laid.add(here);
            return here;
        }

        /** Both columns of a layer stand in the same soil. */
        final double[] cells(double[] layers) {
            double[] cells = new double[2 * layers.length];
            Columns.join(layers, layers, cells);
            return cells;
        }

        final double[] topFoot(double[] layers) {
            double[] foot = new double[members];
            for (int n = 0; n < 3 * members; n++) {
                foot[n % members] += layers[n];
            }
            return foot;
        }

        static double[] perDifference(double[] high, double[] low, double factor) {
            double[] per = new double[high.length];
            Arrays.setAll(per, n -> 1 / (high[n] - factor * low[n]));
            return per;
        }

        static double[] reciprocals(double[] values) {
            return Arrays.stream(values).map(v -> 1 / v).toArray();
        }
    }
}
