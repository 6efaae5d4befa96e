// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.LinkedHashMap;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;

/** Prints figures as they come, and those with a key once more as one line of JSON. */
final class Told {
    private final Map<String, String> kept = new LinkedHashMap<>();

    void title(String text) {
        System.out.printf("%n%s%n", text);
    }

    void line(String what, Object figure) {
        System.out.printf(Locale.ROOT, "  %-58s %s%n", what, figure);
    }

    /** A line whose figure is kept: alone, or with the ends of its interval. */
    void line(String key, String what, Figure figure) {
        line(what, figure);
        keep(key, figure.json());
    }

    void line(String key, String what, double figure) {
        line(what, String.format(Locale.ROOT, "%.2f", figure));
        keep(key, String.format(Locale.ROOT, "%.3f", figure));
    }

    void keep(String key, String json) {
        kept.put(key, json);
    }

    String json(String bench) {
        return kept.entrySet().stream()
                .map(each -> "\"" + each.getKey() + "\":" + each.getValue())
                .collect(Collectors.joining(",", "{\"bench\":\"" + bench + "\",", "}"));
    }
}
