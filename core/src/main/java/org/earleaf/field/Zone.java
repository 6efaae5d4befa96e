// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import java.time.LocalDate;
import org.earleaf.soil.SoilProfile;

/**
 * A part of a field managed alike, with its crop of this season. {@code NaN} means not given.
 *
 * @param called its field's name and its own
 * @param area_ha ground [ha]
 * @param crop crop planted, lower case ("corn" is modelled; others are accepted for plans, loads and records)
 * @param planted planting date
 * @param relativeMaturity_d days, 80 to 120 (75 to 79 with the far-north leaf rate)
 * @param population_m2 plants per m2, 5 to 10.5
 * @param rowSpacing_m 0.38 to 1.02
 * @param residueCover share of ground covered at planting, 0 to 1, NaN: by previous crop and tillage
 * @param curveNumber NRCS runoff curve number CN2, NaN: by soil and tillage
 * @param gddSilk hybrid's own rating from planting [°F d], NaN: by maturity
 * @param gddBlackLayer hybrid's own rating from planting [°F d], NaN: by maturity
 * @param yieldGoal_kgHa dry grain [kg/ha], NaN: none
 * @param disease what makes leaf disease likelier in it
 */
public record Zone(
        ZoneName called,
        double area_ha,
        String crop,
        LocalDate planted,
        double relativeMaturity_d,
        double population_m2,
        double rowSpacing_m,
        PreviousCrop previousCrop,
        Drainage drainage,
        Tillage tillage,
        double residueCover,
        double curveNumber,
        String hybrid,
        double gddSilk,
        double gddBlackLayer,
        double yieldGoal_kgHa,
        SoilProfile soil,
        DiseaseFacts disease) {
    /** One that was never called otherwise. */
    public Zone(
            String field,
            String zone,
            double area_ha,
            String crop,
            LocalDate planted,
            double relativeMaturity_d,
            double population_m2,
            double rowSpacing_m,
            PreviousCrop previousCrop,
            Drainage drainage,
            Tillage tillage,
            double residueCover,
            double curveNumber,
            String hybrid,
            double gddSilk,
            double gddBlackLayer,
            double yieldGoal_kgHa,
            SoilProfile soil,
            DiseaseFacts disease) {
        this(
                ZoneName.of(field, zone),
                area_ha,
                crop,
                planted,
                relativeMaturity_d,
                population_m2,
                rowSpacing_m,
                previousCrop,
                drainage,
                tillage,
                residueCover,
                curveNumber,
                hybrid,
                gddSilk,
                gddBlackLayer,
                yieldGoal_kgHa,
                soil,
                disease);
    }

    /** A zone of which nothing is told about disease. */
    public Zone(
            String field,
            String zone,
            double area_ha,
            String crop,
            LocalDate planted,
            double relativeMaturity_d,
            double population_m2,
            double rowSpacing_m,
            PreviousCrop previousCrop,
            Drainage drainage,
            Tillage tillage,
            double residueCover,
            double curveNumber,
            String hybrid,
            double gddSilk,
            double gddBlackLayer,
            double yieldGoal_kgHa,
            SoilProfile soil) {
        this(
                field,
                zone,
                area_ha,
                crop,
                planted,
                relativeMaturity_d,
                population_m2,
                rowSpacing_m,
                previousCrop,
                drainage,
                tillage,
                residueCover,
                curveNumber,
                hybrid,
                gddSilk,
                gddBlackLayer,
                yieldGoal_kgHa,
                soil,
                DiseaseFacts.NOT_GIVEN);
    }

    public ZoneId id() {
        return called.id();
    }

    public String field() {
        return called.field();
    }

    public String zone() {
        return called.zone();
    }

    public boolean isCorn() {
        return "corn".equals(crop);
    }

    /** Field name, with the zone's behind it where there is one. */
    public String label() {
        return zone().isEmpty() ? field() : field() + ", " + zone();
    }
}
