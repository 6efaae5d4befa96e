// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.util.Arrays;

/** What stands behind a number or a statement. */
public enum Support {
    PUBLISHED("published"),
    DERIVED("derived"),
    MEMORY("memory"),
    PRACTICE("practice"),
    ASSUMPTION("assumption");

    private final String token;

    Support(String token) {
        this.token = token;
    }

    public static Support ofToken(String token) {
        return Arrays.stream(values())
                .filter(s -> s.token.equals(token))
                .findFirst()
                .orElseThrow();
    }
}
