// SPDX-License-Identifier: Apache-2.0
package org.earleaf.mix;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.earleaf.label.DropletClass;

/**
 * A load on one piece of ground, as labels look at it. NaN and empty mean "not known".
 *
 * @param job the pass that the load belongs to
 * @param zone_ha ground of the zone
 * @param area_ha ground that the load covers in it
 * @param cropBegins first day that counts to this crop's season: the end of the crop before
 * @param stage on the scale of its crop
 * @param harvest first day on which it may be harvested
 * @param boom_m outlets over the crop; 0 for outlets below it
 * @param water_m from the edge of what is treated to the nearest water, in any direction
 * @param sensitive_m likewise to the nearest crop or place that it hurts
 * @param certified whether a certified applicator applies or supervises
 */
public record LabelWork(
        String job,
        String place,
        String crop,
        double zone_ha,
        double area_ha,
        LocalDate date,
        LocalDate cropBegins,
        double stage,
        double height_m,
        Optional<LocalDate> harvest,
        double carrier_LHa,
        boolean nitrogenCarrier,
        boolean byAir,
        Optional<DropletClass> droplets,
        double boom_m,
        double speed_ms,
        double water_m,
        double sensitive_m,
        boolean certified,
        List<Part> parts) {
    public LabelWork {
        parts = List.copyOf(parts);
    }

    /**
     * One product of the mix.
     *
     * @param perHa L/ha of a liquid, kg/ha of a dry product
     * @param labelled whether it carries a pesticide label; plain fertiliser and helpers do not
     * @param classes words by which labels may name it beside its name: "NIS", "COC", "calcium"
     */
    public record Part(String product, double perHa, boolean dry, boolean labelled, Set<String> classes) {
        public Part {
            classes = Set.copyOf(classes);
        }
    }
}
