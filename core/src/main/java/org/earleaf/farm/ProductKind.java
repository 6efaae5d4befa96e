// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;

/** What a product is for. */
public enum ProductKind {
    FUNGICIDE,
    INSECTICIDE,
    HERBICIDE,
    FERTILIZER,
    HELPER,
    /** Not told. */
    OTHER;

    /** Whether its label limits a mix; a helper such as a spreader and plain fertiliser bring no limits of their own. */
    public boolean isLimiting() {
        return this != HELPER && this != FERTILIZER;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<ProductKind> findByWord(String word) {
        return Arrays.stream(values())
                .filter(k -> k.word().equalsIgnoreCase(word.trim()))
                .findFirst();
    }

    public static String words() {
        return Arrays.stream(values()).map(ProductKind::word).collect(Collectors.joining(", "));
    }
}
