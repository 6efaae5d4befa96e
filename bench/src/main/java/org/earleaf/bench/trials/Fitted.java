// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;

/**
 * How far a set of parameters is from what was measured.
 *
 * <pre>
 * loss = 0.35 mean (Y - y)2 + 0.5 mean ((Y280 - Y) - (y280 - y))2 + 0.08 mean regret
 *        + 1.5 mean ln2(N/n) + 0.8 mean ln2(W/w) + 0.2 mean ln2(S/s)
 *
 * Y, y   dry grain by rate, model and measured    [t/ha]
 * regret of the rate that pays best by the model  [$/ac]
 * N, W   nitrogen and weight of shoots            S nitrate of the top foot
 * Source own construct: what the advice rests on, weighed so that each part counts alike at first
 * Check  FitTest
 * </pre>
 */
record Fitted(List<FitCase> cases, List<Marsden.Pair> plants) {
    double loss() {
        return .35 * mean(FitCase::yieldError)
                + .5 * mean(FitCase::gainError)
                + .08 * mean(FitCase::regret)
                + 1.5 * logarithms(Trait.SHOOT_NITROGEN)
                + .8 * logarithms(Trait.SHOOT)
                + .2 * logarithms(Trait.NITRATE);
    }

    double mean(ToDoubleFunction<FitCase> what) {
        return cases.stream().mapToDouble(what).average().orElse(Double.NaN);
    }

    private double logarithms(Trait trait) {
        return plants.stream()
                .filter(pair -> pair.seen().trait() == trait)
                .mapToDouble(
                        pair -> Math.pow(Math.log(pair.modelled() / pair.seen().value()), 2))
                .average()
                .orElse(Double.NaN);
    }

    /** F1, F3 and F4 by rotation, in one line each, and what the model's rates leave on the table. */
    void print(String who) {
        for (boolean corn : new boolean[] {true, false}) {
            List<FitCase> some =
                    cases.stream().filter(c -> c.at().isAfterCorn() == corn).toList();
            Fitted rotation = new Fitted(some, plants);
            System.out.printf(
                    Locale.ROOT,
                    "  %-12s after %-7s F1 %.2f (measured %.2f), F3 %.2f (%.2f) t/ha, F4 %.0f (%.0f) kg/ha, r %.2f%n",
                    who,
                    corn ? "corn" : "soybean",
                    rotation.mean(c -> FitCase.share(c.modelled_tHa())),
                    rotation.mean(c -> FitCase.share(c.measured_tHa())),
                    rotation.mean(c -> FitCase.gain(c.modelled_tHa())),
                    rotation.mean(c -> FitCase.gain(c.measured_tHa())),
                    rotation.mean(FitCase::best_kgHa),
                    rotation.mean(FitCase::measuredBest_kgHa),
                    Figures.correlation(of(some, FitCase::best_kgHa), of(some, FitCase::measuredBest_kgHa)));
        }
        System.out.printf(Locale.ROOT, "  %-12s loss %.2f, regret %.1f $/ac%n", who, loss(), mean(FitCase::regret));
    }

    private static double[] of(List<FitCase> cases, ToIntFunction<FitCase> what) {
        return cases.stream().mapToDouble(what::applyAsInt).toArray();
    }
}
