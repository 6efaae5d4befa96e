// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.earleaf.bench.response.Plot.Plan;

/** The curves of many station-years on one ground after one crop. */
record Curves(List<RateCurve> all) {
    private static final int AT_240 = 6;

    static Curves of(Ground ground, Before before, List<StationYear> years, Plan plan) {
        return new Curves(
                years.stream().map(y -> RateCurve.of(ground, before, y, plan)).toList());
    }

    double[] each(ToDoubleFunction<RateCurve> what) {
        return all.stream().mapToDouble(what).toArray();
    }

    double mean(ToDoubleFunction<RateCurve> what) {
        return Numbers.mean(each(what));
    }

    double[] best() {
        return each(RateCurve::best_lbAc);
    }

    double[] largest() {
        return each(RateCurve::largest);
    }

    /** Yield without nitrogen over the largest, over the years that yield at all; {@link #bare} counts the others. */
    double zeroRatio() {
        return Numbers.mean(all.stream()
                .filter(c -> !c.isBare())
                .mapToDouble(c -> c.yield()[0] / c.largest())
                .toArray());
    }

    long bare() {
        return all.stream().filter(RateCurve::isBare).count();
    }

    /** Share of nitrogen given that the shoot held at the best rate, over the years whose best rate is above 0. */
    double recovery() {
        return Numbers.mean(all.stream()
                .filter(c -> c.best_lbAc() > 0)
                .mapToDouble(RateCurve::recovery)
                .toArray());
    }

    double[] lostAt240() {
        return each(c -> c.lost()[AT_240]);
    }
}
