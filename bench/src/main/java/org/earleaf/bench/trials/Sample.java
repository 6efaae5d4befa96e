// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.List;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;

/** Figures over some site-years with how sure they are; both rotations of a farm's year are drawn together. */
record Sample(List<Held> all) {
    double mean(ToDoubleFunction<Held> what) {
        return Figures.mean(of(what));
    }

    double error(ToDoubleFunction<Held> what) {
        return Math.sqrt(mean(h -> Math.pow(what.applyAsDouble(h), 2)));
    }

    double[] of(ToDoubleFunction<Held> what) {
        return all.stream().mapToDouble(what).toArray();
    }

    Figure told(ToDoubleFunction<Held> what) {
        return clusters().mean(of(what));
    }

    Figure toldCorrelation(ToDoubleFunction<Held> a, ToDoubleFunction<Held> b) {
        return clusters().correlation(of(a), of(b));
    }

    private Clusters clusters() {
        return new Clusters(
                all.stream().map(h -> h.at().farm().name() + h.at().year()).toList());
    }

    /** The one rate that would have served these best, had all been known. */
    int bestSingle() {
        int best = 0;
        double least = Double.POSITIVE_INFINITY;
        for (int rate = 0; rate <= Money.MOST_KGHA; rate++) {
            int r = rate;
            double regret = mean(h -> h.regret(r));
            if (regret < least) {
                least = regret;
                best = rate;
            }
        }
        return best;
    }

    Sample where(Predicate<Held> which) {
        return new Sample(all.stream().filter(which).toList());
    }

    List<String> farms() {
        return all.stream().map(h -> h.at().farm().name()).distinct().toList();
    }
}
