// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.SplittableRandom;

/** Puts jobs that are left out back, each where it costs least, in one of several orders. */
final class Recreate {
    /** Share of places passed over, so that the same jobs do not always fall back into the same places. */
    private static final double PASSED_OVER = .02;

    private static final double LEAST_GAIN_USD = 1e-9;

    private final Ground ground;
    private final SplittableRandom random;
    private final int[] out;
    private final double[] key;

    Recreate(Ground ground, SplittableRandom random) {
        this.ground = ground;
        this.random = random;
        out = new int[ground.jobs];
        key = new double[ground.jobs];
    }

    /** Puts back what pays. */
    void repair(State state, boolean passOver) {
        int n = 0;
        for (int j = 0; j < ground.jobs; j++) {
            if (state.where[j] < 0 && ground.choices[j] > 0) {
                out[n++] = j;
            }
        }
        sort(n, passOver ? random.nextInt(6) : 1);
        for (int k = 0; k < n; k++) {
            insertBest(state, out[k], passOver);
        }
    }

    private void insertBest(State state, int job, boolean passOver) {
        double best = -LEAST_GAIN_USD;
        int bestShift = -1;
        int bestPlace = -1;
        for (int s = 0; s < ground.shifts; s++) {
            if (!state.mayTake(job, s)) {
                continue;
            }
            for (int p = 0; p <= state.count[s]; p++) {
                double road = state.addedRoad_s(job, s, p);
                double change = state.change_usd(job, s, road);
                if (change < best && (!passOver || random.nextDouble() >= PASSED_OVER) && state.fits(job, s, p, road)) {
                    best = change;
                    bestShift = s;
                    bestPlace = p;
                }
            }
        }
        if (bestShift >= 0) {
            state.insert(job, bestShift, bestPlace);
        }
    }

    /** By one of six orders: chance, dearest when undone, fewest choices, longest work, farthest, dearest by time first. */
    private void sort(int n, int order) {
        for (int k = 0; k < n; k++) {
            int j = out[k];
            key[k] = switch (order) {
                case 1 -> -ground.undone_usd[j];
                case 2 -> ground.choices[j];
                case 3 -> -longest(j);
                case 4 -> -ground.fromYard_s[0][j];
                case 5 -> -ground.undone_usd[j] / longest(j);
                default -> random.nextDouble();
            };
        }
        for (int k = 1; k < n; k++) {
            int j = out[k];
            double v = key[k];
            int i = k;
            while (i > 0 && key[i - 1] > v) {
                out[i] = out[i - 1];
                key[i] = key[i - 1];
                i--;
            }
            out[i] = j;
            key[i] = v;
        }
    }

    private double longest(int job) {
        double longest = 0;
        for (double w : ground.work_s[job]) {
            longest = Math.max(longest, w);
        }
        return longest;
    }
}
