// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.BundledTable;

/** Nested effects as {@code trial-effects.csv} has them. */
record EffectsTable(List<Parameter> effects, Nested found) {
    private List<Map<String, Double>> rows() {
        List<Map<String, Double>> rows = new ArrayList<>();
        for (int k = 0; k < effects.size(); k++) {
            Map<String, Double> row = new LinkedHashMap<>();
            row.put("farm_sd", Nested.sd(found.farm(), k));
            row.put("year_sd", Nested.sd(found.year(), k));
            row.put("rest_sd", Nested.sd(found.rest(), k));
            for (int j = 0; j < effects.size(); j++) {
                row.put("r_" + effects.get(j).name().toLowerCase(Locale.ROOT), Nested.correlation(found.total(), k, j));
            }
            rows.add(row);
        }
        return rows;
    }

    String text() {
        StringBuilder text = new StringBuilder();
        List<Map<String, Double>> rows = rows();
        text.append("parameter,").append(String.join(",", rows.get(0).keySet())).append('\n');
        for (int k = 0; k < rows.size(); k++) {
            text.append(effects.get(k)).append(',');
            text.append(rows.get(k).values().stream()
                    .map(value -> String.format(Locale.ROOT, "%.3f", value))
                    .collect(Collectors.joining(",")));
            text.append('\n');
        }
        return text.toString();
    }

    /** Each figure with where it lies when years are drawn anew, and the one in use. */
    String beside(List<BundledTable.Row> inUse, List<Nested> again) {
        List<List<Map<String, Double>>> drawn = again.stream()
                .map(each -> new EffectsTable(effects, each).rows())
                .toList();
        StringBuilder text = new StringBuilder();
        List<Map<String, Double>> rows = rows();
        for (int k = 0; k < rows.size(); k++) {
            int row = k;
            rows.get(k).forEach((column, value) -> {
                double[] sorted = drawn.stream()
                        .mapToDouble(each -> each.get(row).getOrDefault(column, Double.NaN))
                        .sorted()
                        .toArray();
                Figure figure =
                        new Figure(value, sorted[sorted.length / 20], sorted[sorted.length - 1 - sorted.length / 20]);
                text.append(String.format(
                        Locale.ROOT,
                        "  %-16s %-18s %-24s %.2f%n",
                        effects.get(row),
                        column,
                        figure,
                        inUse.get(row).number(column)));
            });
        }
        return text.toString();
    }
}
