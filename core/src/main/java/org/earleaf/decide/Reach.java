// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.ClearanceFit;
import org.earleaf.farm.OverTheTop;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonTrace.Daily;

/**
 * Whether a rig may still enter.
 *
 * <pre>
 * out of reach from the first day with H + 5 cm above c
 *
 * H      height that nine in ten futures stay below             [cm]
 * c      clearance of the rig; a hired aircraft has none to keep [cm]
 * Source own construct: the margin of 5 cm is an assumption
 * Check  ClearanceFitTest, NitrogenOptionsTest
 * </pre>
 */
final class Reach {
    private Reach() {}

    static boolean mayEnter(Baseline base, Rig rig, Placement placement, LocalDate date) {
        return mayEnter(rig, placement, base.height_cm(date).p90());
    }

    /** Whether a rig may not enter for fear of a crop that may well be lower: it clears it in one of ten futures. */
    static boolean isInDoubt(Baseline base, Rig rig, Placement placement, LocalDate date) {
        return !mayEnter(base, rig, placement, date)
                && mayEnter(rig, placement, base.height_cm(date).p10());
    }

    /** @param p90_cm the height that nine in ten futures stay below */
    static boolean mayEnter(Rig rig, Placement placement, double p90_cm) {
        return ClearanceFit.clears(rig, placement, p90_cm / 100);
    }

    /** Most nitrogen [kg/ha] that may go on leaves that day; unlimited when it does not touch them. */
    static double most_kgHa(Baseline base, Placement placement, LocalDate date, boolean liquid) {
        return most_kgHa(placement, base.trace().at(base.trace().day(date), Daily.COLLARS), liquid);
    }

    static double most_kgHa(Placement placement, double collars, boolean liquid) {
        boolean touchesLeaves = placement == Placement.BROADCAST && liquid;
        return touchesLeaves ? OverTheTop.most_kgHa(collars, false) : Double.POSITIVE_INFINITY;
    }

    static List<OutOfReach> ofRigs(ZoneEnsemble futures, Baseline base) {
        List<OutOfReach> all = new ArrayList<>();
        for (Rig rig : futures.farm().rigs()) {
            if (!rig.isTender() && rig.placements().stream().anyMatch(Candidate::carriesNitrogen)) {
                all.add(of(futures, base, rig));
            }
        }
        return all;
    }

    private static OutOfReach of(ZoneEnsemble futures, Baseline base, Rig rig) {
        Placement lowest = rig.placements().stream()
                .filter(Candidate::carriesNitrogen)
                .sorted()
                .reduce((a, b) -> a == Placement.BY_AIR ? a : b)
                .orElseThrow();
        Optional<LocalDate> lastDay = Optional.empty();
        for (LocalDate d = futures.decisionDay(); !d.isAfter(futures.last()); d = d.plusDays(1)) {
            if (!mayEnter(base, rig, lowest, d)) {
                return new OutOfReach(rig.name(), lastDay, Optional.of(d));
            }
            lastDay = Optional.of(d);
        }
        return new OutOfReach(rig.name(), lastDay, Optional.empty());
    }
}
