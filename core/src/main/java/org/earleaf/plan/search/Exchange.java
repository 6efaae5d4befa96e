// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.SplittableRandom;

/**
 * Trades jobs between two shifts, or between a shift and those left out: where putting back the cheapest way would only
 * bring the old plan back. A job that does not fit where it is sent stays out.
 */
final class Exchange {
    private static final int MOST = 2;

    private final Ground ground;
    private final SplittableRandom random;
    private final int[] taken = new int[2 * MOST];

    Exchange(Ground ground, SplittableRandom random) {
        this.ground = ground;
        this.random = random;
    }

    void trade(State state) {
        int job = random.nextInt(ground.jobs);
        int here = state.where[job];
        int there = random.nextInt(ground.shifts);
        if (there == here || !ground.allowed[job][there]) {
            return;
        }
        int n = 0;
        if (here >= 0) {
            n = take(state, job, n);
            for (int k = random.nextInt(MOST); k > 0 && state.count[here] > 0; k--) {
                n = take(state, state.route[here][random.nextInt(state.count[here])], n);
            }
        } else {
            taken[n++] = job;
        }
        int mine = n;
        for (int k = random.nextInt(MOST + 1); k > 0 && state.count[there] > 0; k--) {
            n = take(state, state.route[there][random.nextInt(state.count[there])], n);
        }
        state.dropWhatNoLongerFits();
        for (int k = 0; k < mine; k++) {
            put(state, taken[k], there);
        }
        for (int k = mine; k < n && here >= 0; k++) {
            put(state, taken[k], here);
        }
    }

    private int take(State state, int job, int n) {
        state.remove(job);
        taken[n] = job;
        return n + 1;
    }

    /** At the place of the shortest road. */
    private void put(State state, int job, int shift) {
        if (!state.mayTake(job, shift)) {
            return;
        }
        int best = -1;
        double least = Double.POSITIVE_INFINITY;
        for (int p = 0; p <= state.count[shift]; p++) {
            double road = state.addedRoad_s(job, shift, p);
            if (road < least && state.fits(job, shift, p, road)) {
                least = road;
                best = p;
            }
        }
        if (best >= 0) {
            state.insert(job, shift, best);
        }
    }
}
