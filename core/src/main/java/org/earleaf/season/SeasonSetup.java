// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.field.Hybrid;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;

/**
 * How a season starts on one zone.
 *
 * @param first first day of the run
 */
public record SeasonSetup(LocalDate first, Crop crop, Ground ground, LastCrop lastCrop, Start start) {
    /**
     * @param planted planting date; the run may start before
     * @param population_m2 plants per m2
     * @param rowSpacing_m row spacing; the row column is 0.254 m wide
     * @param latePlanting whether planting after 1 May brings silk and black layer forward in thermal time
     */
    public record Crop(
            LocalDate planted, Hybrid hybrid, double population_m2, double rowSpacing_m, boolean latePlanting) {}

    /**
     * @param drainMax_mm greatest daily deep drainage
     * @param curveNumber CN2 of the runoff curve
     * @param waterTable_mm depth of a standing water table, NaN: none
     */
    public record Ground(SoilProfile soil, double drainMax_mm, double curveNumber, double waterTable_mm) {}

    /**
     * What the last crop left.
     *
     * @param cover share of ground covered
     * @param residue_kgHa dry residue
     * @param residueCn carbon to nitrogen of it
     * @param buried whether it is worked in
     */
    public record LastCrop(double cover, double residue_kgHa, double residueCn, boolean buried) {}

    /**
     * What the soil holds on the first day.
     *
     * @param nitrate_ppm by layer [mg/kg]
     * @param ammonium_ppm by layer [mg/kg]
     * @param soilTemperature_C all layers
     */
    public record Start(List<Double> nitrate_ppm, List<Double> ammonium_ppm, double soilTemperature_C) {
        public Start {
            nitrate_ppm = List.copyOf(nitrate_ppm);
            ammonium_ppm = List.copyOf(ammonium_ppm);
        }
    }

    /** Width of the band taken as the row [m]: 5 in on both sides. */
    public static final double ROW_BAND_M = 0.254;

    public SoilProfile soil() {
        return ground.soil();
    }

    /** Share of the ground in the row column, 0.1 to 0.6. */
    public double rowShare() {
        return Math.max(0.1, Math.min(0.6, ROW_BAND_M / crop.rowSpacing_m()));
    }

    public Calendar calendar() {
        return Calendar.of(this, ParameterSet.usual());
    }

    Calendar calendar(ParameterSet set) {
        return Calendar.of(this, set);
    }

    /**
     * Thermal marks of the season [°F d from planting].
     *
     * <pre>
     * gSilk = 11.459 RM + 100.27 - 1.7 late      gBL = 24.16 RM - 15.388 - 6.8 late
     * late = days planted after 1 May, at most 45
     *
     * RM     relative maturity                      [d]
     * Range  RM 80 to 120
     * Source eastern Corn Belt regressions of silking and black layer on maturity, from memory; 6.8 a day: Nielsen et
     *        al. 2002, Agron. J. 94:549; the 25/75 split of it is an own construct.
     * Check  PhenologyTest
     * </pre>
     */
    public record Calendar(double silk, double blackLayer, double collarsAtTassel, boolean farNorth) {
        static Calendar of(SeasonSetup s, ParameterSet set) {
            Hybrid hybrid = s.crop.hybrid();
            double maturity = hybrid.relativeMaturity_d();
            int doy = s.crop.planted().getDayOfYear();
            double late = s.crop.latePlanting() ? Math.max(0, Math.min(45, doy - 121)) : 0;
            double silk = Double.isNaN(hybrid.gddSilk()) ? 11.459 * maturity + 100.27 : hybrid.gddSilk();
            double black = Double.isNaN(hybrid.gddBlackLayer()) ? 24.16 * maturity - 15.388 : hybrid.gddBlackLayer();
            silk -= set.of(Parameter.LATE_SILK) * late;
            black -= set.of(Parameter.LATE_BLACK) * late;
            boolean north = maturity < 80;
            double tassel = north ? (silk - 115) / 59 : 10 + (silk - 935) / 50;
            return new Calendar(silk, black, tassel, north);
        }
    }
}
