// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.earleaf.app.store.Catches;
import org.earleaf.app.store.Catches.Caught;
import org.earleaf.app.store.LoadStore.Kept;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.load.LoadGround;
import org.earleaf.load.LoadState;
import org.earleaf.load.LoadSteps;
import org.earleaf.load.TankLoad;
import org.earleaf.rig.Calibration;
import org.earleaf.rig.Liquid;
import org.earleaf.units.Said;

/** Whether what the outlets of a rig gave still holds, by what the farm has kept. */
public final class Calibrated {
    private Calibrated() {}

    /**
     * Why it does not hold for a load, empty where it does, or where a hired operator answers for the rig.
     *
     * @param loads all that are kept
     */
    public static Optional<Said> lapsed(TankLoad load, Farm farm, Catches catches, List<Kept> loads, Instant now) {
        return lapsed(load.rig(), LoadSteps.liquid(load, farm), farm, catches, loads, now);
    }

    /** @param liquid that is to go out */
    public static Optional<Said> lapsed(
            String rig, Liquid liquid, Farm farm, Catches catches, List<Kept> loads, Instant now) {
        if (farm.rigs().stream().filter(r -> r.name().equalsIgnoreCase(rig)).anyMatch(Rig::isHired)) {
            return Optional.empty();
        }
        Optional<Caught> newest = catches.findNewest(rig);
        double ground_ha = loads.stream()
                .map(Kept::load)
                .filter(l -> l.rig().equalsIgnoreCase(rig) && l.state() == LoadState.APPLIED)
                .filter(l -> newest.isPresent() && isAfter(l, newest.get().at()))
                .flatMap(l -> l.grounds().stream())
                .mapToDouble(LoadGround::area_ha)
                .sum();
        return Calibration.lapsed(
                newest.map(c -> new Calibration(c.at(), c.density_kgM3())),
                new Calibration.Since(now, catches.findChange(rig), liquid.density_kgM3(), ground_ha),
                farm.settings());
    }

    private static boolean isAfter(TankLoad load, Instant caught) {
        return load.events().stream().reduce((before, after) -> after).stream().anyMatch(e -> e.at().isAfter(caught));
    }
}
