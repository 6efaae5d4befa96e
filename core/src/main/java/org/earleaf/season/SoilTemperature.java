// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

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

    SoilTemperature(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
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
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            follow(FOLLOW[i], air, i * s.members, s.soilTemperature);
        }
        double[] atWork = t.layer[0];
        double[] felt = t.layer[1];
        double[] warmth = t.layer[2];
        feel(s.soilTemperature, atWork, felt);
        warmth(atWork, felt, LN_2, warmth);
        toColumns(warmth, t.warmth2);
        warmth(atWork, felt, LN_22, warmth);
        toColumns(warmth, t.warmth22);
    }

    private static void follow(double share, double[] air, int at, double[] layers) {
        for (int m = 0; m < air.length; m++) {
            layers[at + m] += share * (air[m] - layers[at + m]);
        }
    }

    /** Whether microbes work, and the temperature that they feel; the two sides of {@link #q10} for all layers. */
    private static void feel(double[] t_C, double[] atWork, double[] felt_C) {
        for (int n = 0; n < atWork.length; n++) {
            atWork[n] = Lanes.isPositive(t_C[n]);
            felt_C[n] = Math.min(t_C[n], 35);
        }
    }

    private static void warmth(double[] atWork, double[] felt_C, double lnQ, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = atWork[n] * power(felt_C[n], lnQ, 25);
        }
    }

    /** Both columns of a layer are as warm. */
    private static void toColumns(double[] layers, double[] cells) {
        Columns.join(layers, 0, cells);
        Columns.join(layers, 1, cells);
    }
}
