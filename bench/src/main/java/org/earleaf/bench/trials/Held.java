// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;
import java.util.function.ToDoubleFunction;

/**
 * One site-year with what the model makes of it.
 *
 * @param known its season known to the end, all nitrogen at planting, on plots that keep their rate
 * @param ahead members by rate as they stood on each day of advice
 * @param advised all that the advice comes to [kg/ha], what is on included: the rate whose mean over the members pays best
 * @param measuredBest the rate that paid best [kg/ha]
 */
record Held(
        SiteYear at,
        Modelled known,
        Map<Situation, double[][]> ahead,
        Map<Situation, Double> advised,
        int knownBest,
        int measuredBest) {
    static Held of(SiteYear at) {
        Map<Situation, double[][]> ahead = new EnumMap<>(Situation.class);
        Map<Situation, Double> advised = new EnumMap<>(Situation.class);
        for (Situation when : Situation.values()) {
            double[][] members = Modelled.members(at, when);
            ahead.put(when, members);
            advised.put(when, when.given_kgHa() + Money.best_kgHa(Modelled.mean(members)::at));
        }
        Modelled known = Modelled.known(at);
        return new Held(at, known, ahead, advised, Money.best_kgHa(known::at), Money.best_kgHa(at.measured()::at));
    }

    double advised(Situation when) {
        return Objects.requireNonNull(advised.get(when));
    }

    /** What a rate leaves on the table beside the best one, once the season is known [$/ac]. */
    double regret(double rate_kgHa) {
        DoubleUnaryOperator grain = at.measured()::at;
        return Money.return_usdAc(grain, measuredBest) - Money.return_usdAc(grain, rate_kgHa);
    }

    /** Something of every member that stood on a day of advice. */
    double[] each(Situation when, ToDoubleFunction<Modelled> what) {
        return Arrays.stream(Objects.requireNonNull(ahead.get(when)))
                .mapToDouble(grain -> what.applyAsDouble(new Modelled(grain)))
                .toArray();
    }
}
