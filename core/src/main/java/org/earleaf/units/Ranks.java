// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import java.util.Arrays;
import org.hipparchus.util.KthSelector;

/**
 * Quantiles and the mean of the worst of equally likely values, without putting all of them in order.
 *
 * <pre>
 * quantile(p) = x[j] + (h - j) (x[j + 1] - x[j]),  h = (n - 1) p, j the whole part of h
 * worst(s)    = mean of the s n lowest; a value on the edge counts in part
 *
 * x      the values, lowest first
 * Range  p 0 to 1, s above 0 to 1; infinite values are let through, NaN is not
 * Source Hyndman and Fan 1996, Am. Stat. 50:361, type 7; worst share: Rockafellar and Uryasev 2000, J. Risk 2:21, from memory
 * Check  WorthTest, RanksTest
 * </pre>
 */
public final class Ranks {
    private static final KthSelector SELECTOR = new KthSelector();
    /** Places of the first levels of halving that are remembered from one question to the next. */
    private static final int REMEMBERED = 511;

    private final double[] values;
    private final int[] pivots = new int[REMEMBERED];

    private Ranks(double[] values) {
        this.values = values;
        Arrays.fill(pivots, -1);
    }

    /** Of all of them alike, summed in their order. */
    public static double mean(double[] values) {
        double sum = 0;
        for (double v : values) {
            sum += v;
        }
        return sum / values.length;
    }

    /** Of a copy of some values. */
    public static Ranks of(double[] values) {
        return new Ranks(values.clone());
    }

    /** The k-th lowest, from 0; what is left of it is not above it from then on. */
    private double at(int k) {
        return SELECTOR.select(values, pivots, k);
    }

    public double quantile(double p) {
        double h = (values.length - 1) * p;
        int j = (int) Math.floor(h);
        double low = at(j);
        double high = at(Math.min(j + 1, values.length - 1));
        // Equal neighbours (or two infinities, for "never") must not give NaN.
        return low == high ? low : low + (h - j) * (high - low);
    }

    /** Mean of the worst share. */
    public double worst(double share) {
        double want = share * values.length;
        int whole = (int) Math.floor(want);
        double edge = whole < values.length ? at(whole) : 0;
        double sum = (want - whole) * edge;
        for (int k = 0; k < whole; k++) {
            sum += values[k];
        }
        return sum / want;
    }
}
