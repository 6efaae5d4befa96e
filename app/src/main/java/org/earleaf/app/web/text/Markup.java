// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.text;

/** Text that is already safe HTML; made by {@link Say} or by a drawing, printed by templates as it is. */
public record Markup(String html) {
    public static final Markup NONE = new Markup("");

    /** Plain text made safe. */
    public static Markup text(String plain) {
        return new Markup(escape(plain));
    }

    public boolean isEmpty() {
        return html.isEmpty();
    }

    /** The five signs of HTML written out. */
    public static String escape(String plain) {
        return plain.replace("&", "&amp;")
                .replace("<", "&lt;")
                .replace(">", "&gt;")
                .replace("\"", "&quot;")
                .replace("'", "&#39;");
    }

    @Override
    public String toString() {
        return html;
    }
}
