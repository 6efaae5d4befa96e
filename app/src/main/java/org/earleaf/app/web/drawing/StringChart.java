// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.time.Duration;
import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;
import org.earleaf.app.web.text.Markup;
import org.earleaf.field.Zone;
import org.earleaf.week.DaySheet;
import org.earleaf.week.Week;

/** Where a rig is through the day: across the hour, down the places in the order of the day, the yard on top. */
public final class StringChart {
    private static final double TOP = 50;
    private static final double STEP = 40;
    private static final double BOX = 18;

    private final DaySheet sheet;
    private final List<String> places;
    private final LocalDateTime begin;
    private final double hours;

    private StringChart(DaySheet sheet) {
        this.sheet = sheet;
        places = Stream.concat(
                        Stream.of(tell("page.string-chart.yard")),
                        sheet.stops().stream().map(s -> s.pass().zone()).map(Zone::label))
                .distinct()
                .toList();
        LocalDateTime first = sheet.lines().get(0).from();
        LocalDateTime last = sheet.lines().stream()
                .map(DaySheet.Line::to)
                .max(Comparator.naturalOrder())
                .orElse(first);
        begin = first.toLocalDate().atTime(first.getHour(), 0);
        hours = Math.max(1, Math.ceil(Duration.between(begin, last).toMinutes() / 60.0));
    }

    /** @param caption id of the sentence that says it */
    public static Markup of(DaySheet sheet, String caption) {
        return new StringChart(sheet).drawn(caption);
    }

    private Markup drawn(String caption) {
        double high = TOP + STEP * (places.size() - 1) + 30;
        Ink ink = new Ink().put("<svg class=\"str\" width=\"100%\" height=\"").put(high);
        ink.put("\" role=\"img\" aria-labelledby=\"").put(caption).put("\">");
        axis(ink, high);
        for (int k = 0; k < places.size(); k++) {
            ink.lineAt(0, y(k), 100, y(k), "rl");
        }
        ink.put("<svg width=\"100%\" height=\"")
                .put(high)
                .put("\" viewBox=\"0 0 1000 ")
                .put(high);
        ink.put("\" preserveAspectRatio=\"none\">").path(way(), "k3 ns").close("svg");
        boxes(ink);
        for (int k = 0; k < places.size(); k++) {
            ink.labelAt(0, y(k) - 14, "bo halo", places.get(k));
        }
        return ink.close("svg").done();
    }

    private void axis(Ink ink, double high) {
        int every = hours > 8 ? 2 : 1;
        for (int h = 0; h <= hours; h++) {
            double x = 100 * h / hours;
            ink.lineAt(x, 22, x, high, "hl");
            if (h % every == 0 && h < hours) {
                ink.labelAt(
                        x, 14, h == 0 ? "so" : "mid so", hour(begin.plusHours(h).getHour()));
            }
        }
    }

    private static String hour(int h) {
        return h == 12
                ? tell("dates.noon")
                : h < 12 ? tell("page.string-chart.am", "h", h) : tell("page.string-chart.pm", "value", h - 12);
    }

    private double y(int place) {
        return TOP + STEP * place;
    }

    private double y(Week.Stop stop) {
        return y(places.indexOf(stop.pass().zone().label()));
    }

    private double x(LocalDateTime at, double whole) {
        return whole * Duration.between(begin, at).toSeconds() / 3600 / hours;
    }

    private StringBuilder way() {
        StringBuilder d = new StringBuilder("M");
        double from = y(0);
        boolean started = false;
        for (DaySheet.Line l : sheet.lines()) {
            double to = l.kind() == DaySheet.Kind.HOME ? y(0) : y(l.stop());
            if (l.kind() != DaySheet.Kind.HOME) {
                point(d, started, l.from(), from);
                started = true;
            }
            point(d, started, l.to(), to);
            from = to;
        }
        return d;
    }

    private void point(StringBuilder d, boolean started, LocalDateTime at, double y) {
        if (started) {
            d.append('L');
        }
        Ink.append(d, x(at, 1000));
        d.append(' ');
        Ink.append(d, y);
    }

    private void boxes(Ink ink) {
        for (DaySheet.Line l : sheet.lines()) {
            if (l.kind() == DaySheet.Kind.LOAD) {
                LocalDateTime sprays = l.from().plusSeconds(Math.round(60 * (l.wait_min() + l.fill_min())));
                double x = x(sprays, 100);
                double wide = Math.max(.4, x(l.to(), 100) - x);
                ink.put("<rect class=\"rf\" x=\"").put(x).put("%\" width=\"").put(wide);
                ink.put("%\" y=\"")
                        .put(y(l.stop()) - BOX / 2)
                        .put("\" height=\"")
                        .put(BOX)
                        .put("\"/>");
                if (l.load() > 0) {
                    ink.labelAt(x + wide / 2, y(l.stop()) + 5, "mid onr", String.valueOf(l.load()));
                }
            }
        }
    }
}
