// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import org.earleaf.farm.Farm;
import org.earleaf.farm.HiredRig;
import org.earleaf.farm.Rig;
import org.earleaf.farm.RigId;
import org.earleaf.farm.Setting;
import org.earleaf.farm.Settings;
import org.earleaf.field.Placement;

/**
 * What can be hired when none of the farm's own rigs fits the crop any more: a high-clearance rig with drop hoses, or an
 * aircraft that spreads urea. A hired rig that the farm lists itself stands before these; clearance and prices are the
 * farm's settings.
 */
public final class Rescue {
    private Rescue() {}

    /** Rigs that options may name although the farm does not list them; width, tank and speed are not known. */
    public static List<Rig> rigs(Farm farm) {
        Settings settings = farm.settings();
        List<Rig> all = new ArrayList<>();
        if (settings.says(Setting.HIRED_RIG_NEAR) && !isListed(farm, Placement.ROW_BASE)) {
            all.add(hired(
                    HiredRig.HIGH_CLEARANCE,
                    settings.of(Setting.HIRED_RIG_CLEARANCE),
                    Placement.ROW_BASE,
                    settings.of(Setting.HIRED_RIG_COST)));
        }
        if (settings.says(Setting.AIRCRAFT_NEAR) && !isListed(farm, Placement.BY_AIR)) {
            all.add(hired(HiredRig.AIRCRAFT, 0, Placement.BY_AIR, settings.of(Setting.AIRCRAFT_COST)));
        }
        return all;
    }

    private static boolean isListed(Farm farm, Placement placement) {
        return farm.rigs().stream().anyMatch(r -> r.isHired() && r.placements().contains(placement));
    }

    /** Its owner knows its boom, tank and settings; they play no part in what a pass is worth. */
    private static Rig hired(HiredRig which, double clearance_m, Placement placement, double cost_usdHa) {
        double unknown = Double.NaN;
        return new Rig(
                RigId.called(which.token()),
                "hired",
                new Rig.Clearance(clearance_m, Double.NaN),
                new Rig.Boom(unknown, 0, unknown, unknown),
                new Rig.Tank(unknown, unknown, unknown),
                new Rig.Pace(unknown, unknown, unknown),
                Set.of(placement),
                cost_usdHa);
    }
}
