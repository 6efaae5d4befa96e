// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.rig.Calibration;
import org.earleaf.rig.Liquid;
import org.earleaf.units.Said;

/** Whether what the outlets of a rig gave still holds, by what is kept of catches, changes of outlets and loads. */
public final class Calibrated {
    private Calibrated() {}

    /** What is kept of the outlets of rigs. */
    public interface Outlets {
        /** The newest catch of a rig. */
        Optional<Calibration> findCatch(String rig);

        /** When nozzles or plates of a rig were changed last. */
        Optional<Instant> findChange(String rig);
    }

    /**
     * Why it does not hold for a load, empty where it does, or where a hired operator answers for the rig.
     *
     * @param loads all that are kept
     */
    public static Optional<Said> lapsed(TankLoad load, Farm farm, Outlets outlets, List<TankLoad> loads, Instant now) {
        return lapsed(load.rig(), LoadSteps.liquid(load, farm), farm, outlets, loads, now);
    }

    /** @param liquid that is to go out */
    public static Optional<Said> lapsed(
            String rig, Liquid liquid, Farm farm, Outlets outlets, List<TankLoad> loads, Instant now) {
        if (farm.rigs().stream().filter(r -> r.name().equalsIgnoreCase(rig)).anyMatch(Rig::isHired)) {
            return Optional.empty();
        }
        Optional<Calibration> newest = outlets.findCatch(rig);
        double ground_ha = loads.stream()
                .filter(l -> l.rig().equalsIgnoreCase(rig) && l.state() == LoadState.APPLIED)
                .filter(l -> newest.isPresent() && isAfter(l, newest.get().caught()))
                .flatMap(l -> l.grounds().stream())
                .mapToDouble(LoadGround::area_ha)
                .sum();
        return Calibration.lapsed(
                newest,
                new Calibration.Since(now, outlets.findChange(rig), liquid.density_kgM3(), ground_ha),
                farm.settings());
    }

    private static boolean isAfter(TankLoad load, Instant caught) {
        return load.events().stream().reduce((before, after) -> after).stream().anyMatch(e -> e.at().isAfter(caught));
    }
}
