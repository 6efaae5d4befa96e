// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Yes and no as people write them. */
public final class YesNo {
    public static final String WORDS = String.join(", ", "yes", "no");
    private static final Set<String> YES = Set.of("yes", "y", "true", "1", "x");
    private static final Set<String> NO = Set.of("no", "n", "false", "0");

    private YesNo() {}

    public static Optional<Boolean> find(String word) {
        String plain = word.strip().toLowerCase(Locale.ROOT);
        return YES.contains(plain) ? Optional.of(true) : NO.contains(plain) ? Optional.of(false) : Optional.empty();
    }
}
