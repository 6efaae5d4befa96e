// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;

/** What was mixed in to slow a loss. */
public enum Inhibitor {
    NONE,
    UREASE,
    NITRIFICATION,
    BOTH;

    public boolean slowsUrea() {
        return this == UREASE || this == BOTH;
    }

    public boolean slowsNitrification() {
        return this == NITRIFICATION || this == BOTH;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Inhibitor> findByWord(String word) {
        return Arrays.stream(values())
                .filter(v -> v.word().equalsIgnoreCase(word.trim()))
                .findFirst();
    }

    public static String words() {
        return String.join(", ", Arrays.stream(values()).map(Inhibitor::word).toList());
    }
}
