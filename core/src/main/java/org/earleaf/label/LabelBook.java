// SPDX-License-Identifier: Apache-2.0
package org.earleaf.label;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** The label entries of a farm's shelf, in the order in which they were made. */
public record LabelBook(List<LabelEntry> entries) {
    public static final LabelBook EMPTY = new LabelBook(List.of());

    public LabelBook {
        entries = List.copyOf(entries);
    }

    /** The entry that counts: the newest that was looked at twice. */
    public Optional<LabelEntry> find(String product, String crop) {
        return last(
                entries.stream().filter(e -> e.isFor(product, crop) && e.look().isDone()));
    }

    /** A newer entry that nobody has looked at again. */
    public Optional<LabelEntry> findWaiting(String product, String crop) {
        return last(entries.stream().filter(e -> e.isFor(product, crop)))
                .filter(e -> !e.look().isDone());
    }

    /** What advice needs of it. */
    public ProductLabel advice(String product, String crop) {
        return find(product, crop)
                .map(ProductLabel::of)
                .orElseGet(
                        () -> findWaiting(product, crop).isPresent() ? ProductLabel.WAITING : ProductLabel.NOT_ENTERED);
    }

    /** What is in a product, whichever crop it was entered for. */
    public List<ActiveIngredient> activesOf(String product) {
        return last(entries.stream()
                        .filter(e -> e.product().equalsIgnoreCase(product.strip())
                                && e.look().isDone()))
                .map(LabelEntry::actives)
                .orElse(List.of());
    }

    /** Most days from a pass with a product until a crop may be planted, whichever crop the pass was on; 0 where none. */
    public double plantBack_d(String product, String crop) {
        return entries.stream()
                .filter(e -> e.product().equalsIgnoreCase(product.strip())
                        && find(product, e.crop()).filter(counts -> counts == e).isPresent())
                .mapToDouble(e -> e.plantBack_d().getOrDefault(crop.toLowerCase(Locale.ROOT), 0.0))
                .max()
                .orElse(0);
    }

    private static Optional<LabelEntry> last(java.util.stream.Stream<LabelEntry> found) {
        return found.reduce((before, after) -> after);
    }
}
