// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.farm.Product;
import org.earleaf.label.LabelBook;
import org.earleaf.label.LabelEntry;

/**
 * What a farm knows of a mix beside its recipe: labels, kinds of product, the crop it goes on, and what went on that
 * ground before.
 *
 * @param crop empty: not told
 * @param stage on the scale of the crop, NaN: not told
 * @param earlier words of what went on the ground this season
 */
public record MixFacts(LabelBook labels, List<Product> shelf, String crop, double stage, Set<String> earlier) {
    /** Nothing but the recipe. */
    public static final MixFacts NONE = new MixFacts(LabelBook.EMPTY, List.of(), "", Double.NaN, Set.of());

    public MixFacts {
        shelf = List.copyOf(shelf);
        earlier = Set.copyOf(earlier);
    }

    /** Words by which a label or rule may name a product of the mix. */
    public Set<String> words(MixLine line) {
        Set<String> words = new TreeSet<>(Set.of(line.form().code()));
        if (line.isNitrogenSolution()) {
            words.add("nitrogen solution");
        }
        shelf.stream()
                .filter(p -> p.name().equalsIgnoreCase(line.product()))
                .forEach(p -> words.add(p.kind().word()));
        return MixWords.of(line.product(), words, labels);
    }

    /** What labels say on order: of each product what must be in before it. */
    Set<MixOrder.Before> order(List<MixLine> lines) {
        Set<MixOrder.Before> order = new HashSet<>();
        for (MixLine then : lines) {
            Set<String> wanted = new LinkedHashSet<>();
            labels.find(then.product(), crop).map(LabelEntry::after).stream()
                    .flatMap(Set::stream)
                    .forEach(w -> wanted.add(MixWords.plain(w)));
            for (MixLine first : lines) {
                if (first != then && words(first).stream().anyMatch(wanted::contains)) {
                    order.add(new MixOrder.Before(first.product(), then.product()));
                }
            }
        }
        return order;
    }

    /** Known quarrels between the products, and with what went on before. */
    public List<MixRules.Found> quarrels(List<MixLine> lines) {
        return MixRules.of(lines.stream().map(this::words).toList(), earlier, crop, stage);
    }
}
