// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.OptionalInt;

/** How deep the brackets of a JSON text go, told without reading it: what reads it would use up its stack. */
final class JsonDepth {
    private JsonDepth() {}

    /** Where brackets go deeper than they may; empty where they never do. Text in quotes does not count. */
    static OptionalInt findBeyond(String text, int deepest) {
        int depth = 0;
        boolean quoted = false;
        for (int k = 0; k < text.length(); k++) {
            char c = text.charAt(k);
            if (quoted) {
                // What follows a backslash ends no text.
                k += c == '\\' ? 1 : 0;
                quoted = c != '"';
            } else if (c == '"') {
                quoted = true;
            } else if (c == '[' || c == '{') {
                if (++depth > deepest) {
                    return OptionalInt.of(k);
                }
            } else if (c == ']' || c == '}') {
                depth--;
            }
        }
        return OptionalInt.empty();
    }
}
