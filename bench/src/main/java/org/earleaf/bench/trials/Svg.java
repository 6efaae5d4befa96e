// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Formatter;
import java.util.Locale;

/** A drawing as it is written, element by element. */
final class Svg {
    static final String CORN = "corn";
    static final String SOYBEAN = "soybean";

    /** Two colors that stay apart for eyes without red or green. */
    private static final String STYLE = """
            <style>
              text { font: 14px sans-serif; fill: #222; }
              .title { font-size: 18px; font-weight: bold; }
              .grid { stroke: #ddd; }
              .axis { stroke: #555; fill: none; }
              .even { stroke: #555; stroke-dasharray: 6 4; }
              .model { stroke: #1f5fa8; stroke-width: 2.5; fill: none; }
              .corn { fill: #b35806; fill-opacity: .75; stroke: #fff; stroke-width: .5; }
              .soybean { fill: #1f5fa8; fill-opacity: .75; stroke: #fff; stroke-width: .5; }
            </style>
            """;

    private static final double POINT = 5;

    private final Formatter text = new Formatter(Locale.ROOT);

    /**
     * @param title what it shows
     * @param description the same for those who cannot see it
     */
    Svg(int width, int height, String title, String description) {
        text.format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" viewBox=\"0 0 %d %d\" role=\"img\" aria-labelledby=\"t d\">%n",
                width, height);
        text.format("<title id=\"t\">%s</title>%n<desc id=\"d\">%s</desc>%n", escaped(title), escaped(description));
        text.format("%s", STYLE);
        text.format("<rect width=\"%d\" height=\"%d\" fill=\"#fff\"/>%n", width, height);
    }

    private static String escaped(String words) {
        return words.replace("&", "&amp;").replace("<", "&lt;");
    }

    /** @param anchor start, middle or end of the words stands at the place */
    Svg words(double x, double y, String anchor, String words) {
        text.format("<text x=\"%.1f\" y=\"%.1f\" text-anchor=\"%s\">%s</text>%n", x, y, anchor, escaped(words));
        return this;
    }

    Svg title(double x, double y, String words) {
        text.format("<text class=\"title\" x=\"%.1f\" y=\"%.1f\">%s</text>%n", x, y, escaped(words));
        return this;
    }

    Svg line(String looks, Place from, Place to) {
        text.format(
                "<line class=\"%s\" x1=\"%.1f\" y1=\"%.1f\" x2=\"%.1f\" y2=\"%.1f\"/>%n",
                looks, from.x(), from.y(), to.x(), to.y());
        return this;
    }

    Svg curve(String looks, Iterable<Place> places) {
        text.format("<path class=\"%s\" d=\"", looks);
        char step = 'M';
        for (Place place : places) {
            text.format("%c%.1f %.1f", step, place.x(), place.y());
            step = 'L';
        }
        text.format("\"/>%n");
        return this;
    }

    /** A circle for corn, a triangle for soybean. */
    Svg point(String looks, Place at) {
        if (looks.equals(CORN)) {
            text.format("<circle class=\"%s\" cx=\"%.1f\" cy=\"%.1f\" r=\"%.0f\"/>%n", looks, at.x(), at.y(), POINT);
        } else {
            text.format(
                    "<path class=\"%s\" d=\"M%.1f %.1fl%.0f %.0fh%.0fz\"/>%n",
                    looks, at.x(), at.y() - POINT - 1, POINT + 1, 2 * POINT, -2 * (POINT + 1));
        }
        return this;
    }

    /** Where something stands in a drawing. */
    record Place(double x, double y) {}

    @Override
    public String toString() {
        return text + "</svg>\n";
    }
}
