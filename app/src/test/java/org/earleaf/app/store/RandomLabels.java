// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.random.RandomGenerator;
import org.earleaf.farm.ProductKind;
import org.earleaf.farm.ProductLabel;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.weather.LabelLimit;
import org.earleaf.weather.SprayLabel;

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

    static ProductLabel label(RandomGenerator random) {
        SprayLabel weather = new SprayLabel(limit(random), limit(random), limit(random), limit(random), yesNo(random));
        ProductKind kind = ProductKind.values()[random.nextInt(ProductKind.values().length)];
        List<String> groups = List.of("11", "3A", "4D").subList(0, random.nextInt(4));
        return new ProductLabel(
                kind, groups, weather, limit(random), limit(random), limit(random), limit(random), yesNo(random));
    }

    private static Optional<Boolean> yesNo(RandomGenerator random) {
        return random.nextBoolean() ? Optional.empty() : Optional.of(random.nextBoolean());
    }

    private static LabelLimit limit(RandomGenerator random) {
        return switch (random.nextInt(3)) {
            case 0 -> LabelLimit.notEntered();
            case 1 -> LabelLimit.noneStated();
            default -> LabelLimit.of(random.nextDouble() * 100);
        };
    }
}
