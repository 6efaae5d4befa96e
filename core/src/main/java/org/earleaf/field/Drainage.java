// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How water leaves below. */
public enum Drainage {
    TILED,
    POOR,
    WELL;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Drainage> findByWord(String word) {
        return Arrays.stream(values())
                .filter(v -> v.word().equalsIgnoreCase(word.trim()))
                .findFirst();
    }

    public static String words() {
        return String.join(", ", Arrays.stream(values()).map(Drainage::word).toList());
    }
}
