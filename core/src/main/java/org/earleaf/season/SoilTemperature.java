// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.parameter.Parameter;

/**
 * Soil temperature by layer, and what warmth does to microbial rates.
 *
 * <pre>
 * T_i  += a_i (Tair + b - T_i),  a = .35 .30 .20 .10 .05 .03;  b = 1.5 while LAI < 1 and residue cover < 30 %, else 0
 * Q10(T, q, Tref) = 0 at or below freezing, else q^((min(T, 35) - Tref)/10)
 *
 * T_i, Tair  layer and mean air temperature       [°C]
 * Source own construct; expect 2 °C either way of station data. Q10 near 2: Stanford, Frere & Schwaninger 1973, from
 *        memory.
 * Check  SoilTemperatureTest
 * </pre>
 */
final class SoilTemperature {
    private static final double[] FOLLOW = {.35, .30, .20, .10, .05, .03};

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;
    /** Share of the difference by which each layer follows, by layer and member. */
    private final double[] following;

    SoilTemperature(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
        following = Columns.byLayer(s.members, i -> FOLLOW[i]);
    }

    static double q10(double t_C, double lnQ, double reference_C) {
        return Lanes.isPositive(t_C) * power(Math.min(t_C, 35), lnQ, reference_C);
    }

    private static double power(double t_C, double lnQ, double reference_C) {
        return Lanes.exp((t_C - reference_C) * (lnQ / 10));
    }

    static final double LN_2 = Math.log(2);
    static final double LN_22 = Math.log(2.2);
    static final double LN_16 = Math.log(1.6);

    void step() {
        double[] air = t.member[0];
        double warming = site.of(Parameter.BARE_WARMING);
        double bare = site.of(Parameter.BARE_COVER);
        for (int m = 0; m < s.members; m++) {
            air[m] = t.tmean[m] + (s.lai[m] < 1 && s.soilCover[m] < bare ? warming : 0);
        }
        double[] above = t.layer[0];
        double[] atWork = t.layer[1];
        double[] felt = t.layer[2];
        double[] warmth = t.layer[3];
        Columns.spread(air, above);
        follow(above, following, s.soilTemperature, atWork, felt);
        warmth(atWork, felt, LN_2, warmth);
        // Both columns of a layer are as warm.
        Columns.join(warmth, warmth, t.warmth2);
        warmth(atWork, felt, LN_22, warmth);
        Columns.join(warmth, warmth, t.warmth22);
    }

    /** And then whether microbes work, and the temperature that they feel: the two sides of {@link #q10} by layer. */
    private static void follow(double[] air, double[] share, double[] t_C, double[] atWork, double[] felt_C) {
        for (int n = 0; n < t_C.length; n++) {
            t_C[n] += share[n] * (air[n] - t_C[n]);
            atWork[n] = Lanes.isPositive(t_C[n]);
            felt_C[n] = Math.min(t_C[n], 35);
        }
    }

    private static void warmth(double[] atWork, double[] felt_C, double lnQ, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = atWork[n] * power(felt_C[n], lnQ, 25);
        }
    }
}
