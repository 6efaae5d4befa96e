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
    /** More leaf area than there ever is. */
    private static final double LAI_TOP = 20;

    private static final double HEIGHT_AT_TOP = Math.pow(LAI_TOP / 5, 0.7);

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    Evapotranspiration(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double basal(double lai, double full, double extinction) {
        return KCB_BARE + (full - KCB_BARE) * Lanes.lost(extinction * lai);
    }

    /** Share of ground shaded. */
    static double cover(double kcb, double kcMax, double lai) {
        return kcb <= KCB_BARE
                ? 0.01
                : 1 - Lanes.lost(-Math.log(lit(kcb, kcMax)) * (1 + 0.5 * height_m(Math.log(lai / LAI_TOP))));
    }

    private static double lit(double kcb, double kcMax) {
        return Lanes.clamp((kcb - KCB_BARE) / (kcMax - KCB_BARE), 0.01, 0.99);
    }

    /** 2.7 (LAI/5)^0.7, from the logarithm of LAI against the largest there can be. */
    private static double height_m(double lnLai) {
        return 2.7 * HEIGHT_AT_TOP * (1 - Lanes.lost(-0.7 * lnLai));
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
        demand(energy, open);
        for (int c = 0; c < 2; c++) {
            evaporate(c, energy, open);
        }
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
        double[] kcb = t.member[2];
        double[] lai = s.lai;
        double[] rep = s.rep;
        double[] et0 = t.et0;
        for (int m = 0; m < kcb.length; m++) {
            kcb[m] = Lanes.isPositive(lai[m]) * basal(lai[m], full, extinction);
        }
        for (int m = 0; m < open.length; m++) {
            open[m] = 1 - cover(kcb[m], kcMax, lai[m]);
        }
        for (int m = 0; m < kcb.length; m++) {
            double bare = et0[m] * (1 - cut * s.soilCover[m]);
            energy[m] = bare * (kcMax - kcb[m]);
            open[m] = bare * open[m] * kcMax;
            t.transpirable[m] = Lanes.positive(kcb[m] * et0[m] - t.wetLeaves[m]) * (1 - 0.5 * rep[m] * rep[m] * rep[m]);
        }
    }

    /** What leaves layers 1 and 2 of a column. */
    private void evaporate(int c, double[] energy, double[] open) {
        double perUnready = 1 / (1 - site.of(Parameter.EVAPORATION_READY));
        double[] water = s.water;
        double[] wp = site.wp;
        double[] fc = site.fc;
        double[] perRange = site.perRange;
        double[] lost = s.ledger[Ledger.EVAPORATION.ordinal()];
        double share = site.share[c];
        int top = s.at(c, 0);
        int two = s.at(c, 1);
        for (int m = 0; m < energy.length; m++) {
            double e = drier(water[top + m], fc[top + m], perRange[top + m], perUnready) * energy[m];
            e = Math.min(e, open[m]);
            double first = Math.max(0, Math.min(2 * e / 3, water[top + m] - wp[top + m]));
            double second = Math.max(0, Math.min(e / 3, water[two + m] - 0.8 * wp[two + m]));
            water[top + m] -= first;
            water[two + m] -= second;
            lost[m] += share * (first + second);
        }
    }

    private void transpire() {
        double rate = site.of(Parameter.WATER_UPTAKE);
        double[] water = s.water;
        double[] wp = site.wp;
        double[] roots = t.roots;
        double[] drawn = t.drawn;
        for (int n = 0; n < drawn.length; n++) {
            drawn[n] = rate * roots[n] * Lanes.positive(water[n] - wp[n]);
        }
        double[] supply = t.member[0];
        double[] part = t.member[1];
        Columns.sum(drawn, site.share, supply);
        double[] given = s.ledger[Ledger.TRANSPIRATION.ordinal()];
        double[] factor = s.waterFactor;
        double[] pot = t.transpirable;
        for (int m = 0; m < supply.length; m++) {
            double use = Math.min(pot[m], supply[m]);
            given[m] += use;
            part[m] = use / (supply[m] + 1e-300);
            factor[m] = Math.min(1, (supply[m] + 1e-300) / (pot[m] + 1e-300));
        }
        double[] taken = t.cell[0];
        Columns.spread(part, taken);
        for (int n = 0; n < drawn.length; n++) {
            drawn[n] *= taken[n];
            water[n] -= drawn[n];
        }
    }
}
