// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.earleaf.spray.SprayTable;
import org.earleaf.spray.SprayWindow;

/** Spray hours as a page to read. */
final class SprayHoursText {
    private static final DateTimeFormatter HOUR = DateTimeFormatter.ofPattern("EEE H:mm", Locale.ENGLISH);
    private static final DateTimeFormatter SAME_DAY = DateTimeFormatter.ofPattern("H:mm", Locale.ENGLISH);

    private SprayHoursText() {}

    static void add(Page page, SprayTable table, Say say) {
        page.head("Spray hours, the next two days");
        table.note().ifPresent(n -> page.say(say.say(n)));
        for (SprayTable.Job job : table.jobs()) {
            page.say(title(job, say) + ": " + windows(job.windows(), say));
            List<SprayTable.Shut> shut = job.shut();
            if (!shut.isEmpty()) {
                page.say(
                        "Not: "
                                + shut.stream()
                                        .map(s -> span(s.from(), s.to()) + ", "
                                                + say.say(s.because().said()))
                                        .collect(Collectors.joining(" ")),
                        "   ");
            }
        }
        if (!table.jobs().isEmpty()) {
            page.say(say.say(SprayWindow.CAUTION));
        }
    }

    private static String title(SprayTable.Job job, Say say) {
        if (job.field().isEmpty()) {
            return "By weather alone, whatever is sprayed over leaves";
        }
        String place = job.zone().isEmpty() ? job.field() : job.field() + ", " + job.zone();
        return place + ", " + say.say(job.kind()) + " (" + job.product() + ", " + job.placement() + ")";
    }

    private static String windows(List<SprayWindow> windows, Say say) {
        if (windows.isEmpty()) {
            return "no run of hours fits.";
        }
        return windows.stream()
                        .map(w -> span(w.from(), w.to()) + " " + say.say(w.fit()) + cautions(w, say))
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

    /** "Tue 6:00 to 10:00", "Tue 20:00 to Wed 9:00". */
    static String span(LocalDateTime from, LocalDateTime to) {
        LocalDate day = from.toLocalDate();
        if (to.equals(day.plusDays(1).atStartOfDay())) {
            return HOUR.format(from) + " to 24:00";
        }
        return HOUR.format(from) + " to " + (to.toLocalDate().equals(day) ? SAME_DAY : HOUR).format(to);
    }
}
