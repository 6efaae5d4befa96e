// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.Locale;
import java.util.Optional;
import java.util.Set;

/** Yes and no as people write them. */
final class YesNo {
    static final String WORDS = "yes, no";
    private static final Set<String> YES = Set.of("yes", "y", "true", "1", "x");
    private static final Set<String> NO = Set.of("no", "n", "false", "0");

    private YesNo() {}

    static Optional<Boolean> find(String word) {
        String plain = word.toLowerCase(Locale.ROOT);
        return YES.contains(plain) ? Optional.of(true) : NO.contains(plain) ? Optional.of(false) : Optional.empty();
    }
}
