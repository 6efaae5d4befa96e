// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import java.util.Map;

/**
 * The hours of one rig on one day that can be worked, in one run.
 *
 * @param rig place in the list of rigs
 * @param length_s from leaving the yard to the end of the last job
 * @param begins_s after midnight; NaN: not known
 * @param windows the part of the shift in which work of a product class may be done; a class that is not named may be
 *     done in all of it
 */
public record Shift(int rig, int day, double length_s, double begins_s, Map<String, Window> windows) {
    public Shift {
        windows = Map.copyOf(windows);
    }

    public Shift(int rig, int day, double length_s) {
        this(rig, day, length_s, Double.NaN, Map.of());
    }

    /** The part of it in which a class may be worked. */
    public Window window(String productClass) {
        Window own = windows.get(productClass);
        return own == null ? new Window(0, length_s) : new Window(own.from_s(), Math.min(own.to_s(), length_s));
    }
}
