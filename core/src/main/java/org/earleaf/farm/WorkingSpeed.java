// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.earleaf.units.Units.MS_PER_MPH;

import org.earleaf.field.Placement;

/**
 * Speeds at which a placement is usually worked [m/s]. Common practice, no source; the label and the machine may be
 * stricter.
 */
public record WorkingSpeed(double low_ms, double high_ms) {
    private static final double TALL_M = 60 * 0.0254;
    private static final double TALL_MPH = 10;
    /** Cruise leaves a fifth of the range above it (own construct). */
    private static final double CRUISE = 0.8;

    /** The usual range for a placement in a crop of a height (NaN: not known). */
    public static WorkingSpeed of(Placement placement, double height_m) {
        WorkingSpeed usual =
                switch (placement) {
                    case ROW_BASE, MID_DRIBBLE -> ofMph(5, 10);
                    case MID_INJECT, ROW_INJECT, INCORPORATED, AMMONIA -> ofMph(5, 8);
                    case UNDER_CANOPY, BOTH -> ofMph(4, 8);
                    default -> ofMph(6, 15);
                };
        boolean tall = height_m > TALL_M;
        return tall ? new WorkingSpeed(usual.low_ms, Math.min(usual.high_ms, TALL_MPH * MS_PER_MPH)) : usual;
    }

    private static WorkingSpeed ofMph(double low, double high) {
        return new WorkingSpeed(low * MS_PER_MPH, high * MS_PER_MPH);
    }

    /** The part of the range that a rig can drive; empty ranges keep low above high. */
    public WorkingSpeed within(Rig rig) {
        return new WorkingSpeed(
                Math.max(low_ms, rig.pace().slowest_ms()),
                Math.min(high_ms, rig.pace().fastest_ms()));
    }

    public boolean isEmpty() {
        return low_ms > high_ms;
    }

    /** Speed to set a rig for: four fifths of the fastest, never below the slowest. */
    public double cruise_ms() {
        return Math.max(low_ms, CRUISE * high_ms);
    }
}
