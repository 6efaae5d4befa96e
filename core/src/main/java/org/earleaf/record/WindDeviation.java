// SPDX-License-Identifier: Apache-2.0
package org.earleaf.record;

import java.util.List;
import java.util.Optional;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Quantity;
import org.earleaf.units.Said;

/** What the wind was against what the labels of the products say. */
final class WindDeviation {
    /** Where a record tells it, and the wind that it is of. */
    static final String KEY = "deviation";

    static final String WIND = "wind";
    private static final double EPS = 1e-9;

    private WindDeviation() {}

    /**
     * The first limit that it breaks; refused when a label states one and nobody told the wind.
     *
     * @param products of the record
     * @param wind as told, with or without "from SW"
     */
    static Optional<Said> find(List<String> products, String crop, LabelBook labels, String wind) {
        for (String product : products) {
            Optional<LabelEntry> label = labels.find(product, crop);
            if (label.isEmpty()) {
                continue;
            }
            for (LabelItem item : List.of(LabelItem.WIND_MOST, LabelItem.WIND_LEAST)) {
                LabelFigure stated = label.get().figure(item);
                if (stated.isStated() && isOutside(item, stated.limit().value(), wind)) {
                    return Optional.of(Said.of(
                            "record.wind-outside",
                            "wind",
                            wind,
                            "product",
                            product,
                            "stated",
                            stated.entered(),
                            "item",
                            item));
                }
            }
        }
        return Optional.empty();
    }

    private static boolean isOutside(LabelItem item, double limit_ms, String said) {
        if (said.isBlank()) {
            throw new EarleafException(Problem.of("record.no-wind", Said.of("where.wind"), Said.of("found.nothing")));
        }
        double wind_ms = Quantity.parse(said.replaceFirst("(?i)\\s+from\\s+.*", ""), Dimension.SPEED, WIND)
                .inside();
        return item.bound() == LabelItem.Bound.MOST ? wind_ms > limit_ms * (1 + EPS) : wind_ms < limit_ms * (1 - EPS);
    }
}
