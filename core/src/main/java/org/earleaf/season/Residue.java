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

    Residue(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    /** Nitrogen that decaying carbon wants [kg]; below 0 it gives. */
    static double need(double decayed, double nitrogenPerCarbon, double use, double microbeCn) {
        return decayed * (use / microbeCn - nitrogenPerCarbon);
    }

    void step() {
        for (int c = 0; c < 2; c++) {
            for (int m = 0; m < s.members; m++) {
                decay(c, m);
            }
        }
    }

    private void decay(int c, int m) {
        int top = s.at(c, 0) + m;
        int column = c * s.members + m;
        double moist = Lanes.clamp((s.water[top] - site.wp[top]) * site.perRange[top], .05, 1);
        moist = t.entered[column] > 0 ? Math.max(.6, moist) : moist;
        double pace = t.warmth2[top] * moist;
        double carbon = s.residueC[column];
        if (carbon > 1e-9) {
            boolean buried = s.buried[m] > 0;
            double k = site.of(buried ? Parameter.RESIDUE_DECAY_BURIED : Parameter.RESIDUE_DECAY);
            work(c, m, carbon * Math.min(1, k * pace), s.residueN[column] / carbon, buried);
        }
        double released = s.microbes[column] * site.of(Parameter.MICROBE_TURNOVER) * pace;
        s.microbes[column] -= released;
        s.ammonium[top] += released;
        s.ledger[Ledger.RESIDUE_RELEASED.ordinal()][m] += site.share[c] * released;
    }

    private void work(int c, int m, double decayed, double ratio, boolean buried) {
        int top = s.at(c, 0) + m;
        int column = c * s.members + m;
        double use = site.of(Parameter.CARBON_USE);
        double cn = site.of(Parameter.MICROBE_CN);
        double need = need(decayed, ratio, use, cn);
        if (need <= 0) {
            s.microbes[column] += decayed * use / cn;
            s.ammonium[top] += -need;
            s.ledger[Ledger.RESIDUE_RELEASED.ordinal()][m] += site.share[c] * -need;
            settle(c, m, decayed, ratio);
            return;
        }
        double reach = reach(c, m, buried);
        double taken = Math.min(need, reach);
        takeShare(c, m, buried, reach > 0 ? taken / reach : 0);
        double slowed = decayed * (0.35 + 0.65 * taken / need);
        s.microbes[column] += slowed * ratio + taken;
        s.ledger[Ledger.RESIDUE_TAKEN.ordinal()][m] += site.share[c] * taken;
        settle(c, m, slowed, ratio);
    }

    private void settle(int c, int m, double decayed, double ratio) {
        int column = c * s.members + m;
        s.residueC[column] -= decayed;
        s.residueN[column] -= decayed * ratio;
    }

    private double reachOfSoil(int m) {
        return site.lane(Parameter.RESIDUE_REACH)[m];
    }

    private double reach(int c, int m, boolean buried) {
        int top = s.at(c, 0) + m;
        int second = s.at(c, 1) + m;
        double sum = reachOfSoil(m) * (s.nitrate[top] + s.ammonium[top]);
        if (buried) {
            sum += reachOfSoil(m) * (s.nitrate[second] + s.ammonium[second]);
        }
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            if (pool.used) {
                sum += surface * pool.contact[m] * (pool.ammonium[m] + pool.nitrate[m] + pool.alkaline[m]);
            }
        }
        return sum;
    }

    /** Takes the same share of everything within reach. */
    private void takeShare(int c, int m, boolean buried, double share) {
        double keep = 1 - share * reachOfSoil(m);
        for (int i = 0; i <= (buried ? 1 : 0); i++) {
            int cell = s.at(c, i) + m;
            s.nitrate[cell] *= keep;
            s.ammonium[cell] *= keep;
            s.guarded[cell] *= keep;
        }
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < SeasonState.POOLS; p++) {
            SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
            if (pool.used) {
                double keepPool = 1 - share * surface * pool.contact[m];
                pool.ammonium[m] *= keepPool;
                pool.nitrate[m] *= keepPool;
                pool.alkaline[m] *= keepPool;
            }
        }
    }
}
