// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** How the seed bed was made. */
public enum Tillage {
    NONE,
    REDUCED,
    FULL;

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Tillage> findByWord(String word) {
        return Arrays.stream(values())
                .filter(v -> v.word().equalsIgnoreCase(word.trim()))
                .findFirst();
    }

    public static String words() {
        return String.join(", ", Arrays.stream(values()).map(Tillage::word).toList());
    }
}
