// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import org.earleaf.label.SprayLabel;

/**
 * A pass, as far as weather matters to it.
 *
 * @param kind what leaves the outlets
 * @param boom_m height of the outlets above the ground
 * @param mediumOrFiner droplet class medium or finer
 * @param canopyClosed whether the leaves close the rows
 * @param label the strictest of all that is in the tank; never filled in by Earleaf
 */
public record SprayJob(
        Kind kind, double boom_m, boolean mediumOrFiner, boolean canopyClosed, SprayLabel label, Ground ground) {
    /** What leaves the outlets. */
    public enum Kind {
        /** Droplets on leaves. */
        FOLIAR,
        /** Streams on or into the ground: wind, dryness and inversion do not move them, a storm washes them away. */
        SOIL_STREAM
    }
}
