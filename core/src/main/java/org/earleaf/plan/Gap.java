// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

/**
 * Days between two jobs when both are done: re-entry, the interval a label asks for, one pass before another.
 *
 * @param first place in the list of jobs
 * @param second no sooner than {@code days} after the first
 * @param eitherOrder whether the second may also be done so many days before the first
 */
public record Gap(int first, int second, int days, boolean eitherOrder) {
    /** By how many days two days are too near; 0 or less: they keep it. */
    public int shortBy(int dayOfFirst, int dayOfSecond) {
        int apart = dayOfSecond - dayOfFirst;
        return days - (eitherOrder ? Math.abs(apart) : apart);
    }
}
