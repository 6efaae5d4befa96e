// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import java.util.List;

/**
 * Ranks of a page inside a text: {@code <b>} strong, {@code <now>} today or the limit that binds, {@code <u>} a unit,
 * {@code <rg>} a spread, {@code <line>} a sentence of a headline, {@code <vh>} heard and not seen, {@code <whole>} kept
 * on one line. While a sentence is made they are single signs of
 * Unicode's private use, which no value may bring along; a print drops them and a page writes them as tags.
 */
final class Marks {
    private static final List<String> NAMES = List.of("b", "now", "u", "rg", "line", "vh", "whole");
    private static final List<String> TAGS = List.of(
            "<b>",
            "<span class=\"now\">",
            "<span class=\"u\">",
            "<span class=\"rg\">",
            "<span class=\"line\">",
            "<span class=\"vh\">",
            "<span class=\"whole\">");
    private static final char FIRST = '\uE000';
    private static final String ANY = "[\uE000-\uE0FF]";

    private Marks() {}

    /** A message of the catalogue with its marks as single signs. */
    static String set(String message) {
        String text = message;
        for (int k = 0; k < NAMES.size(); k++) {
            text = text.replace("<" + NAMES.get(k) + ">", sign(2 * k))
                    .replace("</" + NAMES.get(k) + ">", sign(2 * k + 1));
        }
        return text;
    }

    /** A text of one mark, such as a unit. */
    static String in(String mark, String text) {
        int k = NAMES.indexOf(mark);
        return sign(2 * k) + text + sign(2 * k + 1);
    }

    /** Without marks: of a value from outside, or for print. */
    static String dropped(String text) {
        return text.replaceAll(ANY, "");
    }

    /** Safe HTML. */
    static String html(String made) {
        String html = made.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
        for (int k = 0; k < NAMES.size(); k++) {
            String tag = TAGS.get(k);
            html = html.replace(sign(2 * k), tag).replace(sign(2 * k + 1), tag.startsWith("<b") ? "</b>" : "</span>");
        }
        return html;
    }

    private static String sign(int k) {
        return String.valueOf((char) (FIRST + k));
    }
}
