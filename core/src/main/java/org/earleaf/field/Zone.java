// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;
import org.earleaf.soil.SoilProfile;

/**
 * A part of a field managed alike, with its crop of this season. {@code NaN} means not given.
 *
 * @param called its field's name and its own
 * @param area_ha ground [ha]
 * @param disease what makes leaf disease likelier in it
 */
public record Zone(
        ZoneName called, double area_ha, Planting planting, Land land, Seedbed seedbed, DiseaseFacts disease) {
    /**
     * The crop of this season.
     *
     * @param crop lower case ("corn" is modelled; others are accepted for plans, loads and records)
     * @param population_m2 plants per m2, 5 to 10.5
     * @param rowSpacing_m 0.38 to 1.02
     * @param yieldGoal_kgHa dry grain [kg/ha], NaN: none
     */
    public record Planting(
            String crop,
            LocalDate planted,
            Hybrid hybrid,
            double population_m2,
            double rowSpacing_m,
            double yieldGoal_kgHa) {}

    /**
     * What does not change from year to year.
     *
     * @param curveNumber NRCS runoff curve number CN2, NaN: by soil and tillage
     */
    public record Land(SoilProfile soil, Drainage drainage, double curveNumber) {}

    /**
     * What it was planted into.
     *
     * @param residueCover share of ground covered at planting, 0 to 1, NaN: by previous crop and tillage
     */
    public record Seedbed(PreviousCrop previousCrop, Tillage tillage, double residueCover) {}

    public ZoneId id() {
        return called.id();
    }

    public String field() {
        return called.field();
    }

    public String zone() {
        return called.zone();
    }

    public String crop() {
        return planting.crop();
    }

    public boolean isCorn() {
        return "corn".equals(crop());
    }

    public LocalDate planted() {
        return planting.planted();
    }

    public double rowSpacing_m() {
        return planting.rowSpacing_m();
    }

    public SoilProfile soil() {
        return land.soil();
    }

    /** Field name, with the zone's behind it where there is one. */
    public String label() {
        return FieldPart.of(this).label();
    }
}
