// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;

/**
 * Moves between members and cells that several phases share. The compiler makes vector code only of loops in which all
 * arrays are read and written at the same index, so amounts are first laid side by side and then computed with.
 */
final class Columns {
    private Columns() {}

    /** Lays the values of the members out in every cell. */
    static void spread(double[] member, double[] cells) {
        int n = member.length;
        if (n == 1) {
            Arrays.fill(cells, member[0]);
            return;
        }
        for (int at = 0; at < cells.length; at += n) {
            System.arraycopy(member, 0, cells, at, n);
        }
    }

    /** Sum over cells of an amount per area of column, on the area of the field. */
    static void sum(double[] cells, double[] share, double[] sum) {
        int n = sum.length;
        if (n == 1) {
            sum[0] = sum(cells, share);
            return;
        }
        Arrays.fill(sum, 0);
        for (int k = 0; k < SeasonState.CELLS; k++) {
            add(cells, k * n, share[k / SeasonState.LAYERS], sum);
        }
    }

    /** The same of one member by itself; the order of adding is the same. */
    private static double sum(double[] cells, double[] share) {
        double sum = 0;
        for (int k = 0; k < SeasonState.LAYERS; k++) {
            sum += share[0] * cells[k];
        }
        for (int k = SeasonState.LAYERS; k < SeasonState.CELLS; k++) {
            sum += share[1] * cells[k];
        }
        return sum;
    }

    private static void add(double[] cells, int at, double share, double[] sum) {
        for (int m = 0; m < sum.length; m++) {
            sum[m] += share * cells[at + m];
        }
    }

    /** Books amounts of the two columns, given at their top cells, on the area of the field. */
    static void book(double[] columns, double[] share, double[] line) {
        int middle = SeasonState.LAYERS * line.length;
        double row = share[0];
        double between = share[1];
        for (int m = 0; m < line.length; m++) {
            line[m] += row * columns[m] + between * columns[middle + m];
        }
    }

    /** Each cell gets what the one above it holds; top cells get what {@code top} holds there. */
    static void fromAbove(double[] cells, double[] top, double[] below) {
        int column = cells.length / 2;
        int n = column / SeasonState.LAYERS;
        System.arraycopy(cells, 0, below, n, cells.length - n);
        System.arraycopy(top, 0, below, 0, n);
        System.arraycopy(top, column, below, column, n);
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
