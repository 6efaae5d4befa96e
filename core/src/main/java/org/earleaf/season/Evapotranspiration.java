// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;

/**
 * Evaporation from the soil of each column and transpiration through roots.
 *
 * <pre>
 * Kcb  = 0.15 + (1.15 - 0.15)(1 - exp(-0.7 LAI)), 0 before emergence
 * fc   = clamp((Kcb - 0.15)/(1.2 - 0.15), .01, .99)^(1 + 0.5 hE), hE = 2.7 (LAI/5)^0.7; 0.01 when Kcb <= 0.15
 * Tpot = max(0, Kcb ET0 - Eint)(1 - 0.5 rep^3)
 * E    = ET0 min(Kr (1.2 - Kcb), (1 - fc) 1.2)(1 - 0.5 cover), two thirds from layer 1, one from layer 2
 * Kr   = 1 while De <= REW, then ((TEW - De)/(TEW - REW))^3
 * TEW  = 1.5 (FC1 - WP1), REW = TEW/4, De = 1.5 (FC1 - SW1)
 * T    = min(Tpot, S), S = sum of 0.10 RD (SW - WP) over cells, drawn in proportion
 *
 * ET0    reference evapotranspiration             [mm/d]
 * Eint   water on leaves                          [mm]
 * Source Allen et al. 1998, FAO-56 eqs 71 to 77, 97 (dual coefficient, from memory); top-layer evaporation: own
 *        construct within Brun et al. 1986, J. Soil Water Conserv. 41:120 and Hatfield et al. 1996; water uptake:
 *        Dardanelles et al., from memory.
 * Check  EvapotranspirationTest
 * </pre>
 */
final class Evapotranspiration {
    private static final double KCB_BARE = 0.15;

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    Evapotranspiration(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double basal(double lai, double full, double extinction) {
        return KCB_BARE + (full - KCB_BARE) * (1 - Math.exp(-extinction * lai));
    }

    /** Share of ground shaded. */
    static double cover(double kcb, double kcMax, double lai) {
        if (kcb <= KCB_BARE) {
            return 0.01;
        }
        double height = 2.7 * Math.pow(lai / 5, 0.7);
        double share = Math.max(0.01, Math.min(0.99, (kcb - KCB_BARE) / (kcMax - KCB_BARE)));
        return Math.pow(share, 1 + 0.5 * height);
    }

    /** Evaporation reduction of a drying surface; water of layer 1 in mm. */
    static double drying(double water_mm, double wp_mm, double fc_mm, double ready) {
        double tew = 1.5 * (fc_mm - wp_mm);
        double de = 1.5 * (fc_mm - water_mm);
        double rew = ready * tew;
        double r = Lanes.clamp((tew - de) / (tew - rew), 0, 1);
        return r * r * r;
    }

    void step() {
        double[] supply = t.scratch;
        double[] energy = t.scratch2;
        double[] shaded = t.scratch3;
        java.util.Arrays.fill(supply, 0);
        demand(energy, shaded);
        evaporate(0, energy, shaded);
        evaporate(1, energy, shaded);
        for (int c = 0; c < 2; c++) {
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                offer(c, i, supply);
            }
        }
        transpire(supply);
    }

    /** Evaporation allowed by energy: ET0 times Kcmax - Kcb, and times the open share. */
    private void demand(double[] energy, double[] open) {
        double kcMax = site.of(Parameter.KC_MAX);
        double full = site.of(Parameter.KCB_FULL);
        double extinction = site.of(Parameter.KCB_EXTINCTION);
        double cut = site.of(Parameter.EVAPORATION_RESIDUE);
        for (int m = 0; m < s.members; m++) {
            double lai = s.lai[m];
            double kcb = s.emergenceDay[m] >= 0 && lai > 0 ? basal(lai, full, extinction) : 0;
            double rep = s.rep[m];
            double et0 = t.et0[m] * (1 - cut * s.soilCover[m]);
            energy[m] = et0 * (kcMax - kcb);
            open[m] = et0 * (1 - cover(kcb, kcMax, lai)) * kcMax;
            t.transpirable[m] = Math.max(0, kcb * t.et0[m] - t.wetLeaves[m]) * (1 - 0.5 * rep * rep * rep);
        }
    }

    private void evaporate(int c, double[] energy, double[] open) {
        double[] top = s.water[c * SeasonState.LAYERS];
        double[] second = s.water[c * SeasonState.LAYERS + 1];
        double[] wp1 = site.wp[0];
        double[] fc1 = site.fc[0];
        double[] wp2 = site.wp[1];
        double[] lost = s.ledger[Ledger.EVAPORATION.ordinal()];
        double ready = site.of(Parameter.EVAPORATION_READY);
        double share = site.share[c];
        for (int m = 0; m < top.length; m++) {
            double e = Math.min(drying(top[m], wp1[m], fc1[m], ready) * energy[m], open[m]);
            double e1 = Math.max(0, Math.min(2 * e / 3, top[m] - wp1[m]));
            double e2 = Math.max(0, Math.min(e / 3, second[m] - 0.8 * wp2[m]));
            top[m] -= e1;
            second[m] -= e2;
            lost[m] += share * (e1 + e2);
        }
    }

    private void offer(int c, int i, double[] supply) {
        int k = c * SeasonState.LAYERS + i;
        double[] water = s.water[k];
        double[] wp = site.wp[i];
        double[] roots = t.roots[k];
        double[] drawn = t.drawn[k];
        double rate = site.of(Parameter.WATER_UPTAKE);
        double share = site.share[c];
        for (int m = 0; m < supply.length; m++) {
            double x = rate * roots[m] * Math.max(0, water[m] - wp[m]);
            drawn[m] = x;
            supply[m] += share * x;
        }
    }

    private void transpire(double[] supply) {
        double[] part = t.scratch2;
        double[] given = s.ledger[Ledger.TRANSPIRATION.ordinal()];
        for (int m = 0; m < supply.length; m++) {
            double pot = t.transpirable[m];
            double use = Math.min(pot, supply[m]);
            given[m] += use;
            part[m] = use / Math.max(1e-300, supply[m]);
            s.waterFactor[m] = pot > 0 ? Math.min(1, supply[m] / pot) : 1;
        }
        for (int k = 0; k < SeasonState.CELLS; k++) {
            double[] water = s.water[k];
            double[] drawn = t.drawn[k];
            for (int m = 0; m < part.length; m++) {
                double x = drawn[m] * part[m];
                drawn[m] = x;
                water[m] -= x;
            }
        }
    }
}
