// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.units.Flag;

/** Remarks on filled weather, one for each kind and year, so that a long record does not drown its reader. */
final class FillNotes {
    private static final int DAYS_NAMED = 3;

    private record Kind(String what, String then) {}

    private final String where;
    private final Map<Integer, Map<Kind, List<LocalDate>>> days = new TreeMap<>();

    FillNotes(String where) {
        this.where = where;
    }

    /** @param then what was taken instead */
    void add(LocalDate day, String what, String then) {
        days.computeIfAbsent(day.getYear(), y -> new LinkedHashMap<>())
                .computeIfAbsent(new Kind(what, then), k -> new ArrayList<>())
                .add(day);
    }

    List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        days.forEach((year, kinds) -> kinds.forEach((kind, on) ->
                flags.add(new Flag(where + ", " + year, kind.what() + " on " + count(on) + ", " + kind.then()))));
        return flags;
    }

    private static String count(List<LocalDate> on) {
        if (on.size() == 1) {
            return on.get(0).toString();
        }
        String named = on.size() > DAYS_NAMED
                ? " (" + on.get(0) + " first)"
                : " (" + String.join(", ", on.stream().map(LocalDate::toString).toList()) + ")";
        return on.size() + " days" + named;
    }
}
