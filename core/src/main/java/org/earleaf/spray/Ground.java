// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

/**
 * The ground that a rig drives on.
 *
 * @param kind how long it stays soft
 * @param topWetness water of the top 15 cm by its field capacity; NaN: not known
 * @param closesSlot whether the pass cuts a slot that must close
 * @param rainDayBefore_mm rain of the 24 h before the first hour given
 * @param rainTwoDaysBefore_mm rain of the 24 h before those
 */
public record Ground(
        Kind kind, double topWetness, boolean closesSlot, double rainDayBefore_mm, double rainTwoDaysBefore_mm) {
    /** The soil whose wetness is looked at: the top 6 in. */
    static final double TOP_MM = 6 * org.earleaf.units.Units.MM_PER_IN;

    /** Soil by its texture, with the wetness up to which it carries (assumption after published workability limits). */
    public enum Kind {
        COARSE(1.00),
        MEDIUM(0.95),
        FINE(0.90);

        private final double carries;

        Kind(double carries) {
            this.carries = carries;
        }
    }

    private static final double SLOT_CLOSES = 0.90;

    /** Nothing known but its kind. */
    public static Ground of(Kind kind) {
        return new Ground(kind, Double.NaN, false, 0, 0);
    }

    /** Wetness up to which the pass can be made. */
    double mostWetness() {
        return closesSlot ? Math.min(kind.carries, SLOT_CLOSES) : kind.carries;
    }

    /** Fine soil needs a day more. */
    int extraHours() {
        return kind == Kind.FINE ? 24 : 0;
    }
}
