// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.Map;

/**
 * The hours of one rig on one day that can be worked, in one run.
 *
 * @param rig place in the list of rigs
 * @param length_s from leaving the yard to the end of the last job
 * @param begins_s after midnight; NaN: not known
 * @param windows the part of the shift in which work may be done, by the name of a job or else by product class; what is
 *     not named may be done in all of it
 */
public record Shift(int rig, int day, double length_s, double begins_s, Map<String, Window> windows) {
    public Shift {
        windows = Map.copyOf(windows);
    }

    public Shift(int rig, int day, double length_s) {
        this(rig, day, length_s, Double.NaN, Map.of());
    }

    /** The part of it in which a job may be worked. */
    public Window window(Job job) {
        Window own = windows.getOrDefault(job.name(), windows.get(job.productClass()));
        return own == null ? new Window(0, length_s) : new Window(own.from_s(), Math.min(own.to_s(), length_s));
    }

    /** Whether only a part of it suits a job. */
    public boolean narrows(Job job) {
        return windows.containsKey(job.name()) || windows.containsKey(job.productClass());
    }

    /** The same with other hours. */
    public Shift lasting(double other_s) {
        return new Shift(rig, day, other_s, begins_s, windows);
    }
}
