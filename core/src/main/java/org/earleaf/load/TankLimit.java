// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelFigure;
import org.earleaf.label.LabelItem;
import org.earleaf.units.Said;

/**
 * What binds a whole tank: of an item the strictest figure among the labels of what is in it.
 *
 * @param product whose label it is
 */
public record TankLimit(LabelItem item, LabelFigure figure, String product) {
    /** Items that a tank has as a whole; amounts belong to each product. */
    private static final Set<LabelItem> OF_PRODUCT = EnumSet.of(
            LabelItem.SINGLE,
            LabelItem.LEAST,
            LabelItem.SEASON,
            LabelItem.PASSES,
            LabelItem.GROUP_RUN,
            LabelItem.INTERVAL);

    /** The binding figures for a crop, in the order of labels; an item that no label states is left out. */
    public static List<TankLimit> of(LabelBook labels, String crop, List<String> products) {
        List<TankLimit> limits = new ArrayList<>();
        for (LabelItem item : LabelItem.values()) {
            if (!OF_PRODUCT.contains(item)) {
                strictest(labels, crop, products, item).ifPresent(limits::add);
            }
        }
        return limits;
    }

    private static Optional<TankLimit> strictest(LabelBook labels, String crop, List<String> products, LabelItem item) {
        return products.stream()
                .flatMap(p -> labels.find(p, crop).stream())
                .map(e -> new TankLimit(item, e.figure(item), e.product()))
                .filter(t -> t.figure.isStated())
                .reduce((one, other) -> one.isStricterThan(other) ? one : other);
    }

    /** The first named stays where two say the same. */
    private boolean isStricterThan(TankLimit other) {
        double here = figure.limit().value();
        double there = other.figure.limit().value();
        // A label that forbids inversions is stricter than one that does not.
        boolean least = item.bound() == LabelItem.Bound.LEAST || item == LabelItem.INVERSION;
        return least ? here >= there : here <= there;
    }

    public Said said() {
        return Said.of("tank.limit", "item", item, "figure", figure.entered(), "product", product);
    }
}
