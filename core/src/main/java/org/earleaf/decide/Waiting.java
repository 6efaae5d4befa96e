// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;

/**
 * When to go: what the best option of each day is worth, what is still to be had by waiting, and what a day's wait costs.
 *
 * <pre>
 * W(d) = p(d) max(V(d), W(d+1)) + (1 - p(d)) W(d+1)         W after the last day 0
 * a day's wait on d costs V(d) - W(d+1); go on the first day on which it is not below -t(d)
 *
 * V      best mean gain of a day, 0 when nothing can be done      [$/ha]
 * W      what waiting until d may still bring                     [$/ha]
 * p      chance that the day can be worked (WorkableDays)
 * t      what a difference between the day and the one waited for may be by chance (Ties)     [$/ha]
 * Source optimal stopping by backward recursion (Bellman 1957, from memory)
 * Check  WaitingTest
 * </pre>
 *
 * What a late pass loses for good is in V already, since every pass is run through the season itself; no factor by leaf
 * stage is put on top.
 */
final class Waiting {
    private final double[] value;
    private final double[] later;
    private final double[] tie;

    /**
     * @param value best mean gain by day, one entry more than can be decided on
     * @param workable chance by day
     */
    Waiting(double[] value, double[] workable) {
        this(value, workable, new double[value.length]);
    }

    /** @param tie by how much waiting must win, by day [$/ha] */
    Waiting(double[] value, double[] workable, double[] tie) {
        this.value = value.clone();
        this.tie = tie.clone();
        later = new double[value.length + 1];
        for (int d = value.length - 1; d >= 0; d--) {
            double go = Math.max(Math.max(0, value[d]), later[d + 1]);
            later[d] = workable[d] * go + (1 - workable[d]) * later[d + 1];
        }
    }

    /** What putting it off from day d costs [$/ha]; below 0 when waiting pays. */
    double cost(int d) {
        return value[d] - later[d + 1];
    }

    /** The day to go, -1 when no day is worth it. */
    int day() {
        boolean[] any = new boolean[value.length];
        Arrays.fill(any, true);
        return day(any);
    }

    /** The same among some of the days. */
    int day(boolean[] among) {
        for (int d = 0; d < value.length; d++) {
            if (among[d] && value[d] > 0 && cost(d) >= -tie[d]) {
                return d;
            }
        }
        return -1;
    }
}
