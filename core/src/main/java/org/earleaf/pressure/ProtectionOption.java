// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.Placement;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;

/**
 * A pass that could be made against disease, insects or both.
 *
 * @param surfactant whether a surfactant or oil goes with it
 * @param passCost_usdHa cost of the trip without product
 * @param trackShare share of the yield lost in wheel tracks and headlands
 * @param injuryShare share lost with plants bent or broken under the rig
 */
public record ProtectionOption(
        LocalDate date,
        Placement placement,
        Optional<Fungicide> fungicide,
        Optional<Insecticide> insecticide,
        boolean surfactant,
        double passCost_usdHa,
        double trackShare,
        double injuryShare) {
    public ProtectionOption {
        if (fungicide.isEmpty() && insecticide.isEmpty()) {
            throw new EarleafException(Problem.of(
                    "protection.no-product", Said.of("where.pass-of", "day", date), Said.of("found.no-product")));
        }
        if (!(trackShare >= 0 && injuryShare >= 0 && trackShare + injuryShare < 1)) {
            throw new EarleafException(Problem.of(
                    "protection.losses-out-of-range",
                    Said.of("where.pass-of", "day", date),
                    Said.of("found.losses", "tracks", trackShare, "injury", injuryShare)));
        }
    }

    /** All that is paid [$/ha]. */
    public double cost_usdHa() {
        return passCost_usdHa
                + fungicide.map(Fungicide::cost_usdHa).orElse(0.0)
                + insecticide.map(Insecticide::cost_usdHa).orElse(0.0);
    }

    public boolean killsEnemies() {
        return insecticide.filter(i -> i.reach() == Insecticide.Reach.BROAD).isPresent();
    }
}
