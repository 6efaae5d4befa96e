// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.units.Flag;

/**
 * What an import did.
 *
 * @param first whether there was no farm before
 * @param added how many facts of each kind are new
 * @param weatherFrom first day of weather now stored
 * @param weatherTo last day of weather now stored
 * @param differences what was stored otherwise before
 * @param flags what was filled in or clamped in the folder
 */
public record ImportReport(
        String farm,
        boolean first,
        Map<String, Integer> added,
        LocalDate weatherFrom,
        LocalDate weatherTo,
        List<Difference> differences,
        List<Flag> flags) {
    public ImportReport {
        added = Collections.unmodifiableMap(new LinkedHashMap<>(added));
        differences = List.copyOf(differences);
        flags = List.copyOf(flags);
    }

    /** Counts by kind, in the order in which they are met. */
    static final class Counts {
        private final Map<String, Integer> counts = new LinkedHashMap<>();

        void add(String what, int count) {
            counts.merge(what, count, Integer::sum);
        }

        Map<String, Integer> asMap() {
            return counts;
        }
    }
}
