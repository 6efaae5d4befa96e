// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.view;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.stream.Collectors;
import org.earleaf.app.web.drawing.HourBars;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.decide.Option;
import org.earleaf.spray.SprayTable;
import org.earleaf.spray.SprayWindow;

/**
 * Spray hours of the next two days.
 *
 * @param note why there are none, or where they end
 */
public record SprayView(String note, List<Row> rows) {
    /**
     * @param fit runs of hours that fit
     * @param unfit runs that do not, each with what binds
     */
    public record Row(String name, String what, Markup bars, List<String> fit, List<String> unfit) {}

    static SprayView of(SprayTable table, Format format) {
        return new SprayView(
                table.note().map(format::say).orElse(""),
                table.jobs().stream().map(j -> row(j, format)).toList());
    }

    private static Row row(SprayTable.Job job, Format format) {
        boolean any = job.field().isEmpty();
        String name = any ? tell("page.spray.weather-alone") : MorningView.label(job.field(), job.zone());
        String what = any
                ? tell("page.spray.over-leaves-whatever-is")
                : format.say(job.kind()) + ", " + job.product() + ", " + job.placement();
        List<String> fit = job.windows().stream().map(w -> fit(w, format)).toList();
        List<String> unfit = job.shut().stream()
                .map(s -> Dates.span(s.from(), s.to()) + ": "
                        + open(format.say(s.because().said())))
                .toList();
        String spoken = name + ": " + (fit.isEmpty() ? tell("page.spray.no-hours-fit") : String.join("; ", fit));
        return new Row(
                name,
                what,
                HourBars.of(job.hours(), spoken),
                fit.isEmpty() ? List.of(tell("page.spray.no-run-of-hours-fits")) : fit,
                unfit);
    }

    private static String fit(SprayWindow w, Format format) {
        String cautions = w.cautions().stream()
                .map(r -> format.say(r.said()))
                .map(SprayView::open)
                .collect(Collectors.joining("; "));
        return Dates.span(w.from(), w.to()) + ", " + format.say(w.fit()) + (cautions.isEmpty() ? "" : ": " + cautions);
    }

    /** Without its full stop: a cell may run on as part of a sentence. */
    private static String open(String sentence) {
        return sentence.endsWith(".") ? sentence.substring(0, sentence.length() - 1) : sentence;
    }

    /** How much of a spray's worth nobody has measured on this farm; empty for nitrogen. */
    static String assumed(Option o) {
        return o.spray()
                .map(s -> tell(
                        "page.spray.assumption-figures-behind",
                        "assumptions",
                        s.assumptions().size()))
                .orElse("");
    }
}
