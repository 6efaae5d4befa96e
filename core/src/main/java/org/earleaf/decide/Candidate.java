// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Rig;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.ZoneSeason;

/** What may be laid where; rigs that do the same share the runs. */
record Candidate(NitrogenProduct product, Placement placement, List<Rig> rigs) {

    /** A candidate at a rate, with those of its rigs that fit on the day. */
    record Trial(Candidate candidate, double rate_kgHa, List<Rig> rigs) {
        NitrogenPass pass() {
            return ZoneSeason.pass(candidate.product(), rate_kgHa, candidate.placement(), Inhibitor.NONE);
        }

        /** Product and pass [$/ha]. */
        double cost_usdHa(Farm farm, Rig rig) {
            return rate_kgHa * farm.prices().nitrogen_usdKg(candidate.product().name()) + rig.cost_usdHa();
        }
    }

    static boolean carriesNitrogen(Placement p) {
        return switch (p) {
            case BROADCAST, ROW_BASE, MID_DRIBBLE, MID_INJECT, ROW_INJECT, BY_AIR -> true;
            default -> false;
        };
    }

    static List<Candidate> of(Farm farm, List<Rig> rigs) {
        List<Candidate> all = new ArrayList<>();
        for (Placement p : Placement.values()) {
            List<Rig> able = rigs.stream()
                    .filter(r -> !r.isTender() && r.placements().contains(p))
                    .toList();
            if (!carriesNitrogen(p) || able.isEmpty()) {
                continue;
            }
            // Dry urea is spread by a hired aircraft only; rigs carry liquids.
            List<NitrogenProduct> products =
                    p == Placement.BY_AIR ? farm.findNitrogen("urea").stream().toList() : liquids(farm);
            for (NitrogenProduct product : products) {
                all.add(new Candidate(product, p, able));
            }
        }
        return all;
    }

    /**
     * Liquids with a price of their own; UAN 32 when none has one. Never ammonia. Where some of them stand in the yard,
     * only those: the strengths of one solution are worth the same, and what is there is what goes out.
     */
    private static List<NitrogenProduct> liquids(Farm farm) {
        List<NitrogenProduct> priced = farm.prices().nitrogenOf_usdKg().keySet().stream()
                .sorted()
                .flatMap(name -> farm.findNitrogen(name).stream())
                .filter(NitrogenProduct::isLiquid)
                .filter(n -> n.nitrogen_share() >= .2 && n.nitrogen_share() < .5)
                .toList();
        List<NitrogenProduct> held =
                priced.stream().filter(n -> isInStock(farm, n)).toList();
        if (!held.isEmpty()) {
            return held;
        }
        return priced.isEmpty() ? farm.findNitrogen("UAN 32").stream().toList() : priced;
    }

    private static boolean isInStock(Farm farm, NitrogenProduct n) {
        return farm.shelf().stock().stream()
                .anyMatch(s -> s.amount() > 0 && s.product().equalsIgnoreCase(n.name()));
    }
}
