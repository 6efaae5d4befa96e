// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.earleaf.app.web.text.Markup;
import org.earleaf.app.words.Dates;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.Spread;
import org.earleaf.season.SeasonTrace;
import org.earleaf.units.Measure;

/**
 * Nitrogen in the crop as a share of what it needs, day by day: the likeliest line, the band that holds eight of ten
 * futures, the level below which growth is held back, today, and the same with the pass.
 *
 * @param first date of the first spread
 * @param nni spread of the nitrogen nutrition index, one a day
 * @param from first day drawn
 * @param to last day drawn
 */
public record SeasonCurve(LocalDate first, List<Spread> nni, LocalDate from, LocalDate to, LocalDate today) {
    private static final double LOW = .62;
    private static final double HIGH = 1.22;
    private static final double HEAD = 24;
    private static final double PLOT = 230;
    private static final double FOOT = 26;
    private static final int WIDE = 1000;

    public SeasonCurve {
        nni = List.copyOf(nni);
    }

    /** Place of a day [% of the width]. */
    double at(LocalDate date) {
        return 100.0 * ChronoUnit.DAYS.between(from, date) / Math.max(1, ChronoUnit.DAYS.between(from, to));
    }

    static double y(double share) {
        return PLOT * (HIGH - Ink.clamp(share, LOW, HIGH)) / (HIGH - LOW);
    }

    /**
     * @param shortOn when growth is held back
     * @param withPass the index with the pass, one a day from {@link #first}, or empty
     */
    public Markup draw(String captionId, DateSpread shortOn, Optional<List<Double>> withPass) {
        Ink ink = new Ink().put("<svg class=\"curve\" width=\"100%\" height=\"").put(HEAD + PLOT + FOOT);
        ink.put("\" role=\"img\" aria-labelledby=\"").text(captionId).put("\">");
        ink.put("<svg y=\"").put(HEAD).put("\" height=\"").put(PLOT).put("\" width=\"100%\" overflow=\"visible\">");
        grid(ink);
        ink.put("<svg class=\"clip\" width=\"100%\" height=\"").put(PLOT).put("\" viewBox=\"0 0 1000 230\"");
        ink.put(" preserveAspectRatio=\"none\">");
        ink.path(band(), "bd ns")
                .path(line(k -> nni.get(k).p10()), "edge ns")
                .path(line(k -> nni.get(k).p90()), "edge ns");
        ink.path(line(k -> nni.get(k).p50()), "k3 ns");
        withPass.ifPresent(w -> ink.path(line(k -> w.get(Math.min(k, w.size() - 1))), "rr da ns"));
        ink.close("svg");
        level(ink);
        ticks(ink, shortOn);
        now(ink);
        dates(ink);
        return ink.close("svg").close("svg").done();
    }

    private void grid(Ink ink) {
        for (int share : new int[] {70, 80, 100, 110}) {
            double y = y(share / 100.0);
            ink.lineAt(0, y, 100, y, "hl");
            ink.labelAt(100, y - 5, "end so halo", share + "");
        }
    }

    private void level(Ink ink) {
        double y = y(SeasonTrace.SHORT_NNI);
        ink.lineAt(0, y, 100, y, "k2");
        ink.labelAt(
                0,
                y + 18,
                "bo halo",
                tell("page.season-curve.short-below", "mark", Measure.SHARE.of(SeasonTrace.SHORT_NNI)));
    }

    private void ticks(Ink ink, DateSpread shortOn) {
        double y = y(SeasonTrace.SHORT_NNI);
        for (Optional<LocalDate> date : List.of(shortOn.p10(), shortOn.p50(), shortOn.p90())) {
            date.filter(this::isDrawn).ifPresent(d -> ink.lineAt(at(d), y - 9, at(d), y + 9, "k2"));
        }
        shortOn.p50().filter(this::isDrawn).ifPresent(d -> {
            boolean right = at(d) < 60;
            ink.labelAt(
                    at(d),
                    y - 16,
                    (right ? "" : "end ") + "bo halo",
                    tell("page.season-curve.short", "d", Dates.day(d)));
        });
    }

    private void now(Ink ink) {
        if (isDrawn(today)) {
            ink.lineAt(at(today), -4, at(today), PLOT, "rr");
            String anchor = at(today) < 5 ? "" : at(today) > 95 ? "end " : "mid ";
            ink.labelAt(at(today), -10, anchor + "rd", tell("dates.today"));
        }
    }

    private void dates(Ink ink) {
        ink.lineAt(0, PLOT, 100, PLOT, "kn");
        long days = ChronoUnit.DAYS.between(from, to);
        for (int k = 0; k < 5; k++) {
            LocalDate date = from.plusDays(days * k / 4);
            double x = at(date);
            ink.lineAt(x, PLOT, x, PLOT + 5, "kn");
            String anchor = k == 0 ? "" : k == 4 ? "end " : "mid ";
            ink.labelAt(x, PLOT + 22, anchor + "so" + (k % 2 == 1 ? " only-w" : ""), Dates.day(date));
        }
    }

    private boolean isDrawn(LocalDate date) {
        return !date.isBefore(from) && !date.isAfter(to);
    }

    private int index(LocalDate date) {
        return (int) Ink.clamp(ChronoUnit.DAYS.between(first, date), 0, nni.size() - 1.0);
    }

    private StringBuilder line(IntToDoubleFunction share) {
        StringBuilder d = new StringBuilder();
        append(d, share, index(from), index(to), 1);
        return d;
    }

    private StringBuilder band() {
        StringBuilder d = new StringBuilder();
        append(d, k -> nni.get(k).p90(), index(from), index(to), 1);
        append(d, k -> nni.get(k).p10(), index(to), index(from), -1);
        return d.append('z');
    }

    private void append(StringBuilder d, IntToDoubleFunction share, int start, int end, int step) {
        for (int k = start; step > 0 ? k <= end : k >= end; k += step) {
            d.append(d.isEmpty() ? 'M' : 'L');
            Ink.append(d, at(first.plusDays(k)) * WIDE / 100);
            d.append(' ');
            Ink.append(d, y(share.applyAsDouble(k)));
        }
    }
}
