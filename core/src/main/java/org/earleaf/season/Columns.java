// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;

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

    /** The cells of one column, layer after layer. */
    static void part(double[] cells, int column, double[] out) {
        int n = out.length / SeasonState.LAYERS;
        if (n == 1) {
            for (int i = 0; i < out.length; i++) {
                out[i] = cells[2 * i + column];
            }
            return;
        }
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            System.arraycopy(cells, (2 * i + column) * n, out, i * n, n);
        }
    }

    /** Puts the cells of one column back. */
    static void join(double[] part, int column, double[] cells) {
        int n = part.length / SeasonState.LAYERS;
        if (n == 1) {
            for (int i = 0; i < part.length; i++) {
                cells[2 * i + column] = part[i];
            }
            return;
        }
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            System.arraycopy(part, i * n, cells, (2 * i + column) * n, n);
        }
    }

    /** Sum over cells of an amount per area of column, on the area of the field. */
    static void sum(double[] cells, double[] share, double[] sum) {
        int n = sum.length;
        if (n == 1) {
            double all = 0;
            for (int k = 0; k < cells.length; k++) {
                all += share[k & 1] * cells[k];
            }
            sum[0] = all;
            return;
        }
        Arrays.fill(sum, 0);
        for (int k = 0; k < SeasonState.CELLS; k++) {
            add(cells, k * n, share[k & 1], sum);
        }
    }

    private static void add(double[] cells, int at, double share, double[] sum) {
        for (int m = 0; m < sum.length; m++) {
            sum[m] += share * cells[at + m];
        }
    }

    /** Books amounts of the two columns beginning at {@code at} on the area of the field. */
    static void book(double[] columns, int at, double[] share, double[] line) {
        double row = share[0];
        double middle = share[1];
        int n = line.length;
        for (int m = 0; m < n; m++) {
            line[m] += row * columns[at + m] + middle * columns[at + n + m];
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
