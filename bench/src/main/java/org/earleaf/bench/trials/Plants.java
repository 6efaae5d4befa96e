// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.List;
import java.util.Locale;
import java.util.function.UnaryOperator;

/** Prints measured plants beside the model's, and how many of the dates come near enough. */
final class Plants {
    private final Told told;
    private final List<Marsden.Pair> pairs;

    Plants(Told told, Marsden marsden) {
        this.told = told;
        pairs = marsden.pairs(UnaryOperator.identity());
    }

    void print() {
        told.title("F7 plants and soil near Ames, 2013, 2018 and 2019: measured, model");
        for (Trait trait : Trait.values()) {
            print(trait, pairs.stream().filter(p -> p.seen().trait() == trait).toList());
        }
    }

    private void print(Trait trait, List<Marsden.Pair> some) {
        double mean = some.stream().mapToDouble(Marsden.Pair::error).average().orElse(Double.NaN);
        long near = some.stream().filter(Marsden.Pair::isWithin).count();
        told.line(
                trait.label(),
                near + " of " + some.size() + " dates " + trait.within() + ", mean error " + trait.told(mean));
        some.forEach(p -> told.line(
                "  " + p.seen().date(),
                String.format(
                        Locale.ROOT, "%8.2f %8.2f%s", p.seen().value(), p.modelled(), p.isWithin() ? "" : "  off")));
        told.keep(
                "f7_" + trait.key(),
                String.format(Locale.ROOT, "{\"dates\":%d,\"near\":%d,\"mean_error\":%.3f}", some.size(), near, mean));
    }
}
