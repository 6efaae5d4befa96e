// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.earleaf.app.words.Words.tell;

import java.util.List;
import java.util.stream.Collectors;
import org.earleaf.app.words.Dates;
import org.earleaf.spray.SprayTable;
import org.earleaf.spray.SprayWindow;

/** Spray hours as a page to read. */
final class SprayHoursText {
    private SprayHoursText() {}

    static void add(Page page, SprayTable table, Say say) {
        page.head(tell("cli.spray-hours.spray-hours-the-next-two"));
        table.note().ifPresent(n -> page.say(say.say(n)));
        for (SprayTable.Job job : table.jobs()) {
            page.say(title(job, say) + ": " + windows(job.windows(), say));
            List<SprayTable.Shut> shut = job.shut();
            if (!shut.isEmpty()) {
                page.say(
                        tell(
                                "cli.spray-hours.not",
                                "list",
                                shut.stream()
                                        .map(s -> Dates.span(s.from(), s.to()) + ", "
                                                + say.say(s.because().said()))
                                        .collect(Collectors.joining(" "))),
                        "   ");
            }
        }
        if (!table.jobs().isEmpty()) {
            page.say(say.say(SprayWindow.CAUTION));
        }
    }

    private static String title(SprayTable.Job job, Say say) {
        if (job.field().isEmpty()) {
            return tell("cli.spray-hours.by-weather-alone-whatever");
        }
        String place = job.zone().isEmpty() ? job.field() : job.field() + ", " + job.zone();
        return place + ", " + say.say(job.kind()) + " (" + job.product() + ", " + job.placement() + ")";
    }

    private static String windows(List<SprayWindow> windows, Say say) {
        if (windows.isEmpty()) {
            return tell("cli.spray-hours.no-run-of-hours-fits");
        }
        return windows.stream()
                        .map(w -> Dates.span(w.from(), w.to()) + " " + say.say(w.fit()) + cautions(w, say))
                        .collect(Collectors.joining("; "))
                + ".";
    }

    private static String cautions(SprayWindow w, Say say) {
        String because = w.cautions().stream()
                .map(r -> say.say(r.said()))
                .map(s -> s.replaceAll("[.]$", ""))
                .collect(Collectors.joining(", "));
        return because.isEmpty() ? "" : " (" + because + ")";
    }
}
