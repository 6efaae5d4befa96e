// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.text;

/** Builds a sentence in the ranks of the page: the value strong, its unit small, its spread soft. Every text is escaped. */
public final class Say {
    private final StringBuilder html = new StringBuilder();

    public Say text(String plain) {
        html.append(Markup.escape(plain));
        return this;
    }

    public Say strong(String plain) {
        return tag("<b>", plain, "</b>");
    }

    /** Today, the planned act, the limit that binds. */
    public Say now(String plain) {
        return tag("<span class=\"now\">", plain, "</span>");
    }

    public Say unit(String plain) {
        return tag(" <span class=\"u\">", plain, "</span>");
    }

    /** A spread in brackets. */
    public Say range(String plain) {
        return tag(" <span class=\"rg\">", plain, "</span>");
    }

    /** A sentence of a headline, on a line of its own where there is room. */
    public Say sentence(String plain) {
        if (!html.isEmpty()) {
            html.append(' ');
        }
        return tag("<span class=\"line\">", plain, "</span>");
    }

    /** The sentence that opens with the word for now. */
    public Say sentence(String now, String rest) {
        html.append("<span class=\"line\">");
        return now(now).text(rest).raw("</span>");
    }

    private Say raw(String tag) {
        html.append(tag);
        return this;
    }

    public Say markup(Markup made) {
        html.append(made.html());
        return this;
    }

    private Say tag(String open, String plain, String close) {
        html.append(open).append(Markup.escape(plain)).append(close);
        return this;
    }

    public Markup done() {
        return new Markup(html.toString());
    }
}
