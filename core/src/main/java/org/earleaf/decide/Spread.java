// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;

/** Tenth, fiftieth and ninetieth percentile over the futures. */
public record Spread(double p10, double p50, double p90) {
    /** Quantiles by linear interpolation between order statistics (Hyndman & Fan 1996, type 7). */
    public static Spread of(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return new Spread(quantile(sorted, .1), quantile(sorted, .5), quantile(sorted, .9));
    }

    /** Quantile of sorted values, type 7. */
    public static double quantile(double[] sorted, double p) {
        double h = (sorted.length - 1) * p;
        int low = (int) Math.floor(h);
        int high = Math.min(low + 1, sorted.length - 1);
        // Equal neighbours (or two infinities, for "never") must not give NaN.
        return sorted[low] == sorted[high] ? sorted[low] : sorted[low] + (h - low) * (sorted[high] - sorted[low]);
    }
}
