// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.Arrays;

/** What stands behind a number or a statement. */
public enum Support {
    PUBLISHED("published", "published (abstract or text read)"),
    DERIVED("derived", "derived from published figures, in part recalled"),
    MEMORY("memory", "published, from memory"),
    PRACTICE("practice", "common practice, no source"),
    ASSUMPTION("assumption", "assumption");

    private final String token;
    private final String word;

    Support(String token, String word) {
        this.token = token;
        this.word = word;
    }

    public String word() {
        return word;
    }

    public static Support ofToken(String token) {
        return Arrays.stream(values())
                .filter(s -> s.token.equals(token))
                .findFirst()
                .orElseThrow();
    }
}
