// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Cases that belong together, as both rotations of a farm's year do, which share its weather; 90 % intervals come from
 * drawing whole clusters anew (bootstrap of clusters: Cameron, Gelbach & Miller 2008, from memory).
 */
final class Clusters {
    private static final int DRAWS = 1000;
    private static final long SEED = 20_261_130L;

    private final int cases;
    private final List<List<Integer>> each;

    /** @param names of each case's cluster */
    Clusters(List<String> names) {
        cases = names.size();
        Map<String, List<Integer>> byName = new LinkedHashMap<>();
        for (int k = 0; k < cases; k++) {
            byName.computeIfAbsent(names.get(k), name -> new ArrayList<>()).add(k);
        }
        each = List.copyOf(byName.values());
    }

    Figure mean(double[] value) {
        return of(drawn -> Figures.mean(Figures.some(value, drawn)));
    }

    Figure correlation(double[] x, double[] y) {
        return of(drawn -> Figures.correlation(Figures.some(x, drawn), Figures.some(y, drawn)));
    }

    /** A figure of all cases and where it lies when clusters are drawn anew; it is handed which cases are in. */
    private Figure of(ToDoubleFunction<int[]> figure) {
        SplittableRandom random = new SplittableRandom(SEED);
        double[] drawn = new double[DRAWS];
        Arrays.setAll(
                drawn,
                draw -> figure.applyAsDouble(IntStream.range(0, each.size())
                        .flatMap(n ->
                                each.get(random.nextInt(each.size())).stream().mapToInt(Integer::intValue))
                        .toArray()));
        Arrays.sort(drawn);
        return new Figure(
                figure.applyAsDouble(IntStream.range(0, cases).toArray()),
                drawn[DRAWS / 20],
                drawn[DRAWS - DRAWS / 20]);
    }
}
