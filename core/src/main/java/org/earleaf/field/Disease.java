// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Diseases of corn leaves. */
public enum Disease {
    GRAY_LEAF_SPOT("gray leaf spot", "gr[ae]y leaf ?spot|gls"),
    NORTHERN_LEAF_BLIGHT("northern leaf blight", "northern (corn )?leaf blight|nc?lb"),
    SOUTHERN_RUST("southern rust", "southern (corn )?rust|sr"),
    COMMON_RUST("common rust", "common (corn )?rust|cr"),
    TAR_SPOT("tar spot", "tar ?spot|ts");

    private final String word;
    private final Pattern pattern;

    Disease(String word, String pattern) {
        this.word = word;
        this.pattern = Pattern.compile(pattern);
    }

    public String word() {
        return word;
    }

    /** The disease of that name, in words or by the usual letters ("GLS"). */
    public static Optional<Disease> find(String name) {
        String plain = name.strip().toLowerCase(Locale.ROOT);
        return Arrays.stream(values())
                .filter(d -> d.pattern.matcher(plain).matches())
                .findFirst();
    }

    public static Optional<Disease> findByWord(String word) {
        return Arrays.stream(values())
                .filter(d -> d.word.equalsIgnoreCase(word.trim()))
                .findFirst();
    }

    public static String words() {
        return Arrays.stream(values()).map(Disease::word).collect(Collectors.joining(", "));
    }
}
