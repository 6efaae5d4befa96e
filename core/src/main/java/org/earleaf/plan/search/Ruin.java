// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.SplittableRandom;

/**
 * Takes jobs out of a plan: neighbours in strings (slack induction by string removals, Christiaens and Vanden Berghe
 * 2020, Transportation Science 54, from memory), whole shifts, or some at random.
 */
final class Ruin {
    private static final int MEAN_OUT = 8;
    private static final int LONGEST_STRING = 6;

    private final Ground ground;
    private final SplittableRandom random;
    private final boolean[] hit;

    Ruin(Ground ground, SplittableRandom random) {
        this.ground = ground;
        this.random = random;
        hit = new boolean[ground.shifts];
    }

    void ruin(State state) {
        double kind = random.nextDouble();
        if (kind < .6) {
            strings(state);
        } else if (kind < .8) {
            some(state);
        } else {
            shifts(state);
        }
    }

    private void strings(State state) {
        java.util.Arrays.fill(hit, false);
        int wanted = 1 + random.nextInt(Math.min(2 * MEAN_OUT, ground.jobs));
        int[] near = ground.near[random.nextInt(ground.jobs)];
        int out = 0;
        for (int k = 0; k < near.length && out < wanted; k++) {
            int shift = state.where[near[k]];
            if (shift >= 0 && !hit[shift]) {
                hit[shift] = true;
                out += string(state, near[k], shift, wanted - out);
            }
        }
    }

    /** A string of a route that holds a job. */
    private int string(State state, int job, int shift, int most) {
        int length = 1 + random.nextInt(Math.min(Math.min(LONGEST_STRING, state.count[shift]), most));
        int at = 0;
        while (state.route[shift][at] != job) {
            at++;
        }
        int lowest = Math.max(0, at - length + 1);
        int highest = Math.min(at, state.count[shift] - length);
        int from = lowest + random.nextInt(highest - lowest + 1);
        for (int k = 0; k < length; k++) {
            state.remove(state.route[shift][from]);
        }
        return length;
    }

    private void some(State state) {
        int wanted = 1 + random.nextInt(Math.min(MEAN_OUT, ground.jobs));
        for (int k = 0; k < wanted; k++) {
            int job = random.nextInt(ground.jobs);
            if (state.where[job] >= 0) {
                state.remove(job);
            }
        }
    }

    /** One or two shifts, or the half of each. */
    private void shifts(State state) {
        int n = 1 + random.nextInt(2);
        double share = random.nextBoolean() ? 1 : .5;
        for (int k = 0; k < n; k++) {
            int shift = random.nextInt(ground.shifts);
            for (int p = state.count[shift] - 1; p >= 0; p--) {
                if (share == 1 || random.nextDouble() < share) {
                    state.remove(state.route[shift][p]);
                }
            }
        }
    }
}
