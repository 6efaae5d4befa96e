// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import java.util.List;
import org.earleaf.season.SeasonTrace;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.Units;

/**
 * How the model's two columns are laid out under two rows of corn: the row column in two bands, the middle column in a
 * half, a whole and a half between them.
 *
 * @param spacing_in row spacing
 * @param band_in width of the row column
 */
record Ground(double spacing_in, double band_in) {

    /**
     * A drawn piece of a column.
     *
     * @param from_in left edge, from the left of the block
     * @param share of the column that lies in it
     */
    record Piece(double from_in, double to_in, double share) {
        double width_in() {
            return to_in - from_in;
        }
    }

    static Ground of(SeasonTrace trace, double spacing_m) {
        double spacing_in = Units.inches(spacing_m * 1000);
        return new Ground(spacing_in, trace.rowShare() * spacing_in);
    }

    double width_in() {
        return 2 * spacing_in;
    }

    /** Middle of a row, 0 or 1. */
    double row_in(int row) {
        return (row + .5) * spacing_in;
    }

    List<Piece> pieces(int column) {
        double half = band_in / 2;
        double first = row_in(0);
        double second = row_in(1);
        return column == SeasonTrace.ROW
                ? List.of(new Piece(first - half, first + half, .5), new Piece(second - half, second + half, .5))
                : List.of(
                        new Piece(0, first - half, .25),
                        new Piece(first + half, second - half, .5),
                        new Piece(second + half, width_in(), .25));
    }

    static double top_in(int layer) {
        return Units.inches(SoilProfile.top_mm(layer));
    }

    static double bottom_in(int layer) {
        return Units.inches(SoilProfile.bottom_mm(layer));
    }
}
