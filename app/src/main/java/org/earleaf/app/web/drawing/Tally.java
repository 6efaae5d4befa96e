// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import org.earleaf.app.web.text.Markup;

/** A chance as ten strokes, filled from the left, with a gap after five. */
public final class Tally {
    private static final int STROKES = 10;
    private static final double STEP = 11;
    private static final double GAP = 3;

    private Tally() {}

    /**
     * @param chance 0 to 1
     * @param label what it says, for those who cannot see it
     */
    public static Markup of(double chance, String label) {
        long filled = Math.round(chance * STROKES);
        Ink ink = new Ink()
                .put("<svg class=\"tally\" viewBox=\"0 0 114 16\" role=\"img\" aria-label=\"")
                .text(label)
                .put("\">");
        StringBuilder full = new StringBuilder();
        StringBuilder empty = new StringBuilder();
        for (int k = 0; k < STROKES; k++) {
            StringBuilder to = k < filled ? full : empty;
            to.append('M');
            Ink.append(to, 1 + k * STEP + (k < STROKES / 2 ? 0 : GAP));
            to.append(" 1h6.5v14h-6.5z");
        }
        return ink.path(full, "k").path(empty, "rl").close("svg").done();
    }
}
