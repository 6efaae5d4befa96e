// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.field.Placement;

/**
 * The pass that may follow a pass. It is not decided now: on its day the rain since then tells whether it is made, and
 * how much.
 *
 * @param date about when; made on the first of three days that can be worked
 * @param steps what is done after little, some and much rain, in that order; neighbours that do the same are one
 * @param chance share of futures in which it is made
 * @param adds_usdHa what it adds to the worth of the first pass [$/ha]
 * @param alone what the first pass is worth with nothing after it
 */
public record FollowUp(
        LocalDate date,
        String product,
        Placement placement,
        String rig,
        List<Step> steps,
        double chance,
        double adds_usdHa,
        Worth alone) {
    public FollowUp {
        steps = List.copyOf(steps);
    }

    /**
     * What is done after so much rain.
     *
     * @param fromRain_mm least rain since this morning
     * @param toRain_mm most; infinite at the upper end
     * @param share share of futures with so much
     * @param nitrogen_kgHa nitrogen put on, 0: nothing
     */
    public record Step(double fromRain_mm, double toRain_mm, double share, double nitrogen_kgHa) {}
}
