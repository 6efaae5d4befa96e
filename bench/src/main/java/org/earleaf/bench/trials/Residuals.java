// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.earleaf.season.parameter.Parameter;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealVector;

/**
 * Effects that would make the model yield what was measured, and how far they stray about the model as it is: each
 * site-year linearised, the covariances estimated, linearised anew about what was found, until it stands.
 */
final class Residuals {
    /** Of a measured point, before it is estimated as well [kg/ha]. */
    private static final double FIRST_ERROR = 350;

    private static final double FIRST_SD = .3;
    private static final int TURNS = 8;
    private static final int ROUNDS = 300;
    private static final double LONGEST_STEP = .25;
    private static final double FARTHEST = 1.2;
    private static final int DRAWS = 100;
    private static final long SEED = 20_261_201L;

    private final List<Linearised> all;
    private double error_kgHa = FIRST_ERROR;
    private Nested found;

    private Residuals(List<Linearised> all, int effects) {
        this.all = all;
        double[] sd = new double[effects];
        Arrays.fill(sd, FIRST_SD);
        found = Nested.alike(sd);
    }

    static Residuals of(List<SiteYear> trials, List<Parameter> effects) {
        Residuals made = new Residuals(
                trials.parallelStream().map(at -> new Linearised(at, effects)).toList(), effects.size());
        for (int turn = 0; turn < TURNS; turn++) {
            List<NestedEffects.Likely> likely = made.estimate();
            IntStream.range(0, likely.size()).parallel().forEach(k -> made.all
                    .get(k)
                    .linearise(towards(made.all.get(k).at(), likely.get(k).mean())));
        }
        made.estimate();
        return made;
    }

    private static RealVector towards(RealVector from, RealVector to) {
        double[] next = from.toArray();
        for (int e = 0; e < next.length; e++) {
            double step = Math.max(-LONGEST_STEP, Math.min(LONGEST_STEP, to.getEntry(e) - next[e]));
            next[e] = Math.max(-FARTHEST, Math.min(FARTHEST, next[e] + step));
        }
        return MatrixUtils.createRealVector(next);
    }

    private List<NestedEffects.Likely> estimate() {
        NestedEffects search = new NestedEffects(evidence(), true, found);
        found = search.search(ROUNDS);
        List<NestedEffects.Likely> likely = search.totals();
        error_kgHa = Math.sqrt(IntStream.range(0, all.size())
                .mapToDouble(k -> all.get(k).error2(error_kgHa, likely.get(k)))
                .average()
                .orElseThrow());
        return likely;
    }

    private List<Evidence> evidence() {
        return all.stream().map(each -> each.evidence(error_kgHa)).toList();
    }

    Nested found() {
        return found;
    }

    double error_kgHa() {
        return error_kgHa;
    }

    Nested without(String farm) {
        return estimated(
                evidence().stream().filter(each -> !each.farm().equals(farm)).toList());
    }

    private Nested estimated(List<Evidence> some) {
        return new NestedEffects(some, true, found).search(ROUNDS);
    }

    /** The covariances where years of each farm are drawn anew, both rotations of a year together. */
    List<Nested> again() {
        List<Evidence> evidence = evidence();
        return IntStream.range(0, DRAWS)
                .parallel()
                .mapToObj(draw -> estimated(drawn(evidence, new SplittableRandom(SEED + draw))))
                .toList();
    }

    static List<Evidence> drawn(List<Evidence> all, SplittableRandom random) {
        Map<String, Map<String, List<Evidence>>> farms = new LinkedHashMap<>();
        all.forEach(each -> farms.computeIfAbsent(each.farm(), farm -> new LinkedHashMap<>())
                .computeIfAbsent(each.year(), year -> new ArrayList<>())
                .add(each));
        List<Evidence> drawn = new ArrayList<>();
        for (Map<String, List<Evidence>> years : farms.values()) {
            List<List<Evidence>> each = List.copyOf(years.values());
            for (int copy = 0; copy < each.size(); copy++) {
                String name = String.valueOf(copy);
                each.get(random.nextInt(each.size())).stream()
                        .map(e -> new Evidence(e.farm(), e.farm() + " " + name, e.precision(), e.information()))
                        .forEach(drawn::add);
            }
        }
        return drawn;
    }
}
