// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import java.util.List;
import org.earleaf.app.web.text.Markup;
import org.earleaf.decide.Worth;

/**
 * A gain as a line from its tenth to its ninetieth percentile with a dot at the mean; all whiskers of a table share one
 * scale.
 *
 * @param low_usdHa left end of the scale
 * @param high_usdHa right end
 */
public record Whisker(double low_usdHa, double high_usdHa) {
    private static final double MARGIN = .06;
    private static final double AXIS = 10;

    /** The scale that holds all of these and nought. */
    public static Whisker scaleOf(List<Worth> worths) {
        double low = 0;
        double high = 0;
        for (Worth w : worths) {
            low = Math.min(low, Math.min(w.p10_usdHa(), w.mean_usdHa()));
            high = Math.max(high, Math.max(w.p90_usdHa(), w.mean_usdHa()));
        }
        double pad = MARGIN * Math.max(high - low, 1e-6);
        return new Whisker(low - pad, high + pad);
    }

    /** Place of a value [% of the width]. */
    double at(double usdHa) {
        return 100 * Ink.clamp((usdHa - low_usdHa) / (high_usdHa - low_usdHa), 0, 1);
    }

    /**
     * @param zeroLabel what stands under the tick at nought ("$0"), empty for none
     * @param planned whether the dot is red
     */
    public Markup of(Worth worth, String label, String zeroLabel, boolean planned) {
        double left = at(worth.p10_usdHa());
        double right = at(worth.p90_usdHa());
        Ink ink = new Ink()
                .put("<svg class=\"whisker\" width=\"100%\" height=\"")
                .put(zeroLabel.isEmpty() ? "20" : "34")
                .put("\" role=\"img\" aria-label=\"")
                .text(label)
                .put("\">");
        ink.lineAt(0, AXIS, 100, AXIS, "hl").lineAt(at(0), 1, at(0), 19, "rl");
        ink.lineAt(left, AXIS, right, AXIS, "kn");
        ink.lineAt(left, 5, left, 15, "k2").lineAt(right, 5, right, 15, "k2");
        ink.put("<circle class=\"").put(planned ? "rf" : "k").put("\" r=\"5.5\" cy=\"10\" cx=\"");
        ink.put(at(worth.mean_usdHa())).put("%\"/>");
        if (!zeroLabel.isEmpty()) {
            ink.labelAt(at(0), 32, "mid so", zeroLabel);
        }
        return ink.close("svg").done();
    }
}
