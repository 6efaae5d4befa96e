// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.Arrays;

/** Means, quantiles and correlations. */
final class Figures {
    private Figures() {}

    static double[] some(double[] value, int[] which) {
        return Arrays.stream(which).mapToDouble(k -> value[k]).toArray();
    }

    static double mean(double[] value) {
        return Arrays.stream(value).average().orElse(Double.NaN);
    }

    /** The least that so large a share of the values does not exceed. */
    static double quantile(double[] value, double share) {
        double[] sorted = Arrays.stream(value).sorted().toArray();
        return sorted[(int) Math.ceil(share * sorted.length) - 1];
    }

    static double correlation(double[] x, double[] y) {
        double meanX = mean(x);
        double meanY = mean(y);
        double xy = 0;
        double xx = 0;
        double yy = 0;
        for (int k = 0; k < x.length; k++) {
            xy += (x[k] - meanX) * (y[k] - meanY);
            xx += (x[k] - meanX) * (x[k] - meanX);
            yy += (y[k] - meanY) * (y[k] - meanY);
        }
        return xy / Math.sqrt(xx * yy);
    }
}
