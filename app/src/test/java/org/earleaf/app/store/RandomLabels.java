// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.Instant;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.earleaf.farm.ProductKind;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.label.ActiveIngredient;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.label.LabelLimit;

/** Random facts on disease and labels, for farms that go through the store. */
final class RandomLabels {
    private RandomLabels() {}

    static DiseaseFacts disease(RandomGenerator random) {
        Map<Disease, Double> ratings = new TreeMap<>();
        Set<Disease> history = new HashSet<>();
        for (Disease d : Disease.values()) {
            if (random.nextBoolean()) {
                ratings.put(d, 1 + 8 * random.nextDouble());
                history.add(Disease.values()[random.nextInt(Disease.values().length)]);
            }
        }
        double rating = random.nextBoolean() ? Double.NaN : 1 + 8 * random.nextDouble();
        return new DiseaseFacts(rating, ratings, history, random.nextBoolean());
    }

    static ProductKind kind(RandomGenerator random) {
        return ProductKind.values()[random.nextInt(ProductKind.values().length)];
    }

    /** Entries of some products on some crops, looked at twice or waiting. */
    static LabelBook book(RandomGenerator random) {
        List<LabelEntry> entries = new ArrayList<>();
        for (int k = random.nextInt(4); k > 0; k--) {
            entries.add(entry("product " + k, random));
        }
        return new LabelBook(entries);
    }

    private static LabelEntry entry(String product, RandomGenerator random) {
        Map<LabelItem, LabelFigure> figures = new EnumMap<>(LabelItem.class);
        for (LabelItem item : LabelItem.values()) {
            figures.put(item, new LabelFigure(limit(random), "as \"printed\" " + random.nextInt(9)));
        }
        ActiveIngredient active =
                new ActiveIngredient("demo", random.nextDouble(), 1, List.of("FRAC 11"), limit(random), limit(random));
        LabelEntry first = new LabelEntry(
                new LabelEntry.Title(
                        product, random.nextBoolean() ? "corn" : "wheat", random.nextBoolean(), "INVENTED", "1"),
                LabelEntry.Clock.values()[random.nextInt(3)],
                List.of(active),
                figures,
                new LabelEntry.InTank(Set.of("COC"), Set.of("WC")),
                Map.of("alfalfa", random.nextDouble()),
                LabelEntry.Look.first("A", Instant.ofEpochSecond(random.nextInt())));
        return random.nextBoolean() ? first : first.checkedBy("B", Instant.ofEpochSecond(random.nextInt()));
    }

    private static LabelLimit limit(RandomGenerator random) {
        return switch (random.nextInt(3)) {
            case 0 -> LabelLimit.notEntered();
            case 1 -> LabelLimit.noneStated();
            default -> LabelLimit.of(random.nextDouble() * 100);
        };
    }
}
