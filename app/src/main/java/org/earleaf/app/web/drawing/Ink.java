// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import org.earleaf.app.web.text.Markup;

/** Writes SVG: short numbers, escaped text. */
final class Ink {
    private final StringBuilder svg = new StringBuilder(512);

    Ink put(String raw) {
        svg.append(raw);
        return this;
    }

    /** To one decimal, without trailing zero. */
    Ink put(double value) {
        append(svg, value);
        return this;
    }

    Ink text(String plain) {
        svg.append(Markup.escape(plain));
        return this;
    }

    Ink open(String head) {
        svg.append('<').append(head).append('>');
        return this;
    }

    Ink close(String tag) {
        svg.append("</").append(tag).append('>');
        return this;
    }

    Ink line(double x1, double y1, double x2, double y2, String cls) {
        svg.append("<path class=\"").append(cls).append("\" d=\"M");
        put(x1).put(" ").put(y1).put("L").put(x2).put(" ").put(y2);
        svg.append("\"/>");
        return this;
    }

    Ink rect(double x, double y, double width, double height, String cls) {
        svg.append("<rect class=\"").append(cls).append("\" x=\"");
        put(x).put("\" y=\"")
                .put(y)
                .put("\" width=\"")
                .put(width)
                .put("\" height=\"")
                .put(height);
        svg.append("\"/>");
        return this;
    }

    /** Nothing for an empty path. */
    Ink path(CharSequence d, String cls) {
        if (d.isEmpty()) {
            return this;
        }
        svg.append("<path class=\"").append(cls).append("\" d=\"").append(d).append("\"/>");
        return this;
    }

    Ink label(double x, double y, String cls, String plain) {
        svg.append("<text class=\"").append(cls).append("\" x=\"");
        put(x).put("\" y=\"").put(y).put("\">").text(plain).close("text");
        return this;
    }

    /** A label that stays at its size in a stretched drawing; x in per cent. */
    Ink labelAt(double percent, double y, String cls, String plain) {
        svg.append("<text class=\"").append(cls).append("\" x=\"");
        put(percent).put("%\" y=\"").put(y).put("\">").text(plain).close("text");
        return this;
    }

    /** A line in a stretched drawing; x in per cent. */
    Ink lineAt(double x1, double y1, double x2, double y2, String cls) {
        svg.append("<line class=\"").append(cls).append("\" x1=\"");
        put(x1).put("%\" x2=\"")
                .put(x2)
                .put("%\" y1=\"")
                .put(y1)
                .put("\" y2=\"")
                .put(y2);
        svg.append("\"/>");
        return this;
    }

    /** A label so many px beside a place in a stretched drawing; x in per cent. */
    Ink labelBeside(double percent, double px, double y, String cls, String plain) {
        svg.append("<svg x=\"");
        put(percent).put("%\" overflow=\"visible\">").label(px, y, cls, plain).close("svg");
        return this;
    }

    /** A dot that stays round in a stretched drawing; x in per cent. */
    Ink dotAt(double percent, double y, double r, String cls) {
        svg.append("<circle class=\"").append(cls).append("\" r=\"");
        put(r).put("\" cy=\"").put(y).put("\" cx=\"").put(percent).put("%\"/>");
        return this;
    }

    Markup done() {
        return new Markup(svg.toString());
    }

    static void append(StringBuilder to, double value) {
        if (Double.isNaN(value) || Double.isInfinite(value)) {
            throw new IllegalArgumentException("a drawing was given " + value);
        }
        long tenths = Math.round(value * 10);
        if (tenths < 0) {
            to.append('-');
            tenths = -tenths;
        }
        to.append(tenths / 10);
        if (tenths % 10 != 0) {
            to.append('.').append(tenths % 10);
        }
    }

    static double clamp(double value, double low, double high) {
        return Math.max(low, Math.min(high, value));
    }
}
