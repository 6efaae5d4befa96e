// SPDX-License-Identifier: Apache-2.0
package org.earleaf.card;

/** Sums over the pixels of a patch, and the ellipse that has the same moments. */
final class Moments {
    private final int firstRow;
    private final int firstColumn;
    private double n;
    private double x;
    private double y;
    private double xx;
    private double yy;
    private double xy;
    private boolean cut;

    /** Of a patch that holds this pixel. */
    Moments(int row, int column) {
        firstRow = row;
        firstColumn = column;
    }

    int row() {
        return firstRow;
    }

    int column() {
        return firstColumn;
    }

    double pixels() {
        return n;
    }

    /** A run of a row, from its first pixel to one past its last. */
    void add(int row, int from, int to, boolean atEdge) {
        double m = to - from;
        double sum = m * (from + to - 1) / 2;
        n += m;
        x += sum;
        y += m * row;
        yy += m * row * row;
        xy += sum * row;
        xx += squares(to - 1) - squares(from - 1);
        cut |= atEdge;
    }

    /** 0 + 1 + 4 + ... + k^2. */
    private static double squares(double k) {
        return k * (k + 1) * (2 * k + 1) / 6;
    }

    Stain stain() {
        // A pixel is a square, not a point: its own spread is 1/12 in both ways.
        double vx = xx / n - x / n * (x / n) + 1.0 / 12;
        double vy = yy / n - y / n * (y / n) + 1.0 / 12;
        double vxy = xy / n - x / n * (y / n);
        double middle = (vx + vy) / 2;
        double half = Math.hypot((vx - vy) / 2, vxy);
        return new Stain((int) n, Math.sqrt((middle + half) / (middle - half)), cut);
    }
}
