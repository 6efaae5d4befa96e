// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.paper;

import java.util.Arrays;
import java.util.Locale;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/** What is in the printer. */
public enum PaperSize {
    LETTER,
    A4;

    /** As CSS names it. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static PaperSize parse(String word) {
        return Arrays.stream(values())
                .filter(s -> s.word().equalsIgnoreCase(word.strip()))
                .findFirst()
                .orElseThrow(() -> new EarleafException(
                        Problem.of("paper-size.letter-or-a4", Said.text("paper"), Said.text("\"" + word + "\""))));
    }
}
