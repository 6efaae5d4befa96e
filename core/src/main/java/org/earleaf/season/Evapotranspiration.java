// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.Parameter;

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
    /** Share shaded before there is a crop. */
    private static final double BARE_COVER = 0.01;
    /** More leaf area than there ever is. */
    private static final double LAI_TOP = 20;

    private static final double HEIGHT_AT_TOP_M = 2.7 * Math.pow(LAI_TOP / 5, 0.7);

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
        return kcb <= KCB_BARE ? BARE_COVER : 1 - open(Lanes.ln(lit(kcb, kcMax)), height_m(lnLai(lai)));
    }

    private static double lit(double kcb, double kcMax) {
        return Lanes.clamp((kcb - KCB_BARE) * (1 / (kcMax - KCB_BARE)), BARE_COVER, 0.99);
    }

    /** Logarithm of the share that LAI is of the largest there can be. */
    private static double lnLai(double lai) {
        return Lanes.ln(Math.max(1e-9, lai * (1 / LAI_TOP)));
    }

    private static double height_m(double lnLai) {
        return HEIGHT_AT_TOP_M * (1 - Lanes.lost(-0.7 * lnLai));
    }

    /** Share of ground not shaded, from the logarithm of what is lit by the leaf area alone. */
    private static double open(double lnLit, double height_m) {
        return Lanes.lost(-lnLit * (1 + 0.5 * height_m));
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
        demand();
        evaporate();
        if (t.anyUp) {
            transpire();
        }
    }

    /** Evaporation allowed by energy, ET0 times Kcmax - Kcb, and by the open share; and what leaves may transpire. */
    private void demand() {
        double kcMax = site.of(Parameter.KC_MAX);
        double[] kcb = t.member[0];
        double[] open = t.member[1];
        double[] energy = t.member[2];
        if (t.anyUp) {
            double[] lnLit = t.member[4];
            double[] lnLai = t.member[5];
            basal(s.lai, site.of(Parameter.KCB_FULL), site.of(Parameter.KCB_EXTINCTION), kcb);
            logarithms(kcb, kcMax, s.lai, lnLit, lnLai);
            heights(lnLai, open);
            open(lnLit, s.lai, open);
        } else {
            Arrays.fill(kcb, 0);
            Arrays.fill(open, 1 - BARE_COVER);
        }
        allowed(kcb, kcMax, energy, open);
        Columns.spread(energy, t.column[0]);
        Columns.spread(open, t.column[1]);
        transpirable(kcb, t.et0, t.wetLeaves, s.rep, t.transpirable);
    }

    private static void basal(double[] lai, double full, double extinction, double[] kcb) {
        for (int m = 0; m < kcb.length; m++) {
            kcb[m] = Lanes.isPositive(lai[m]) * basal(lai[m], full, extinction);
        }
    }

    private static void logarithms(double[] kcb, double kcMax, double[] lai, double[] lnLit, double[] lnLai) {
        for (int m = 0; m < lnLit.length; m++) {
            lnLit[m] = Lanes.ln(lit(kcb[m], kcMax));
            lnLai[m] = lnLai(lai[m]);
        }
    }

    private static void heights(double[] lnLai, double[] height_m) {
        for (int m = 0; m < height_m.length; m++) {
            height_m[m] = height_m(lnLai[m]);
        }
    }

    /** From the heights; the open shares take their place. */
    private static void open(double[] lnLit, double[] lai, double[] open) {
        for (int m = 0; m < open.length; m++) {
            double bare = 1 - BARE_COVER;
            open[m] = bare + Lanes.isPositive(lai[m]) * (open(lnLit[m], open[m]) - bare);
        }
    }

    private void allowed(double[] kcb, double kcMax, double[] energy, double[] open) {
        double cut = site.of(Parameter.EVAPORATION_RESIDUE);
        double[] et0 = t.et0;
        double[] residue = s.soilCover;
        for (int m = 0; m < energy.length; m++) {
            double bare = et0[m] * (1 - cut * residue[m]);
            energy[m] = bare * (kcMax - kcb[m]);
            open[m] *= bare * kcMax;
        }
    }

    private static void transpirable(double[] kcb, double[] et0, double[] wetLeaves, double[] rep, double[] out) {
        for (int m = 0; m < out.length; m++) {
            out[m] = Lanes.positive(kcb[m] * et0[m] - wetLeaves[m]) * (1 - 0.5 * rep[m] * rep[m] * rep[m]);
        }
    }

    /** Two thirds from layer 1, one from layer 2. */
    private void evaporate() {
        double[] e = t.column[2];
        double[] second = t.cell[0];
        dry(t.column[0], t.column[1], e);
        int layer = e.length;
        System.arraycopy(e, 0, second, layer, layer);
        out(e, 2.0 / 3, 1, 0, layer);
        out(second, 1.0 / 3, 0.8, layer, 2 * layer);
        double[] lost = s.ledger[Ledger.EVAPORATION.ordinal()];
        Columns.book(e, 0, site.share, t.member[0], lost);
        Columns.book(second, layer, site.share, t.member[0], lost);
    }

    private void dry(double[] energy, double[] open, double[] out) {
        double perUnready = 1 / (1 - site.of(Parameter.EVAPORATION_READY));
        double[] water = s.water;
        double[] fc = site.fc;
        double[] perRange = site.perRange;
        for (int n = 0; n < out.length; n++) {
            out[n] = Math.min(drier(water[n], fc[n], perRange[n], perUnready) * energy[n], open[n]);
        }
    }

    /** A part of the evaporation, down to a share of the wilting point. */
    private void out(double[] e, double part, double share, int at, int end) {
        double[] water = s.water;
        double[] wp = site.wp;
        for (int n = at; n < end; n++) {
            e[n] = Lanes.positive(Math.min(part * e[n], water[n] - share * wp[n]));
            water[n] -= e[n];
        }
    }

    private void transpire() {
        double[] supply = t.member[0];
        double[] part = t.member[1];
        offer(s.water, site.wp, t.roots, site.of(Parameter.WATER_UPTAKE), t.drawn);
        Columns.sum(t.drawn, SeasonState.LAYERS, site.share, part, supply);
        use(t.transpirable, supply, s.ledger[Ledger.TRANSPIRATION.ordinal()], part, s.waterFactor);
        double[] taken = t.cell[0];
        Columns.spread(part, taken);
        draw(taken, t.drawn, s.water);
    }

    private static void offer(double[] water, double[] wp, double[] roots, double rate, double[] offered) {
        for (int n = 0; n < offered.length; n++) {
            offered[n] = rate * roots[n] * Lanes.positive(water[n] - wp[n]);
        }
    }

    private static void use(double[] pot, double[] supply, double[] given, double[] part, double[] factor) {
        for (int m = 0; m < part.length; m++) {
            double use = Math.min(pot[m], supply[m]);
            given[m] += use;
            part[m] = use / (supply[m] + 1e-300);
            factor[m] = Math.min(1, (supply[m] + 1e-300) / (pot[m] + 1e-300));
        }
    }

    private static void draw(double[] taken, double[] drawn, double[] water) {
        for (int n = 0; n < drawn.length; n++) {
            drawn[n] *= taken[n];
            water[n] -= drawn[n];
        }
    }
}
