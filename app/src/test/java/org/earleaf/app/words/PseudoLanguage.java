// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.words;

import com.ibm.icu.text.MessagePattern;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Locale;

/**
 * American English with every letter of the catalogue replaced by one with a mark on it: what still shows plain letters
 * does not come from the catalogue.
 */
public final class PseudoLanguage {
    private static final String PLAIN = "abcdefghijklmnopqrstuvwxyzABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private static final String MARKED = "áƀćđéƒǵħíǰķĺḿńóṕɋŕśŧúṽŵẋýźÁƁĆĐÉƑǴĦÍĴĶĹḾŃÓṔɊŔŚŦÚṼŴẊÝŹ";

    private PseudoLanguage() {}

    /** From here on the program speaks it. */
    public static void begin() {
        Words.speak(Catalogue.of(Locale.US).changed(PseudoLanguage::of));
    }

    public static void end() {
        Words.speak(Catalogue.of(Locale.US));
    }

    static String of(String message) {
        boolean[] literal = literal(message);
        StringBuilder out = new StringBuilder();
        boolean tag = false;
        for (int k = 0; k < message.length(); k++) {
            char c = message.charAt(k);
            tag = c == '<' || tag && c != '>';
            boolean sign = k > 0 && message.charAt(k - 1) == '%'; // %n, the line break of picocli
            int at = literal[k] && !tag && !sign ? PLAIN.indexOf(c) : -1;
            out.append(at < 0 ? c : MARKED.charAt(at));
        }
        return out.toString();
    }

    /** Which signs of a message are text, not names of values or words of the format. */
    private static boolean[] literal(String message) {
        MessagePattern pattern = new MessagePattern(message);
        boolean[] literal = new boolean[message.length()];
        Deque<Boolean> states = new ArrayDeque<>();
        int at = 0;
        for (int k = 0; k < pattern.countParts(); k++) {
            MessagePattern.Part part = pattern.getPart(k);
            boolean text = !states.isEmpty() && states.peek();
            for (; at < part.getIndex(); at++) {
                literal[at] = text;
            }
            at = Math.max(at, part.getLimit());
            switch (part.getType()) {
                case MSG_START -> states.push(true);
                case ARG_START -> states.push(false);
                case MSG_LIMIT, ARG_LIMIT -> states.pop();
                default -> {}
            }
        }
        return literal;
    }
}
