// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import org.earleaf.field.Zone;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.Site;

/**
 * How much farther the model may be off on a field than on the farms of the trials that it was held against.
 *
 * <pre>
 * w = min(2, 1 + 0.25 sum_k e_k),  e_k = distance of x_k from the range of the trials, in steps of s_k
 *
 * x      organic matter of the topsoil 3.0 to 5.1 %, s 1.5; latitude 40 to 43°, s 3; sand or clay in place of loam
 *        counts two steps
 * Source ranges: the farms of bench/trials (four in Iowa, one in Illinois); steps and 0.25: own construct
 * Check  TrialDistanceTest
 * </pre>
 */
public final class TrialDistance {
    private static final double PER_STEP = .25;
    private static final double MOST = 2;
    private static final double OTHER_TEXTURE = 2;
    /** From here on an answer says that the field is not like those of the trials (own construct). */
    private static final double TOLD = 1.2;

    private TrialDistance() {}

    /** Factor on what the trials have left unexplained, 1 to 2. */
    public static double widening(Zone zone, Site site) {
        SoilProfile soil = zone.soil();
        double steps = beyond(soil.om_pct().get(0), 3.0, 5.1, 1.5)
                + (soil.texture().isSandy() || soil.texture().isClay() ? OTHER_TEXTURE : 0)
                + beyond(site.latitude_deg(), 40, 43, 3);
        return Math.min(MOST, 1 + PER_STEP * steps);
    }

    /** Whether a field is so unlike the trials that its answers say so. */
    public static boolean isFar(Zone zone, Site site) {
        return widening(zone, site) >= TOLD;
    }

    private static double beyond(double x, double low, double high, double step) {
        return Math.max(0, Math.max(low - x, x - high)) / step;
    }
}
