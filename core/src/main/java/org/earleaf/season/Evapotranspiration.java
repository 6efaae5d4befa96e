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
        double height = 2.7 * Math.exp(0.7 * Math.log(lai / 5));
        double share = Math.max(0.01, Math.min(0.99, (kcb - KCB_BARE) / (kcMax - KCB_BARE)));
        return Math.exp((1 + 0.5 * height) * Math.log(share));
    }

    /** Evaporation reduction of a drying surface; water of layer 1 in mm. */
    static double drying(double water_mm, double wp_mm, double fc_mm, double ready) {
        return drier(water_mm, fc_mm, 1 / (fc_mm - wp_mm), 1 / (1 - ready));
    }

    /** The same with the reciprocals that never change: of the available range, and of the unready share of it. */
    private static double drier(double water_mm, double fc_mm, double perRange_mm, double perUnready) {
        double r = Lanes.clamp((1 - (fc_mm - water_mm) * perRange_mm) * perUnready, 0, 1);
        return r * r * r;
    }

    void step() {
        double[] energy = t.member[0];
        double[] open = t.member[1];
        double[] first = t.column[0];
        double[] second = t.column[1];
        demand(energy, open);
        evaporable(0, energy, open, first, second);
        evaporable(1, energy, open, first, second);
        evaporate(first, second);
        if (t.anyUp) {
            transpire();
        }
    }

    /** Evaporation allowed by energy: ET0 times Kcmax - Kcb, and times the open share. */
    private void demand(double[] energy, double[] open) {
        double kcMax = site.of(Parameter.KC_MAX);
        double full = site.of(Parameter.KCB_FULL);
        double extinction = site.of(Parameter.KCB_EXTINCTION);
        double cut = site.of(Parameter.EVAPORATION_RESIDUE);
        for (int m = 0; m < s.members; m++) {
            double lai = s.lai[m];
            double kcb = lai > 0 ? basal(lai, full, extinction) : 0;
            double rep = s.rep[m];
            double et0 = t.et0[m] * (1 - cut * s.soilCover[m]);
            energy[m] = et0 * (kcMax - kcb);
            open[m] = et0 * (1 - cover(kcb, kcMax, lai)) * kcMax;
            t.transpirable[m] = Math.max(0, kcb * t.et0[m] - t.wetLeaves[m]) * (1 - 0.5 * rep * rep * rep);
        }
    }

    /** What leaves layers 1 and 2 of a column. */
    private void evaporable(int c, double[] energy, double[] open, double[] first, double[] second) {
        double perUnready = 1 / (1 - site.of(Parameter.EVAPORATION_READY));
        double[] water = s.water;
        double[] wp = site.wp;
        double[] fc = site.fc;
        double[] perRange = site.perRange;
        int at = c * s.members;
        int two = s.at(c, 1);
        for (int m = 0; m < energy.length; m++) {
            double e = drier(water[at + m], fc[at + m], perRange[at + m], perUnready) * energy[m];
            first[at + m] = Math.min(e, open[m]);
        }
        for (int m = 0; m < energy.length; m++) {
            second[at + m] = Math.max(0, Math.min(first[at + m] / 3, water[two + m] - 0.8 * wp[two + m]));
        }
        for (int m = 0; m < energy.length; m++) {
            first[at + m] = Math.max(0, Math.min(2 * first[at + m] / 3, water[at + m] - wp[at + m]));
        }
    }

    private void evaporate(double[] first, double[] second) {
        double[] water = s.water;
        int layer = first.length;
        for (int j = 0; j < layer; j++) {
            water[j] -= first[j];
        }
        for (int j = 0; j < layer; j++) {
            water[layer + j] -= second[j];
        }
        double[] lost = s.ledger[Ledger.EVAPORATION.ordinal()];
        double fR = site.share[0];
        double fM = site.share[1];
        int n = s.members;
        for (int m = 0; m < n; m++) {
            lost[m] += fR * (first[m] + second[m]) + fM * (first[n + m] + second[n + m]);
        }
    }

    private void transpire() {
        double rate = site.of(Parameter.WATER_UPTAKE);
        double[] water = s.water;
        double[] wp = site.wp;
        double[] roots = t.roots;
        double[] drawn = t.drawn;
        for (int n = 0; n < drawn.length; n++) {
            drawn[n] = rate * roots[n] * Math.max(0, water[n] - wp[n]);
        }
        double[] supply = t.member[0];
        double[] part = t.member[1];
        Columns.sum(drawn, site.share, supply);
        double[] given = s.ledger[Ledger.TRANSPIRATION.ordinal()];
        for (int m = 0; m < supply.length; m++) {
            double pot = t.transpirable[m];
            double use = Math.min(pot, supply[m]);
            given[m] += use;
            part[m] = use / Math.max(1e-300, supply[m]);
            s.waterFactor[m] = pot > 0 ? Math.min(1, supply[m] / pot) : 1;
        }
        for (int at = 0; at < drawn.length; at += part.length) {
            Columns.scale(drawn, part, at);
        }
        for (int n = 0; n < drawn.length; n++) {
            water[n] -= drawn[n];
        }
    }
}
