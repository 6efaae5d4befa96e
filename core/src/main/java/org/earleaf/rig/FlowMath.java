// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.earleaf.units.Units.KGM3_PER_LBGAL;
import static org.earleaf.units.Units.PA_PER_PSI;

/**
 * Rate, speed, width and flow of one outlet; pressure and size; density. Each solved for each of its parts.
 *
 * <pre>
 * Q = r v w
 * Q F = N sqrt(p / p0)
 * F = sqrt(density / density of water)
 *
 * Q      flow of the liquid itself through one outlet                          [m3/s]
 * r      rate on the ground the outlet serves                                  [m3/m2]
 * v      speed over the ground                                                 [m/s]
 * w      width one outlet serves: outlet spacing, band, or row spacing by the number of outlets a row  [m]
 * N      rated flow: water through the outlet at p0 = 40 psi                   [m3/s]
 * p      pressure at the outlet                                                [Pa]
 * F      factor from the liquid's flow to the flow of water at the same pressure
 * Range  positive and finite; the doors' limits stand in FlowRanges
 * Source US form GPA = 5940 GPM / (mph in) of university extension calibration sheets (algebra of Q = r v w);
 *        square-root law of a fixed orifice, any handbook of hydraulics; density correction of extension tables.
 * Check  FlowMathTest: extension forms, worked values and 1,000 random settings in US and metric form.
 * </pre>
 */
public final class FlowMath {
    /** Pressure at which outlets are rated [Pa]: 40 psi. */
    public static final double RATED_PA = 40 * PA_PER_PSI;
    /** Water as the tables of the trade take it, 8.34 lb/gal [kg/m3]. */
    public static final double WATER_KGM3 = 8.34 * KGM3_PER_LBGAL;

    private FlowMath() {}

    public static double flow_m3s(double rate_m3m2, double speed_ms, double width_m) {
        return rate_m3m2 * speed_ms * width_m;
    }

    public static double rate_m3m2(double flow_m3s, double speed_ms, double width_m) {
        return flow_m3s / (speed_ms * width_m);
    }

    public static double speed_ms(double flow_m3s, double rate_m3m2, double width_m) {
        return flow_m3s / (rate_m3m2 * width_m);
    }

    public static double width_m(double flow_m3s, double rate_m3m2, double speed_ms) {
        return flow_m3s / (rate_m3m2 * speed_ms);
    }

    /** Factor that turns the flow of a liquid into the flow of water at the same pressure. */
    public static double densityFactor(double density_kgM3) {
        return Math.sqrt(density_kgM3 / WATER_KGM3);
    }

    /** Density of the liquid that has this factor. */
    public static double density_kgM3(double densityFactor) {
        return densityFactor * densityFactor * WATER_KGM3;
    }

    /** Flow of the liquid through an outlet of this rating. */
    public static double flowAt_m3s(double rated_m3s, double pressure_Pa, double densityFactor) {
        return rated_m3s * Math.sqrt(pressure_Pa / RATED_PA) / densityFactor;
    }

    /** Pressure that drives this flow of the liquid through an outlet of this rating. */
    public static double pressure_Pa(double flow_m3s, double rated_m3s, double densityFactor) {
        double share = flow_m3s * densityFactor / rated_m3s;
        return RATED_PA * share * share;
    }

    /** Rating of the outlet that passes this flow of the liquid at this pressure. */
    public static double rated_m3s(double flow_m3s, double pressure_Pa, double densityFactor) {
        return flow_m3s * densityFactor / Math.sqrt(pressure_Pa / RATED_PA);
    }

    /** Factor of the liquid that flows like this through an outlet of this rating. */
    public static double densityFactor(double flow_m3s, double rated_m3s, double pressure_Pa) {
        return rated_m3s * Math.sqrt(pressure_Pa / RATED_PA) / flow_m3s;
    }

    /** Rate per area of field when the given rate holds on a band in each row. */
    public static double fieldRate_m3m2(double bandRate_m3m2, double band_m, double row_m) {
        return bandRate_m3m2 * band_m / row_m;
    }

    /** Rate on the band that comes to this rate per area of field. */
    public static double bandRate_m3m2(double fieldRate_m3m2, double band_m, double row_m) {
        return fieldRate_m3m2 * row_m / band_m;
    }

    /** Rate of a liquid product that carries this much nutrient. */
    public static double rateOfNutrient_m3m2(double nutrient_kgHa, double nutrient_kgL) {
        return nutrient_kgHa / nutrient_kgL * 1e-7;
    }

    /** Density of a blend from parts by volume, taken as adding up (error under 1 %). */
    public static double blend_kgM3(double[] volumes_m3, double[] densities_kgM3) {
        double mass_kg = 0;
        double volume_m3 = 0;
        for (int k = 0; k < volumes_m3.length; k++) {
            mass_kg += volumes_m3[k] * densities_kgM3[k];
            volume_m3 += volumes_m3[k];
        }
        return mass_kg / volume_m3;
    }
}
