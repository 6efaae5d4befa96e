// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.util.function.ToDoubleFunction;
import org.earleaf.app.web.text.Markup;

/** The chance of a workable day as a bar a day: solid as far as the weather is observed or forecast, open after. */
public final class WorkBars {
    private static final double TALL = 22;
    private static final double BASE = 24;

    private WorkBars() {}

    /**
     * @param chance of a date, NaN where it is not known
     * @param forecastTo last day that the weather is forecast for
     */
    public static Markup of(DaySpan span, ToDoubleFunction<LocalDate> chance, LocalDate forecastTo, String label) {
        Ink ink = new Ink()
                .put("<svg width=\"100%\" height=\"44\" role=\"img\" aria-label=\"")
                .text(label)
                .put("\">");
        span.rule(ink, BASE);
        double gap = span.isDaily() ? span.day() * .14 : 0;
        for (LocalDate d = span.from(); !d.isAfter(span.to()); d = d.plusDays(1)) {
            double share = chance.applyAsDouble(d);
            double tall = Double.isNaN(share) ? 0 : TALL * share;
            if (tall < 1) {
                continue;
            }
            ink.put("<rect class=\"")
                    .put(d.isAfter(forecastTo) ? (span.isDaily() ? "wkf" : "bd") : "k")
                    .put("\" x=\"");
            ink.put(span.morning(d) + gap)
                    .put("%\" width=\"")
                    .put(span.day() - 2 * gap)
                    .put("%\" y=\"");
            ink.put(BASE - tall).put("\" height=\"").put(tall).put("\"/>");
        }
        ink.lineAt(0, BASE, 100, BASE, "kn");
        double usual = span.morning(forecastTo.plusDays(1));
        if (usual > span.share(70)) {
            ink.labelAt(
                    0,
                    41,
                    "so",
                    usual > span.share(150)
                            ? tell("page.work-bars.observed-forecast")
                            : tell("page.work-bars.forecast"));
        }
        if (usual < 100 - span.share(100)) {
            ink.labelAt(usual, 41, "so", usual(span, forecastTo.plusDays(7)));
        }
        return ink.close("svg").done();
    }

    private static String usual(DaySpan span, LocalDate day) {
        return span.isDaily() ? tell("page.work-bars.usual-for", "day", day) : tell("page.work-bars.usual");
    }
}
