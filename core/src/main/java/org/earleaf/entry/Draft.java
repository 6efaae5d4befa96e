// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What a person entered, part by part, all as text; a part that is not there, or blank, was not given. The names of parts
 * are those of the columns of a farm folder, of the options of a command and of the boxes of a page.
 */
public record Draft(Map<String, String> parts) {
    public Draft {
        parts = Map.copyOf(parts);
    }

    /** {@code Draft.of("field", field, "rate", rate)}. */
    public static Draft of(String... namesAndTexts) {
        Map<String, String> parts = new LinkedHashMap<>();
        for (int k = 0; k < namesAndTexts.length; k += 2) {
            parts.put(namesAndTexts[k], namesAndTexts[k + 1]);
        }
        return new Draft(parts);
    }

    /** Without the blanks around it; empty: not given. */
    public String text(String part) {
        return parts.getOrDefault(part, "").strip();
    }

    public boolean has(String part) {
        return !text(part).isEmpty();
    }

    /** The first of these parts that was given, or else the first. */
    public String firstGiven(String... names) {
        for (String part : names) {
            if (has(part)) {
                return part;
            }
        }
        return names[0];
    }

    /** The same, where a part was not given with the text of the other. */
    public Draft or(Draft other) {
        Map<String, String> all = new LinkedHashMap<>(other.parts);
        parts.forEach((part, text) -> {
            if (!text.isBlank()) {
                all.put(part, text);
            }
        });
        return new Draft(all);
    }

    public Draft with(String part, String text) {
        Map<String, String> all = new LinkedHashMap<>(parts);
        all.put(part, text);
        return new Draft(all);
    }
}
