// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import java.util.function.IntToDoubleFunction;

/**
 * Moves between members, layers and cells that several phases share. The compiler makes vector code only of loops in
 * which all arrays are read and written at the same index, so amounts are first laid side by side and then computed
 * with. One member by itself has its own short way; it adds in the same order.
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
}
