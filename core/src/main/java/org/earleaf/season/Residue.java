// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;

/**
 * Decay of last crop's residue, and the nitrogen that its microbes take or give.
 *
 * <pre>
 * dC   = C k Q10(2) wR,  k = 0.012 on the surface, 0.030 buried;  wR = clamp((th1 - WP)/(FC - WP), .05, 1)
 * need = dC (0.40/8.5 - N/C)
 * need > 0: take = min(need, reach);  dC *= 0.35 + 0.65 take/need;  microbes += dC N/C + take
 * need <= 0: microbes += dC 0.40/8.5, the rest to ammonium;  microbes release 0.008 Q10(2) wR a day
 * reach = 0.2 contact of surface ammonium and nitrate + 0.10 of mineral nitrogen in layer 1 (1 and 2 when buried)
 *
 * C, N   carbon and nitrogen of the residue      [kg/ha of column]
 * wR     at least .6 on wetting days
 * Source own construct; carbon-use efficiency .40 and microbial C:N 8.5 from memory; size: Parker 1962, SSSA Proc.
 *        26:559 (12 lb N per 3 tons of stover net).
 * Check  ResidueTest
 * </pre>
 */
final class Residue {
    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;
    // by column, of the day; work space
    private final double[] pace;
    private final double[] decayed;
    private final double[] ratio;
    private final double[] need;
    /** Within reach, and then the share of it that is taken. */
    private final double[] within;

    private final double[] taken;
    private final double[] given;

    Residue(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
        pace = t.column[0];
        decayed = t.column[1];
        ratio = t.column[2];
        need = t.column[3];
        within = t.column[4];
        taken = t.column[5];
        given = t.column[6];
    }

    /** Nitrogen that decaying carbon wants [kg]; below 0 it gives. */
    static double need(double decayed, double nitrogenPerCarbon, double use, double microbeCn) {
        return decayed * (use / microbeCn - nitrogenPerCarbon);
    }

    void step() {
        boolean anyBuried = Columns.anyPositive(s.buried);
        for (int c = 0; c < 2; c++) {
            decay(s.at(c, 0));
            reach(c, anyBuried);
            take(s.at(c, 0));
            keep(c, anyBuried);
            settle(s.at(c, 0));
        }
        Columns.book(taken, site.share, s.ledger[Ledger.RESIDUE_TAKEN.ordinal()]);
        Columns.book(given, site.share, s.ledger[Ledger.RESIDUE_RELEASED.ordinal()]);
    }

    /** What would decay with nitrogen enough, and what nitrogen that wants. */
    private void decay(int top) {
        double surface = site.of(Parameter.RESIDUE_DECAY);
        double below = site.of(Parameter.RESIDUE_DECAY_BURIED);
        double use = site.of(Parameter.CARBON_USE);
        double cn = site.of(Parameter.MICROBE_CN);
        double[] water = s.water;
        double[] wp = site.wp;
        double[] perRange = site.perRange;
        double[] entered = t.entered;
        double[] warm = t.warmth2;
        double[] carbon = s.residueC;
        double[] nitrogen = s.residueN;
        double[] buried = within;
        int end = top + s.members;
        System.arraycopy(s.buried, 0, buried, top, s.members);
        for (int n = top; n < end; n++) {
            double moist = Lanes.clamp((water[n] - wp[n]) * perRange[n], .05, 1);
            pace[n] = warm[n] * Math.max(moist, .6 * Lanes.isPositive(entered[n]));
        }
        for (int n = top; n < end; n++) {
            double k = surface + (below - surface) * buried[n];
            decayed[n] = carbon[n] * Math.min(1, k * pace[n]);
            ratio[n] = nitrogen[n] / (carbon[n] + 1e-300);
            need[n] = need(decayed[n], ratio[n], use, cn);
        }
    }

    /** Mineral nitrogen within reach. */
    private void reach(int c, boolean anyBuried) {
        double[] share = site.residueReach;
        double[] nitrate = s.nitrate;
        double[] ammonium = s.ammonium;
        int top = s.at(c, 0);
        for (int n = top; n < top + s.members; n++) {
            within[n] = share[n] * (nitrate[n] + ammonium[n]);
        }
        if (anyBuried) {
            int second = s.at(c, 1);
            for (int m = 0; m < s.members; m++) {
                within[top + m] += s.buried[m] * share[top + m] * (nitrate[second + m] + ammonium[second + m]);
            }
        }
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            for (int m = 0; pool.used && m < s.members; m++) {
                within[top + m] += surface * pool.contact[m] * (pool.ammonium[m] + pool.nitrate[m] + pool.alkaline[m]);
            }
        }
    }

    /** Where less is within reach than is wanted, decay slows. */
    private void take(int top) {
        int end = top + s.members;
        for (int n = top; n < end; n++) {
            double wanted = Lanes.positive(need[n]);
            taken[n] = Math.min(wanted, within[n]);
            decayed[n] *= 1 - 0.65 * (wanted - taken[n]) / (wanted + 1e-300);
        }
        for (int n = top; n < end; n++) {
            within[n] = taken[n] / (within[n] + 1e-300);
        }
    }

    /** The same share is taken of everything within reach. */
    private void keep(int c, boolean anyBuried) {
        double[] share = site.residueReach;
        double[] nitrate = s.nitrate;
        double[] ammonium = s.ammonium;
        double[] guarded = s.guarded;
        int top = s.at(c, 0);
        for (int n = top; n < top + s.members; n++) {
            double keep = 1 - within[n] * share[n];
            nitrate[n] *= keep;
            ammonium[n] *= keep;
            guarded[n] *= keep;
        }
        if (anyBuried) {
            int second = s.at(c, 1);
            for (int m = 0; m < s.members; m++) {
                double keep = 1 - within[top + m] * share[top + m] * s.buried[m];
                nitrate[second + m] *= keep;
                ammonium[second + m] *= keep;
                guarded[second + m] *= keep;
            }
        }
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            for (int m = 0; pool.used && m < s.members; m++) {
                double keep = 1 - within[top + m] * surface * pool.contact[m];
                pool.ammonium[m] *= keep;
                pool.nitrate[m] *= keep;
                pool.alkaline[m] *= keep;
            }
        }
    }

    /** Microbes keep what they need and give the rest as ammonium. */
    private void settle(int top) {
        double turnover = site.of(Parameter.MICROBE_TURNOVER);
        double[] carbon = s.residueC;
        double[] nitrogen = s.residueN;
        double[] microbes = s.microbes;
        double[] ammonium = s.ammonium;
        int end = top + s.members;
        for (int n = top; n < end; n++) {
            double spare = Lanes.positive(-need[n]);
            double held = microbes[n] + decayed[n] * ratio[n] + taken[n] - spare;
            double released = held * turnover * pace[n];
            microbes[n] = held - released;
            given[n] = spare + released;
        }
        for (int n = top; n < end; n++) {
            carbon[n] -= decayed[n];
            nitrogen[n] -= decayed[n] * ratio[n];
            ammonium[n] += given[n];
        }
    }
}
