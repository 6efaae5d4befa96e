// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

/**
 * Evenly spread points that never move: point k of a cell lies where it always lay, so that from day to day dots only
 * appear or vanish.
 *
 * <p>Source: additive recurrence with the plastic number (Roberts 2018, from memory); own seeds.
 */
final class Scatter {
    private static final double A = .7548776662;
    private static final double B = .5698402910;
    /** Keeps dots off the edges of their cell [in]. */
    private static final double INSET_X_IN = .35;

    private static final double INSET_Y_IN = .28;

    private Scatter() {}

    static double x(int k, double seed) {
        return fraction(seed + A * k);
    }

    static double y(int k, double seed) {
        return fraction(.37 * seed + B * k);
    }

    private static double fraction(double v) {
        return v - Math.floor(v);
    }

    /** Seed of a piece of a cell for dots. */
    static double dotSeed(int column, int layer, int piece) {
        return .13 * (layer + 1) + .29 * piece + .4 * column;
    }

    /** Seed for dashes, so that they do not fall on the dots. */
    static double dashSeed(int column, int layer, int piece) {
        return .57 + .11 * layer + .23 * piece + .3 * column;
    }

    /** A drawn piece of a column in a layer. */
    record Cell(Ground.Piece piece, int layer) {}

    /**
     * Appends {@code count} marks in a piece of a layer.
     *
     * @param mark what is drawn at each place, "h0" a dot under round caps, "h5" a dash
     */
    static void marks(StringBuilder path, Cell cell, int count, double seed, Frame frame, String mark) {
        Ground.Piece piece = cell.piece;
        int layer = cell.layer;
        double top_in = Ground.top_in(layer);
        double thick_in = Ground.bottom_in(layer) - top_in;
        for (int k = 1; k <= count; k++) {
            path.append('M');
            Ink.append(path, frame.x(piece.from_in() + INSET_X_IN + (piece.width_in() - 2 * INSET_X_IN) * x(k, seed)));
            path.append(' ');
            Ink.append(path, frame.y(top_in + INSET_Y_IN + (thick_in - 2 * INSET_Y_IN) * y(k, seed)));
            path.append(mark);
        }
    }

    /**
     * From inches in the ground to units of the drawing.
     *
     * @param left x of the left edge
     * @param top y of the surface
     * @param perInchX units an inch across
     * @param perInchY units an inch down
     */
    record Frame(double left, double top, double perInchX, double perInchY) {
        double x(double in) {
            return left + perInchX * in;
        }

        double y(double in) {
            return top + perInchY * in;
        }
    }
}
