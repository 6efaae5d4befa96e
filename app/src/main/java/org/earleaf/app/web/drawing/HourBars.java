// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDateTime;
import java.util.List;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.spray.SprayFit;
import org.earleaf.spray.SprayHour;

/** Hours of two days as bars: full where they fit, half where they fit with care, none where they do not. */
public final class HourBars {
    private static final double HEIGHT = 24;
    private static final double TOP = 18;
    private static final int HALF_A_DAY = 12;

    private HourBars() {}

    /** @param label what it says, for those who cannot see it */
    public static Markup of(List<SprayHour> hours, String label) {
        Ink ink = new Ink()
                .put("<svg class=\"hourbars\" width=\"100%\" height=\"")
                .put(TOP + HEIGHT + 2);
        ink.put("\" role=\"img\" aria-label=\"").text(label).put("\">");
        int n = hours.size();
        StringBuilder bars = new StringBuilder();
        for (int k = 0; k < n; k++) {
            SprayFit fit = hours.get(k).fit();
            double up = fit == SprayFit.FIT ? HEIGHT : fit == SprayFit.WITH_CARE ? HEIGHT / 2 : 0;
            if (up > 0) {
                bars.append('M');
                Ink.append(bars, 1000.0 * k / n);
                bars.append(' ');
                Ink.append(bars, HEIGHT);
                bars.append('v');
                Ink.append(bars, -up);
                bars.append('h');
                Ink.append(bars, 1000.0 / n);
                bars.append('v');
                Ink.append(bars, up);
                bars.append('z');
            }
        }
        ink.put("<svg y=\"").put(TOP).put("\" width=\"100%\" height=\"24\" viewBox=\"0 0 1000 24\"");
        ink.put(" preserveAspectRatio=\"none\">").path(bars, "k").close("svg");
        for (int k = 0; k < n; k++) {
            LocalDateTime at = hours.get(k).hour().at();
            if (at.getHour() % HALF_A_DAY == 0) {
                double x = 100.0 * k / n;
                ink.lineAt(x, TOP - 4, x, TOP + HEIGHT, "hl");
                ink.labelAt(
                        x,
                        TOP - 6,
                        "so",
                        at.getHour() == 0 ? Dates.weekdayTight(at.toLocalDate()) : tell("dates.noon"));
            }
        }
        return ink.lineAt(0, TOP + HEIGHT, 100, TOP + HEIGHT, "kn").close("svg").done();
    }
}
