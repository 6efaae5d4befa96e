// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import static org.earleaf.app.words.Words.tell;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.app.web.text.Format;
import org.earleaf.app.web.text.Markup;

/** Money gained against something that can be chosen or that may change: lines, bands and points over one scale. */
public final class WorthPlot {
    private static final double HEAD = 26;
    private static final double PLOT = 230;
    private static final double FOOT = 26;
    private static final double MARGIN = .08;
    /** Where values end; the rest is for the figures of the money [% of the width]. */
    private static final double PLOTTED = 91;

    private static final double WIDE = 1000;

    private final double left;
    private final double right;
    private double low;
    private double high;
    private final List<Ranged> parts = new ArrayList<>();
    private final List<Ranged> labels = new ArrayList<>();

    /**
     * @param left value at the left edge
     * @param right value at the right edge
     */
    public WorthPlot(double left, double right) {
        this.left = left;
        this.right = right;
    }

    /** A value and the money gained with it, both in the units shown. */
    public record Point(double x, double y) {}

    /** Something drawn once the scale is known. */
    private interface Ranged {
        void on(Ink ink);
    }

    private void see(List<Point> points) {
        for (Point p : points) {
            low = Math.min(low, p.y());
            high = Math.max(high, p.y());
        }
    }

    /** Between two lines over the same values. */
    public WorthPlot band(List<Point> lower, List<Point> upper) {
        see(lower);
        see(upper);
        parts.add(ink -> {
            StringBuilder d = path(upper);
            for (int k = lower.size() - 1; k >= 0; k--) {
                append(d, 'L', lower.get(k));
            }
            stretched(ink, d.append('z'), "bd ns");
            stretched(ink, path(lower), "edge ns");
            stretched(ink, path(upper), "edge ns");
        });
        return this;
    }

    public WorthPlot line(List<Point> points, String cls) {
        see(points);
        parts.add(ink -> stretched(ink, path(points), cls + " ns"));
        return this;
    }

    /** A mean with its spread. */
    public WorthPlot stem(double x, double lower, double mean, double upper) {
        see(List.of(new Point(x, lower), new Point(x, upper)));
        parts.add(ink -> {
            ink.lineAt(x(x), y(lower), x(x), y(upper), "kn");
            ink.dotAt(x(x), y(mean), 4.5, "k");
        });
        return this;
    }

    public WorthPlot dots(List<Point> points, String cls) {
        see(points);
        parts.add(ink -> points.forEach(p -> ink.dotAt(x(p.x()), y(p.y()), 4.5, cls)));
        return this;
    }

    /** The choice made. */
    public WorthPlot chosen(Point p, String words) {
        see(List.of(p));
        labels.add(ink -> {
            ink.dotAt(x(p.x()), y(p.y()), 7, "rf");
            boolean after = x(p.x()) < 60;
            ink.labelBeside(x(p.x()), after ? 12 : -12, y(p.y()) - 10, after ? "rd halo" : "end rd halo", words);
        });
        return this;
    }

    /** The choice made, on a line that rises through it. */
    public WorthPlot chosenOnRise(Point p, String words) {
        see(List.of(p));
        labels.add(ink -> {
            ink.dotAt(x(p.x()), y(p.y()), 7, "rf");
            besideRise(ink, p, 12, "rd halo", words);
        });
        return this;
    }

    /** Words at a point of a line that rises through it. */
    public WorthPlot wordOnRise(Point p, String words) {
        labels.add(ink -> besideRise(ink, p, 6, "halo", words));
        return this;
    }

    /** A line that rises leaves room before it and above, and after it and below. */
    private void besideRise(Ink ink, Point p, double gap, String cls, String words) {
        boolean before = x(p.x()) > 30;
        ink.labelBeside(
                x(p.x()), before ? -gap : gap, y(p.y()) + (before ? -8 : 18), before ? "end " + cls : cls, words);
    }

    /**
     * From here on it cannot be done.
     *
     * @param nothingFrom from here on nothing else can either
     */
    public WorthPlot closedFrom(double x, double nothingFrom, String words) {
        parts.add(0, ink -> {
            ink.put("<rect class=\"sh\" y=\"0\" height=\"").put(PLOT);
            ink.put("\" x=\"").put(x(nothingFrom));
            ink.put("%\" width=\"").put(PLOTTED - x(nothingFrom)).put("%\"/>");
            ink.lineAt(x(x), 0, x(x), PLOT, "k2");
        });
        labels.add(ink -> {
            boolean after = x(x) < 60;
            ink.labelBeside(x(x), after ? 8 : -8, 16, after ? "bo halo" : "end bo halo", words);
        });
        return this;
    }

    /** A value named below; {@code cls} may hide it on phones. */
    public WorthPlot tick(double x, String words, String cls) {
        labels.add(ink -> {
            String anchor = x(x) < 2 ? "" : x(x) > PLOTTED - 1 ? "end " : "mid ";
            ink.lineAt(x(x), PLOT, x(x), PLOT + 5, "kn");
            ink.labelAt(x(x), PLOT + 22, (anchor + cls).strip(), words);
        });
        return this;
    }

    /** @param unit of the money, above at the left */
    public Markup draw(String captionId, String unit) {
        double pad = MARGIN * Math.max(high - low, 1e-6);
        low -= pad;
        high += pad;
        Ink ink = new Ink().put("<svg class=\"curve\" width=\"100%\" height=\"").put(HEAD + PLOT + FOOT);
        ink.put("\" role=\"img\" aria-labelledby=\"").text(captionId).put("\">");
        ink.labelAt(0, 12, "so", tell("page.worth-plot.gain-at-0-do-nothing", "unit", unit));
        ink.put("<svg y=\"").put(HEAD).put("\" height=\"").put(PLOT).put("\" width=\"100%\" overflow=\"visible\">");
        double step = step(high - low);
        for (double money = Math.ceil(low / step) * step; money <= high; money += step) {
            ink.lineAt(0, y(money), 100, y(money), "hl");
        }
        parts.forEach(p -> p.on(ink));
        for (double money = Math.ceil(low / step) * step; money <= high; money += step) {
            ink.labelAt(100, y(money) - 4, "end so halo", Format.number(money, step < 1 ? 1 : 0));
        }
        ink.lineAt(0, y(0), 100, y(0), "k2");
        ink.lineAt(0, PLOT, 100, PLOT, "kn");
        labels.forEach(l -> l.on(ink));
        return ink.close("svg").close("svg").done();
    }

    /** Between three and seven rules, one, two or five and noughts apart. */
    static double step(double range) {
        double power = Math.pow(10, Math.floor(Math.log10(range / 3)));
        double times = range / 3 / power;
        return power * (times >= 5 ? 5 : times >= 2 ? 2 : 1);
    }

    /** Place of a value [% of the width]. */
    private double x(double value) {
        return PLOTTED * Ink.clamp((value - left) / (right - left), 0, 1);
    }

    private double y(double money) {
        return PLOT * (high - money) / (high - low);
    }

    private StringBuilder path(List<Point> points) {
        StringBuilder d = new StringBuilder();
        points.forEach(p -> append(d, d.isEmpty() ? 'M' : 'L', p));
        return d;
    }

    private void append(StringBuilder d, char command, Point p) {
        d.append(command);
        Ink.append(d, x(p.x()) * WIDE / 100);
        d.append(' ');
        Ink.append(d, y(p.y()));
    }

    private static void stretched(Ink ink, CharSequence d, String cls) {
        ink.put("<svg width=\"100%\" height=\"").put(PLOT).put("\" viewBox=\"0 0 1000 230\"");
        ink.put(" preserveAspectRatio=\"none\" overflow=\"visible\">")
                .path(d, cls)
                .close("svg");
    }
}
