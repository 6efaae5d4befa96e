// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Set;
import org.earleaf.field.Placement;
import org.earleaf.units.Called;

/**
 * A machine that makes passes. {@code NaN} means not known.
 *
 * @param called its name
 * @param kind "self-propelled", "pulled", "toolbar", "tender" or "hired"
 * @param placements what it can do
 * @param cost_usdHa cost of a pass without product [$/ha]
 */
public record Rig(
        Called<RigId> called,
        String kind,
        Clearance clearance,
        Boom boom,
        Tank tank,
        Pace pace,
        Set<Placement> placements,
        double cost_usdHa) {
    /**
     * What it clears.
     *
     * @param row_m lowest member over a row
     * @param spray_m crop height up to which it is driven for spraying although the lowest member brushes the crop: the
     *     owner's choice, the plants that it bends are counted; NaN: as over a row
     */
    public record Clearance(double row_m, double spray_m) {}

    /**
     * Boom or bar.
     *
     * @param outletsPerRow drop hoses a row (1 in the middle, 2 at both sides of the base)
     * @param lowest_Pa lowest pressure at the outlet
     * @param highest_Pa highest pressure at the outlet
     */
    public record Boom(double width_m, int outletsPerRow, double lowest_Pa, double highest_Pa) {}

    /**
     * @param usable_m3 what it carries
     * @param heel_m3 volume that stays in the tank
     * @param prime_m3 volume that fills the lines
     */
    public record Tank(double usable_m3, double heel_m3, double prime_m3) {
        /** What is mixed and reaches no ground. */
        public double unapplied_m3() {
            return heel_m3 + prime_m3;
        }
    }

    /**
     * How it gets over the ground.
     *
     * @param slowest_ms slowest working speed
     * @param fastest_ms fastest working speed
     * @param fieldEfficiency share of field time at full width
     */
    public record Pace(double slowest_ms, double fastest_ms, double fieldEfficiency) {}

    public Rig {
        placements = Set.copyOf(placements);
    }

    public RigId id() {
        return called.id();
    }

    public String name() {
        return called.name();
    }

    /** The crop height it may enter with a placement. */
    public double clearance_m(Placement placement) {
        boolean more = placement.isSpray() && clearance.spray_m() > clearance.row_m();
        return more ? clearance.spray_m() : clearance.row_m();
    }

    public double clearance_m() {
        return clearance.row_m();
    }

    public double width_m() {
        return boom.width_m();
    }

    public double tank_m3() {
        return tank.usable_m3();
    }

    public boolean isTender() {
        return "tender".equals(kind);
    }

    public boolean isHired() {
        return "hired".equals(kind);
    }
}
