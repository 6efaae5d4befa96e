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
 */
public record LabelWork(
        String job,
        String place,
        LocalDate date,
        Ground ground,
        Standing standing,
        Carrier carrier,
        Driving driving,
        List<Part> parts) {
    /**
     * The ground and what is near it.
     *
     * @param zone_ha ground of the zone
     * @param area_ha ground that the load covers in it
     * @param water_m from the edge of what is treated to the nearest water, in any direction
     * @param sensitive_m likewise to the nearest crop or place that it hurts
     */
    public record Ground(double zone_ha, double area_ha, double water_m, double sensitive_m) {
        public Ground covering(double share) {
            return new Ground(zone_ha, area_ha * share, water_m, sensitive_m);
        }
    }

    /**
     * The crop that stands there.
     *
     * @param cropBegins first day that counts to this crop's season: the end of the crop before
     * @param stage on the scale of the crop
     * @param harvest first day on which it may be harvested
     */
    public record Standing(
            String crop, LocalDate cropBegins, double stage, double height_m, Optional<LocalDate> harvest) {}

    /**
     * What carries the products.
     *
     * @param nitrogen whether a nitrogen solution does
     */
    public record Carrier(double rate_LHa, boolean nitrogen, boolean byAir) {}

    /**
     * How it is put on.
     *
     * @param boom_m outlets over the crop; 0 for outlets below it
     * @param certified whether a certified applicator applies or supervises
     */
    public record Driving(Optional<DropletClass> droplets, double boom_m, double speed_ms, boolean certified) {
        /** Of plain fertiliser nothing is asked. */
        public static final Driving NOT_KNOWN = new Driving(Optional.empty(), Double.NaN, Double.NaN, false);
    }

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
