// SPDX-License-Identifier: Apache-2.0
package org.earleaf.load;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Ground that a load goes on, as looked at when the load was made. NaN and empty: not known.
 *
 * @param area_ha that the load covers of the zone
 * @param stage on the scale of the crop
 * @param stageSeen day of that stage
 * @param cropBegins first day that counts to this crop's season
 * @param water_m to the nearest water in any direction
 * @param sensitive_m to the nearest crop or place that the mix hurts
 */
public record LoadGround(
        String field,
        String zone,
        String crop,
        double zone_ha,
        double area_ha,
        double stage,
        LocalDate stageSeen,
        double height_m,
        LocalDate cropBegins,
        Optional<LocalDate> harvest,
        double water_m,
        double sensitive_m) {
    public String label() {
        return label(field, zone);
    }

    /** How people name a zone of a field. */
    public static String label(String field, String zone) {
        return zone.isEmpty() ? field : field + ", " + zone;
    }

    LoadGround covering(double share) {
        return new LoadGround(
                field,
                zone,
                crop,
                zone_ha,
                area_ha * share,
                stage,
                stageSeen,
                height_m,
                cropBegins,
                harvest,
                water_m,
                sensitive_m);
    }
}
