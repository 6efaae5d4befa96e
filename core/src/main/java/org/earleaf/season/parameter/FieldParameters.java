// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.List;
import java.util.stream.DoubleStream;
import org.earleaf.field.Drainage;
import org.earleaf.field.PastYear;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Zone;

/**
 * What the usual numbers become on a field: hybrids of another year than today's, the drag of corn after corn, and what
 * the years before left in the soil.
 *
 * <pre>
 * RUE    = RUE (1 - 0.0026 y) drag           d = 0.50 + 0.018 y, at most 0.85
 * c      = c (1 - 0.008 y)
 * k      = k r (1 - 0.32 (1 - min(1, N/150)))
 * start  = start r' (1 + 0.35 max(0, N - 100)/100)/(1 + 0.35 max(0, N' - 100)/100)
 *
 * y      years from planting to 2016, none after it: newer hybrids are not in the trials, and going on with the trend to
 *        2025 would ask for 40 lb/ac more than is published for today
 * d      decline of growth for light in grain fill: older hybrids stay green for a shorter time
 * c      critical nitrogen of a small shoot: newer hybrids ask for more, as their best rate has risen by 2 to 3 kg/ha a
 *        year (Baum et al. 2025, Nat. Commun. 16, from memory)
 * drag   0.94 after corn, else 1
 * k      mineralisation of soil organic nitrogen; start, soil nitrate on 1 March
 * r, r'  1.12 and 1.36 after soybean, else 1
 * N      mean nitrogen of the field's last corn crops, at most five; N', where it is not known
 * Source fitted in bench/trials to 103 site-years of corn in Iowa, 2000 to 2016, and plants dug near Ames; the trend over
 *        years also fits Urbana, Illinois, 1985 to 1999, which was not fitted. Stay-green as what newer hybrids have
 *        more of: Tollenaar & Wu 1999, Crop Sci. 39:1597, from memory
 * Check  FieldParametersTest, bench/trials
 * </pre>
 */
public final class FieldParameters {
    /** Hybrids of this year and later are those of the usual numbers. */
    private static final int NEWEST = 2016;
    /** Oldest hybrids that the trend was held against. */
    private static final int OLDEST = 1985;
    /** Nitrogen on corn that keeps the soil's own supply up [kg/ha]. */
    private static final double KEEPS_UP_KGHA = 150;
    /** Nitrogen on corn above which some is left for the next crop [kg/ha]. */
    private static final double USED_UP_KGHA = 100;

    private static final double USUAL_AFTER_CORN_KGHA = 187;
    private static final double USUAL_AFTER_SOYBEAN_KGHA = 150;
    private static final int YEARS = 5;
    /** Roots stop here where the water table is shallow [mm] (Ordonez et al. 2018, Field Crops Res. 215:122). */
    private static final double ROOTS_OVER_WATER_MM = 900;

    private FieldParameters() {}

    /** @param past the years before, newest first */
    public static ParameterSet of(Zone zone, List<PastYear> past) {
        return of(ParameterSet.usual(), zone, past);
    }

    /** @param usual the numbers of a field like any other */
    public static ParameterSet of(ParameterSet usual, Zone zone, List<PastYear> past) {
        ParameterSet set =
                of(usual, zone.seedbed().previousCrop(), zone.planted().getYear(), past);
        return zone.land().drainage() == Drainage.POOR ? set.with(Parameter.ROOT_DEPTH_MAX, ROOTS_OVER_WATER_MM) : set;
    }

    /**
     * As on a field, without what its drainage does to roots.
     *
     * @param planted the year whose hybrids are grown
     * @param past the years before, newest first
     */
    public static ParameterSet of(PreviousCrop last, int planted, List<PastYear> past) {
        return of(ParameterSet.usual(), last, planted, past);
    }

    private static ParameterSet of(ParameterSet usual, PreviousCrop last, int planted, List<PastYear> past) {
        boolean corn = last == PreviousCrop.CORN;
        ParameterSet set = ofEra(usual, planted);
        if (corn) {
            set = set.clamped(Parameter.RUE, set.of(Parameter.RUE) * set.of(Parameter.CORN_DRAG));
        }
        return supplied(set, last, nitrogen_kgHa(past, corn), corn);
    }

    private static ParameterSet ofEra(ParameterSet set, int planted) {
        int years = NEWEST - Math.max(OLDEST, Math.min(NEWEST, planted));
        return set.clamped(Parameter.RUE, set.of(Parameter.RUE) * (1 - set.of(Parameter.ERA_GROWTH) * years))
                .clamped(Parameter.CRITICAL, set.of(Parameter.CRITICAL) * (1 - set.of(Parameter.ERA_DEMAND) * years))
                .clamped(Parameter.RUE_DECLINE, set.of(Parameter.RUE_DECLINE) + set.of(Parameter.ERA_GREEN) * years);
    }

    private static ParameterSet supplied(ParameterSet set, PreviousCrop last, double nitrogen_kgHa, boolean corn) {
        boolean soybean = last == PreviousCrop.SOYBEAN;
        double lacking = 1 - Math.min(1, nitrogen_kgHa / KEEPS_UP_KGHA);
        double supply = (soybean ? set.of(Parameter.SOYBEAN_SUPPLY) : 1) * (1 - set.of(Parameter.DEPLETION) * lacking);
        double start = (soybean ? set.of(Parameter.SOYBEAN_START) : 1)
                * left(set, nitrogen_kgHa)
                / left(set, usual_kgHa(corn));
        return set.clamped(Parameter.MINERALISATION, set.of(Parameter.MINERALISATION) * supply)
                .clamped(Parameter.START_NITRATE, set.of(Parameter.START_NITRATE) * start);
    }

    private static double left(ParameterSet set, double nitrogen_kgHa) {
        return 1 + set.of(Parameter.CARRY_OVER) * Math.max(0, nitrogen_kgHa - USED_UP_KGHA) / 100;
    }

    private static double usual_kgHa(boolean corn) {
        return corn ? USUAL_AFTER_CORN_KGHA : USUAL_AFTER_SOYBEAN_KGHA;
    }

    private static double nitrogen_kgHa(List<PastYear> past, boolean corn) {
        DoubleStream known = past.stream()
                .filter(year -> year.crop() == PreviousCrop.CORN && year.hasNitrogen())
                .limit(YEARS)
                .mapToDouble(PastYear::nitrogen_kgHa);
        return known.average().orElse(usual_kgHa(corn));
    }
}
