// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import java.time.ZoneId;
import java.util.List;
import org.earleaf.app.store.Catches.Caught;
import org.earleaf.app.web.drawing.Marks;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Words;
import org.earleaf.rig.CatchTest;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;

/** What a catch test shows. */
public record CatchView(String rig, Markup headline, Made made, Flows flows) {
    /**
     * What was tested.
     *
     * @param rated flow that the outlet should give
     */
    public record Made(String when, String person, String outlet, String rated) {}

    /**
     * What the outlets gave.
     *
     * @param evenness coefficient of variation with its verdict
     * @param unit of the rows
     */
    public record Flows(String mean, String evenness, String unit, List<Row> rows) {}

    /** One outlet. */
    public record Row(int number, String flow, String deviation, Markup verdict, boolean bad) {}

    public static CatchView of(Caught test, ZoneId home, Format format) {
        CatchTest.Result result = test.read();
        return new CatchView(
                test.rig(),
                headline(test.rig(), result),
                new Made(
                        RecordsView.filed(test.at(), home),
                        test.person(),
                        test.outlet(),
                        flow(test.rated_m3s(), format)),
                new Flows(
                        flow(result.mean_m3s(), format),
                        Format.number(result.cv_pct(), 1) + " %, "
                                + format.words().say(result.evenness()),
                        format.isMetric() ? "L/min" : "gal/min",
                        result.outlets().stream().map(o -> row(o, format)).toList()));
    }

    private static Markup headline(String rig, CatchTest.Result result) {
        List<Integer> bad =
                result.listToReplace().stream().map(CatchTest.Outlet::number).toList();
        Said said = result.replaceAll()
                ? Said.of("page.catch.replace-the-whole-set", "rig", rig)
                : bad.isEmpty()
                        ? Said.of("page.catch.the-outlets-of-the-are", "rig", rig, "evenness", result.evenness())
                        : Said.of("page.catch.replace", "which", bad, "rig", rig);
        return new Markup(Words.here().html(said));
    }

    private static Row row(CatchTest.Outlet o, Format format) {
        double pct = 100 * o.deviation();
        String sign = pct < 0 ? "−" : "+";
        Markup verdict =
                switch (o.verdict()) {
                    case GOOD -> Marks.done(format.words().say(o.advice()));
                    case CHECK -> Marks.soon(format.words().say(o.advice()));
                    case REPLACE -> Marks.out(format.words().say(o.advice()));
                };
        return new Row(
                o.number(),
                format.words().number(Measure.FLOW.of(o.flow_m3s()), 3),
                sign + Format.number(pct < 0 ? -pct : pct, 1) + " %",
                verdict,
                o.verdict() == CatchTest.Verdict.REPLACE);
    }

    private static String flow(double m3s, Format format) {
        return format.words().amount(Measure.FLOW.of(m3s), 3);
    }
}
