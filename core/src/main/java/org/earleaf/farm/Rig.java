// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.Set;
import org.earleaf.field.Placement;
import org.earleaf.units.Called;

/**
 * A machine that makes passes.
 *
 * @param called its name
 * @param kind "self-propelled", "pulled", "toolbar", "tender" or "hired"
 * @param clearance_m lowest member over a row
 * @param width_m boom or bar width
 * @param tank_m3 usable tank
 * @param speedMin_ms slowest working speed
 * @param speedMax_ms fastest working speed
 * @param pressureMin_Pa lowest pressure at the outlet
 * @param pressureMax_Pa highest pressure at the outlet
 * @param outletsPerRow drop hoses a row (1 in the middle, 2 at both sides of the base)
 * @param placements what it can do
 * @param cost_usdHa cost of a pass without product [$/ha]
 * @param heel_m3 volume that stays in the tank
 * @param prime_m3 volume that fills the lines
 * @param fieldEfficiency share of field time at full width
 * @param sprayClearance_m crop height up to which it is driven for spraying although the lowest member brushes the crop:
 *     the owner's choice, the plants that it bends are counted; NaN: as its clearance
 */
public record Rig(
        Called<RigId> called,
        String kind,
        double clearance_m,
        double width_m,
        double tank_m3,
        double speedMin_ms,
        double speedMax_ms,
        double pressureMin_Pa,
        double pressureMax_Pa,
        int outletsPerRow,
        Set<Placement> placements,
        double cost_usdHa,
        double heel_m3,
        double prime_m3,
        double fieldEfficiency,
        double sprayClearance_m) {
    public Rig {
        placements = Set.copyOf(placements);
    }

    /** One that was never called otherwise. */
    public Rig(
            String name,
            String kind,
            double clearance_m,
            double width_m,
            double tank_m3,
            double speedMin_ms,
            double speedMax_ms,
            double pressureMin_Pa,
            double pressureMax_Pa,
            int outletsPerRow,
            Set<Placement> placements,
            double cost_usdHa,
            double heel_m3,
            double prime_m3,
            double fieldEfficiency,
            double sprayClearance_m) {
        this(
                new Called<>(new RigId(name), name),
                kind,
                clearance_m,
                width_m,
                tank_m3,
                speedMin_ms,
                speedMax_ms,
                pressureMin_Pa,
                pressureMax_Pa,
                outletsPerRow,
                placements,
                cost_usdHa,
                heel_m3,
                prime_m3,
                fieldEfficiency,
                sprayClearance_m);
    }

    /** A rig that is driven in no crop taller than it clears. */
    public Rig(
            String name,
            String kind,
            double clearance_m,
            double width_m,
            double tank_m3,
            double speedMin_ms,
            double speedMax_ms,
            double pressureMin_Pa,
            double pressureMax_Pa,
            int outletsPerRow,
            Set<Placement> placements,
            double cost_usdHa,
            double heel_m3,
            double prime_m3,
            double fieldEfficiency) {
        this(
                name,
                kind,
                clearance_m,
                width_m,
                tank_m3,
                speedMin_ms,
                speedMax_ms,
                pressureMin_Pa,
                pressureMax_Pa,
                outletsPerRow,
                placements,
                cost_usdHa,
                heel_m3,
                prime_m3,
                fieldEfficiency,
                Double.NaN);
    }

    public RigId id() {
        return called.id();
    }

    public String name() {
        return called.name();
    }

    /** The crop height it may enter with a placement. */
    public double clearance_m(Placement placement) {
        boolean more = placement.isSpray() && sprayClearance_m > clearance_m;
        return more ? sprayClearance_m : clearance_m;
    }

    public boolean isTender() {
        return "tender".equals(kind);
    }

    public boolean isHired() {
        return "hired".equals(kind);
    }
}
