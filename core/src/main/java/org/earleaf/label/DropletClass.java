// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/** Droplet classes by their usual letters, finest first (ISO 25358:2018, ASABE S572.3: relative classes, no sizes). */
public enum DropletClass {
    XF("extremely-fine"),
    VF("very-fine"),
    F("fine"),
    M("medium"),
    C("coarse"),
    VC("very-coarse"),
    XC("extremely-coarse"),
    UC("ultra-coarse");

    private final String word;

    DropletClass(String word) {
        this.word = word;
    }

    /** By letters or words. */
    public static Optional<DropletClass> find(String text) {
        String plain = text.trim();
        return Arrays.stream(values())
                .filter(c ->
                        c.name().equalsIgnoreCase(plain) || c.word.equalsIgnoreCase(plain.replaceAll("[\\s_]+", "-")))
                .findFirst();
    }

    /** Letters of all classes, the finest first. */
    public static List<String> letters() {
        return Arrays.stream(values()).map(Enum::name).toList();
    }

    public boolean isMediumOrFiner() {
        return compareTo(M) <= 0;
    }
}
