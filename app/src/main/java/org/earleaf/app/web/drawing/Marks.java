// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.web.drawing;

import org.earleaf.app.web.text.Markup;

/** The marks of state, always followed by a word. */
public final class Marks {
    private static final String FRAME = "<path class=\"kn\" d=\"M1.2 1.2h13.6v13.6H1.2z\"/>";

    private Marks() {}

    /** Done, within the limit. */
    public static Markup done(String word) {
        return state("<path class=\"k\" d=\"M1 1h14v14H1z\"/><path class=\"tick\" d=\"M4 8l3 3 5-6\"/>", word);
    }

    /** Soon, waiting. */
    public static Markup soon(String word) {
        return state(FRAME + "<path class=\"k\" d=\"M2 14L14 2v12z\"/>", word);
    }

    /** Out of reach, not allowed. */
    public static Markup out(String word) {
        return state(FRAME + "<path class=\"kn\" d=\"M3 13L13 3M3 3l10 10\"/>", word);
    }

    /** To do. */
    public static Markup open(String word) {
        return state(FRAME, word);
    }

    /** A reading or a correction. */
    public static Markup reading(String word) {
        return state(
                "<circle class=\"kn\" cx=\"8\" cy=\"8\" r=\"6.6\"/><circle class=\"k\" cx=\"8\" cy=\"8\" r=\"2.2\"/>",
                word);
    }

    private static Markup state(String drawing, String word) {
        return new Markup("<span class=\"st\"><svg viewBox=\"0 0 16 16\" aria-hidden=\"true\">" + drawing + "</svg>"
                + Markup.escape(word) + "</span>");
    }
}
