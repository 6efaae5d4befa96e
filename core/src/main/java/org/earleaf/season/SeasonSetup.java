// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;

/**
 * How a season starts on one zone.
 *
 * @param first first day of the run
 * @param planted planting date; the run may start before
 * @param relativeMaturity_d 75 to 120
 * @param population_m2 plants per m2
 * @param rowSpacing_m row spacing; the row column is 0.254 m wide
 * @param gddSilk hybrid's own rating from planting [°F d], NaN: by maturity
 * @param gddBlackLayer likewise
 * @param latePlanting whether planting after 1 May brings silk and black layer forward in thermal time
 * @param drainMax_mm greatest daily deep drainage
 * @param curveNumber CN2 of the runoff curve
 * @param residueCover share of ground covered
 * @param residue_kgHa dry residue
 * @param residueCn carbon to nitrogen of the residue
 * @param residueBuried whether it is worked in
 * @param nitrate_ppm start, by layer [mg/kg]
 * @param ammonium_ppm start, by layer [mg/kg]
 * @param soilTemperature_C start, all layers
 * @param waterTable_mm depth of a standing water table, NaN: none
 */
public record SeasonSetup(
        LocalDate first,
        LocalDate planted,
        double relativeMaturity_d,
        double population_m2,
        double rowSpacing_m,
        double gddSilk,
        double gddBlackLayer,
        boolean latePlanting,
        SoilProfile soil,
        double drainMax_mm,
        double curveNumber,
        double residueCover,
        double residue_kgHa,
        double residueCn,
        boolean residueBuried,
        List<Double> nitrate_ppm,
        List<Double> ammonium_ppm,
        double soilTemperature_C,
        double waterTable_mm) {
    /** Width of the band taken as the row [m]: 5 in on both sides. */
    public static final double ROW_BAND_M = 0.254;

    public SeasonSetup {
        nitrate_ppm = List.copyOf(nitrate_ppm);
        ammonium_ppm = List.copyOf(ammonium_ppm);
    }

    /** Share of the ground in the row column, 0.1 to 0.6. */
    public double rowShare() {
        return Math.max(0.1, Math.min(0.6, ROW_BAND_M / rowSpacing_m));
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
            int doy = s.planted.getDayOfYear();
            double late = s.latePlanting ? Math.max(0, Math.min(45, doy - 121)) : 0;
            double silk = Double.isNaN(s.gddSilk) ? 11.459 * s.relativeMaturity_d + 100.27 : s.gddSilk;
            double black = Double.isNaN(s.gddBlackLayer) ? 24.16 * s.relativeMaturity_d - 15.388 : s.gddBlackLayer;
            silk -= set.of(Parameter.LATE_SILK) * late;
            black -= set.of(Parameter.LATE_BLACK) * late;
            boolean north = s.relativeMaturity_d < 80;
            double tassel = north ? (silk - 115) / 59 : 10 + (silk - 935) / 50;
            return new Calendar(silk, black, tassel, north);
        }
    }
}
