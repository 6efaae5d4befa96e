// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import org.earleaf.label.LabelBook;
import org.earleaf.mix.Cleanout;
import org.earleaf.mix.MixWords;
import org.earleaf.units.Said;

/**
 * What a tank last held and the load to follow does not: it is cleaned out first.
 *
 * @param last load that was in the tank
 * @param products of it that carry a label and do not go in again
 * @param hurts those of them whose label does not name the crop of the load that follows
 */
public record Residue(TankLoad last, List<String> products, List<String> hurts) {
    public Residue {
        products = List.copyOf(products);
        hurts = List.copyOf(hurts);
    }

    /** Empty where everything labelled that was in it goes in again. */
    public static Optional<Residue> of(TankLoad last, TankLoad next, LabelBook labels) {
        List<String> again = next.lines().stream().map(LoadLine::product).toList();
        List<String> other = last.lines().stream()
                .filter(LoadLine::labelled)
                .map(LoadLine::product)
                .filter(p -> !again.contains(p))
                .toList();
        List<String> hurts = other.stream()
                .filter(p -> next.grounds().stream()
                        .anyMatch(g -> labels.find(p, g.crop()).isEmpty()))
                .toList();
        return other.isEmpty() ? Optional.empty() : Optional.of(new Residue(last, other, hurts));
    }

    /** How the tank is cleaned of it; the label's own section wins. */
    public Cleanout cleanout(double heel_m3, double tank_m3, LabelBook labels) {
        Set<String> words = new TreeSet<>();
        last.lines().forEach(l -> words.addAll(MixWords.of(l.product(), l.classes(), labels)));
        return Cleanout.of(heel_m3, tank_m3, words);
    }

    public Said said() {
        return hurts.isEmpty()
                ? Said.of("tank.held", "products", products, "load", last.id())
                : Said.of("tank.held-hurts", "products", products, "load", last.id(), "hurts", hurts);
    }
}
