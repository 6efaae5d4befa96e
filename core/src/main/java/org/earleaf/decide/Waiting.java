// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import org.earleaf.weather.Forcing;

/**
 * When to go: what the best option of each day is worth, what is still to be had by waiting, and what a day's wait costs.
 *
 * <pre>
 * W(d) = p(d) max(V(d), W(d+1)) + (1 - p(d)) W(d+1)         W after the last day 0
 * a day's wait on d costs V(d) - W(d+1); go on the first day on which it is not below 0
 *
 * V      best mean gain of a day, 0 when nothing can be done      [$/ha]
 * W      what waiting until d may still bring                     [$/ha]
 * p      chance that the day can be worked
 * Source optimal stopping by backward recursion (Bellman 1957, from memory); a day is taken to be workable with at most
 *        0.1 in of rain, at most 0.5 in the day before and 1 in the two days before: common practice, no source
 * Check  WaitingTest
 * </pre>
 */
final class Waiting {
    private static final double WET_TODAY_MM = 2.54;
    private static final double WET_YESTERDAY_MM = 12.7;
    private static final double WET_TWO_DAYS_MM = 25.4;
    /** A forecast is never surer than this, either way (own construct). */
    private static final double SUREST = .9;

    private final double[] value;
    private final double[] later;

    /**
     * @param value best mean gain by day, one entry more than can be decided on
     * @param workable chance by day
     */
    Waiting(double[] value, double[] workable) {
        this.value = value.clone();
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
        for (int d = 0; d < value.length; d++) {
            if (value[d] > 0 && cost(d) >= 0) {
                return d;
            }
        }
        return -1;
    }

    /** Chance that a field can be worked, day by day from a date, over the futures. */
    static double[] workable(ZoneEnsemble futures, LocalDate from, int days) {
        double[] chance = new double[days];
        for (int d = 0; d < days; d++) {
            int dry = 0;
            for (Forcing f : futures.weather()) {
                dry += isDry(f.rain_mm(), f.index(from) + d) ? 1 : 0;
            }
            chance[d] = Math.max(
                    1 - SUREST,
                    Math.min(SUREST, (double) dry / futures.weather().size()));
        }
        return chance;
    }

    private static boolean isDry(double[] rain, int k) {
        double today = at(rain, k);
        double yesterday = at(rain, k - 1);
        return today <= WET_TODAY_MM && yesterday <= WET_YESTERDAY_MM && yesterday + at(rain, k - 2) <= WET_TWO_DAYS_MM;
    }

    private static double at(double[] rain, int k) {
        return k >= 0 && k < rain.length ? rain[k] : 0;
    }
}
