// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan.search;

import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.earleaf.plan.Plan;
import org.earleaf.units.SideBySide;

/**
 * How hard to search.
 *
 * @param steps after which it ends; the same seed and steps give the same plan
 * @param stop asked now and then; true ends the search early, with the best plan so far
 * @param better told of every better plan
 * @param how searches that share nothing are done
 */
public record Effort(long seed, long steps, BooleanSupplier stop, Consumer<Plan> better, SideBySide how) {
    public Effort(long seed, long steps, BooleanSupplier stop, Consumer<Plan> better) {
        this(seed, steps, stop, better, SideBySide.IN_TURN);
    }

    /** Steps enough for a problem of some size, found on made-up farms of 15 to 80 jobs. */
    public static long usualSteps(int jobs) {
        return 450_000L + 60_000L * jobs;
    }

    /** Several searches done otherwise than in turn; the plan is the same. */
    public Effort by(SideBySide other) {
        return new Effort(seed, steps, stop, better, other);
    }

    /** By steps alone. */
    public static Effort of(long seed, long steps) {
        return new Effort(seed, steps, () -> false, plan -> {});
    }
}
