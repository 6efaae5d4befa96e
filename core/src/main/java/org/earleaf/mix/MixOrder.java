// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * The order in which products go in the tank: by the rank of their form, unless a label says that one must come before
 * another. The same products give the same order, however they are listed. Labels that contradict each other are
 * refused.
 */
public final class MixOrder {
    private static final Comparator<MixLine> BY_RANK = Comparator.comparingInt(
                    (MixLine line) -> line.form().rank())
            .thenComparingInt(line -> line.form().within())
            .thenComparing(line -> line.product().toLowerCase(Locale.ROOT))
            .thenComparing(MixLine::product)
            .thenComparing(line -> line.dose().rateUnit())
            .thenComparingDouble(line -> line.dose().rate());

    private MixOrder() {}

    /** A label's word on order: {@code first} goes in before {@code then}. */
    public record Before(String first, String then) {}

    /** Lines in mixing order. */
    public static List<MixLine> of(List<MixLine> lines, Set<Before> labels) {
        List<MixLine> waiting = new ArrayList<>(lines);
        waiting.sort(BY_RANK);
        List<MixLine> order = new ArrayList<>();
        while (!waiting.isEmpty()) {
            MixLine next = waiting.stream()
                    .filter(line -> isFree(line, waiting, labels))
                    .findFirst()
                    .orElseThrow(() -> cycle(waiting));
            waiting.remove(next);
            order.add(next);
        }
        return order;
    }

    private static boolean isFree(MixLine line, List<MixLine> waiting, Set<Before> labels) {
        return labels.stream()
                .filter(label -> same(label.then(), line) && !same(label.first(), line))
                .noneMatch(label -> waiting.stream().anyMatch(other -> same(label.first(), other)));
    }

    private static boolean same(String product, MixLine line) {
        return line.product().equalsIgnoreCase(product.trim());
    }

    private static EarleafException cycle(List<MixLine> waiting) {
        List<String> names =
                List.copyOf(waiting.stream().map(MixLine::product).collect(Collectors.toCollection(TreeSet::new)));
        return new EarleafException(Problem.of(
                "mix.order-cycle", Said.of("where.mixing-order"), Said.of("found.order-cycle", "products", names)));
    }
}
