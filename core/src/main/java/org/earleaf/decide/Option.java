// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.field.Placement;

/**
 * One thing that could be done to a zone.
 *
 * @param kind "nitrogen"
 * @param nitrogen_kgHa nitrogen put on [kg N/ha]
 * @param productRate amount of product [L/ha for liquids, kg/ha for dry]
 * @param liquid whether productRate is litres
 * @param rig name of the rig
 * @param worth over the futures
 * @param waitCost_usdHaDay what waiting one more day costs [$/ha/d]
 * @param why reasons that render to sentences
 */
public record Option(
        String field,
        String zone,
        String kind,
        LocalDate date,
        String product,
        Placement placement,
        double nitrogen_kgHa,
        double productRate,
        boolean liquid,
        String rig,
        Worth worth,
        double waitCost_usdHaDay,
        List<Reason> why) {
    public Option {
        why = List.copyOf(why);
    }
}
