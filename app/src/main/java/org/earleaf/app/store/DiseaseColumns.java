// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.Arrays;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Zone;

/** What is known of disease, in a zone's row. */
final class DiseaseColumns {
    private static final String BETWEEN = "; ";

    private DiseaseColumns() {}

    static Table.Builder<Zone> add(Table.Builder<Zone> table) {
        return table.number(
                        "disease_rating",
                        "rating of the hybrid",
                        z -> z.disease().rating(),
                        Shown.PLAIN)
                .text(
                        "disease_ratings",
                        "ratings by disease",
                        z -> ratings(z.disease().ratings()))
                .text(
                        "disease_history",
                        "diseases known here",
                        z -> history(z.disease().history()))
                .text("wet_place", "wet place", z -> z.disease().wetPlace() ? "yes" : "no");
    }

    private static String ratings(Map<Disease, Double> ratings) {
        return ratings.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(e -> e.getKey().word() + " " + e.getValue())
                .collect(Collectors.joining(BETWEEN));
    }

    private static String history(Set<Disease> history) {
        return history.stream()
                .sorted(Comparator.naturalOrder())
                .map(Disease::word)
                .collect(Collectors.joining(BETWEEN));
    }

    private static Stream<String> parts(String text) {
        return Arrays.stream(text.split(BETWEEN)).filter(p -> !p.isEmpty());
    }

    static DiseaseFacts read(Row r) {
        Map<Disease, Double> ratings = new EnumMap<>(Disease.class);
        parts(r.text("disease_ratings")).forEach(p -> {
            int blank = p.lastIndexOf(' ');
            ratings.put(
                    Disease.findByWord(p.substring(0, blank)).orElseThrow(), Double.valueOf(p.substring(blank + 1)));
        });
        Set<Disease> history = parts(r.text("disease_history"))
                .map(p -> Disease.findByWord(p).orElseThrow())
                .collect(Collectors.toSet());
        return new DiseaseFacts(
                r.number("disease_rating"),
                ratings,
                history,
                r.text("wet_place").equals("yes"));
    }
}
