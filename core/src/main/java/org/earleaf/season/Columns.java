// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/** Loops between cells and members that several phases share; lanes in the order of SeasonState. */
final class Columns {
    private Columns() {}

    /** The cells of one column, layer after layer, out of the cells of both. */
    static void part(double[] cells, int column, int members, double[] out) {
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            System.arraycopy(cells, (2 * i + column) * members, out, i * members, members);
        }
    }

    /** Puts the cells of one column back. */
    static void join(double[] part, int column, int members, double[] cells) {
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            System.arraycopy(part, i * members, cells, (2 * i + column) * members, members);
        }
    }

    /** Sum over cells of two amounts per area of column, on the area of the field. */
    static void sum(double[] first, double[] second, double[] share, double[] sum) {
        java.util.Arrays.fill(sum, 0);
        for (int k = 0; k < SeasonState.CELLS; k++) {
            add(first, second, k * sum.length, share[k & 1], sum);
        }
    }

    private static void add(double[] first, double[] second, int at, double share, double[] sum) {
        for (int m = 0; m < sum.length; m++) {
            sum[m] += share * (first[at + m] + second[at + m]);
        }
    }

    /** Sum over cells of an amount per area of column, on the area of the field. */
    static void sum(double[] cells, double[] share, double[] sum) {
        java.util.Arrays.fill(sum, 0);
        for (int k = 0; k < SeasonState.CELLS; k++) {
            add(cells, k * sum.length, share[k & 1], sum);
        }
    }

    private static void add(double[] cells, int at, double share, double[] sum) {
        for (int m = 0; m < sum.length; m++) {
            sum[m] += share * cells[at + m];
        }
    }

    /** Takes a member's share of what the cell beginning at {@code at} offered. */
    static void takeShare(double[] pool, double[] offered, double[] share, int at) {
        for (int m = 0; m < share.length; m++) {
            pool[at + m] -= share[m] * offered[at + m];
        }
    }

    /** Multiplies the cell beginning at {@code at} by a member's share. */
    static void scale(double[] cells, double[] share, int at) {
        for (int m = 0; m < share.length; m++) {
            cells[at + m] *= share[m];
        }
    }

    /** Scales a part of a pool as the pool will shrink when the share of the offer is taken. */
    static void keepShare(double[] part, double[] pool, double[] offered, double[] share, int at) {
        for (int m = 0; m < share.length; m++) {
            part[at + m] *= 1 - share[m] * offered[at + m] / Math.max(1e-300, pool[at + m]);
        }
    }
}
