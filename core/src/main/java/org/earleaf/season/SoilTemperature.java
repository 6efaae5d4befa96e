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
        return Lanes.isPositive(t_C) * Lanes.exp((Lanes.clamp(t_C, 0, 35) - reference_C) * (lnQ / 10));
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
            follow(i, air);
        }
        warm(LN_2, t.warmth2);
        warm(LN_22, t.warmth22);
    }

    private void follow(int i, double[] air) {
        double share = FOLLOW[i];
        int at = i * s.members;
        double[] layers = s.soilTemperature;
        for (int m = 0; m < air.length; m++) {
            layers[at + m] += share * (air[m] - layers[at + m]);
        }
    }

    /** Both columns of a layer are as warm. */
    private void warm(double lnQ, double[] cells) {
        double[] layers = s.soilTemperature;
        for (int n = 0; n < layers.length; n++) {
            cells[n] = q10(layers[n], lnQ, 25);
        }
        System.arraycopy(cells, 0, cells, layers.length, layers.length);
    }
}
