// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Figures over some site-years with how sure they are: 90 % intervals from drawing farm-years anew, both rotations of a
 * year together, since they share its weather (bootstrap of clusters: Cameron, Gelbach & Miller 2008, from memory).
 */
record Sample(List<Held> all) {
    private static final int DRAWS = 1000;
    private static final long SEED = 20_261_130L;

    double mean(ToDoubleFunction<Held> what) {
        return Figures.mean(of(what));
    }

    double error(ToDoubleFunction<Held> what) {
        return Math.sqrt(mean(h -> Math.pow(what.applyAsDouble(h), 2)));
    }

    double[] of(ToDoubleFunction<Held> what) {
        return all.stream().mapToDouble(what).toArray();
    }

    /** Mean with its interval: "21.30 (18.02 to 24.91)". */
    String told(ToDoubleFunction<Held> what) {
        double[] value = of(what);
        return drawnAnew(drawn -> Figures.mean(Figures.some(value, drawn)));
    }

    String toldCorrelation(ToDoubleFunction<Held> a, ToDoubleFunction<Held> b) {
        double[] x = of(a);
        double[] y = of(b);
        return drawnAnew(drawn -> Figures.correlation(Figures.some(x, drawn), Figures.some(y, drawn)));
    }

    /** A figure of all and where it lies when farm-years are drawn anew; it is handed which site-years are in. */
    private String drawnAnew(ToDoubleFunction<int[]> figure) {
        Map<String, List<Integer>> clusters = new LinkedHashMap<>();
        for (int k = 0; k < all.size(); k++) {
            SiteYear at = all.get(k).at();
            clusters.computeIfAbsent(at.farm().name() + at.year(), name -> new ArrayList<>())
                    .add(k);
        }
        List<List<Integer>> each = List.copyOf(clusters.values());
        SplittableRandom random = new SplittableRandom(SEED);
        double[] drawn = new double[DRAWS];
        Arrays.setAll(
                drawn,
                draw -> figure.applyAsDouble(IntStream.range(0, each.size())
                        .flatMap(n ->
                                each.get(random.nextInt(each.size())).stream().mapToInt(Integer::intValue))
                        .toArray()));
        Arrays.sort(drawn);
        return String.format(
                Locale.ROOT,
                "%.2f (%.2f to %.2f)",
                figure.applyAsDouble(IntStream.range(0, all.size()).toArray()),
                drawn[DRAWS / 20],
                drawn[DRAWS - DRAWS / 20]);
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
