// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import org.earleaf.app.web.text.Markup;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;

/** Rain of every day of a season above the day slider: solid as fallen, outline as it may come. */
public final class RainBars {
    private static final double HEIGHT = 34;
    private static final double MOST_MM = 50;

    private RainBars() {}

    /** @param today last day that is observed */
    public static Markup of(SeasonTrace trace, int today, String label) {
        int days = Math.max(2, trace.days());
        StringBuilder fallen = new StringBuilder();
        StringBuilder likely = new StringBuilder();
        for (int day = 0; day < trace.days(); day++) {
            double mm = trace.at(day, Daily.RAIN);
            if (mm < .5) {
                continue;
            }
            double up = 2 + (HEIGHT - 4) * Math.min(1, mm / MOST_MM);
            StringBuilder d = day <= today ? fallen : likely;
            d.append('M');
            Ink.append(d, 1000.0 * day / (days - 1));
            d.append(' ');
            Ink.append(d, HEIGHT);
            d.append('v');
            Ink.append(d, -up);
        }
        Ink ink = new Ink().put("<svg class=\"rain\" width=\"100%\" height=\"").put(HEIGHT + 2);
        ink.put("\" role=\"img\" aria-label=\"").text(label).put("\">");
        ink.put("<svg width=\"100%\" height=\"34\" viewBox=\"0 0 1000 34\" preserveAspectRatio=\"none\">");
        ink.path(fallen, "rain1 ns").path(likely, "rain2 ns").close("svg");
        double now = 100.0 * today / (days - 1);
        return ink.lineAt(0, HEIGHT, 100, HEIGHT, "kn")
                .lineAt(now, 0, now, HEIGHT, "rr")
                .close("svg")
                .done();
    }
}
