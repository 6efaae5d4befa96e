// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.farm.RateUnit;
import org.earleaf.field.Pass;

/**
 * One product on one piece of ground by one job: made, or reserved by a load that is not yet out.
 *
 * @param job the pass that it belongs to; loads of one job cover ground beside each other
 * @param date made, or meant to be
 * @param perHa L/ha of a liquid, kg/ha of a dry product, where it goes on; NaN: not known
 * @param area_ha ground that it goes on
 * @param labelled whether it carries a pesticide label
 */
public record GroundUse(
        String job, LocalDate date, String product, double perHa, double area_ha, boolean labelled, State state) {
    /** Whether it lies on the ground already. */
    public enum State {
        MADE,
        RESERVED,
        /** The one that is asked about. */
        ASKED
    }

    /** A pass that was made, on the whole of a zone; the amount of a share of the tank is not known. */
    public static GroundUse made(Pass pass, double area_ha, boolean labelled) {
        Optional<RateUnit> unit = RateUnit.findByWord(pass.rate().unit());
        boolean known = unit.isPresent() && (unit.get().isVolume() || unit.get().isMass());
        double perHa = known ? unit.orElseThrow().inside(pass.rate().entered()) : Double.NaN;
        return new GroundUse(pass.id(), pass.date(), pass.product(), perHa, area_ha, labelled, State.MADE);
    }
}
