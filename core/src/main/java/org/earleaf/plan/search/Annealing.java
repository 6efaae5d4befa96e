// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.SplittableRandom;

/**
 * Takes jobs out and puts them back, or trades them between shifts, and keeps the new plan when it is not much dearer: ever
 * less so as a round goes on. Rounds grow in length and heat, and each begins from the best plan, so that a search cut short
 * has finished rounds behind it. The settings were tried on made-up farms of the bench.
 */
final class Annealing {
    private static final long FIRST_ROUND = 4_000;
    private static final long LONGEST_ROUND = 256_000;
    private static final double HOT = .3;
    private static final double COLD = 1e-3;
    /** A short round begins cooler, else it would end worse than it began. */
    private static final double HOTTER_WITH_LENGTH = .65;

    private static final double TRADES = .8;
    private static final double FILLS = .5;
    private static final int ASK_EVERY = 64;
    private static final double LEAST_GAIN_USD = 1e-7;

    private final Ground ground;
    private final Effort effort;
    private final SplittableRandom random;
    private final Ruin ruin;
    private final Recreate recreate;
    private final Exchange exchange;
    private final Waiting waiting;
    private final State best;
    private double best_usd;
    private long steps;
    private boolean stopped;

    Annealing(Ground ground, Effort effort) {
        this.ground = ground;
        this.effort = effort;
        random = new SplittableRandom(effort.seed());
        ruin = new Ruin(ground, random);
        recreate = new Recreate(ground, random);
        exchange = new Exchange(ground, random);
        waiting = new Waiting(ground);
        best = new State(ground);
    }

    long steps() {
        return steps;
    }

    boolean stopped() {
        return stopped;
    }

    /** From a plan that keeps the rules, perhaps the empty one. */
    State run(State start) {
        best.copyFrom(start);
        recreate.repair(best, false);
        best_usd = waiting.settle_usd(best);
        effort.better().accept(best.plan());
        if (ground.jobs == 0 || ground.shifts == 0) {
            return best;
        }
        long length = FIRST_ROUND;
        while (steps < effort.steps() && !stopped) {
            round(Math.min(length, effort.steps() - steps));
            length = Math.min(LONGEST_ROUND, 2 * length);
        }
        return best;
    }

    private void round(long length) {
        State now = new State(ground);
        now.copyFrom(best);
        State next = new State(ground);
        double scale = Math.max(1, best.cost_usd / ground.jobs);
        double hot_usd = scale * HOT * Math.min(1, Math.pow((double) length / LONGEST_ROUND, HOTTER_WITH_LENGTH));
        for (long k = 0; k < length; k++) {
            if (k % ASK_EVERY == 0 && effort.stop().getAsBoolean()) {
                stopped = true;
                return;
            }
            double heat_usd = hot_usd * Math.pow(COLD * scale / hot_usd, (double) k / length);
            next.copyFrom(now);
            change(next);
            steps++;
            if (next.cost_usd < now.cost_usd - heat_usd * Math.log(random.nextDouble())) {
                now.copyFrom(next);
            }
            if (next.cost_usd < best_usd - LEAST_GAIN_USD) {
                take(next);
            }
        }
    }

    /** As the best, if it still is when its waiting is counted. */
    private void take(State next) {
        double usd = waiting.settle_usd(next);
        if (usd < best_usd - LEAST_GAIN_USD) {
            best.copyFrom(next);
            best_usd = usd;
            effort.better().accept(best.plan());
        }
    }

    private void change(State next) {
        boolean trade = random.nextDouble() < TRADES;
        if (trade) {
            exchange.trade(next);
        } else {
            ruin.ruin(next);
            next.dropWhatNoLongerFits();
        }
        if (!trade || random.nextDouble() < FILLS) {
            recreate.repair(next, true);
        }
    }
}
