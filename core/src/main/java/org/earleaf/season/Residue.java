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

    /** All members and both columns at once; the pools of the surface are few and looked after one by one. */
    void step() {
        double[] pace = t.column[0];
        double[] decayed = t.column[1];
        double[] need = t.column[2];
        double[] taken = t.column[3];
        double[] reach = t.residue[0];
        double[] buried = t.residue[1];
        double[] share = t.residue[2];
        twice(s.buried, buried);
        twice(site.lane(Parameter.RESIDUE_REACH), share);
        paces(s.water, site.wp, site.perRange, t.entered, t.warmth2, pace);
        double surface = site.of(Parameter.RESIDUE_DECAY);
        decays(s.residueC, pace, buried, surface, site.of(Parameter.RESIDUE_DECAY_BURIED) - surface, decayed);
        needs(decayed, s.residueN, s.residueC, site.of(Parameter.CARBON_USE), site.of(Parameter.MICROBE_CN), need);
        reaches(s.nitrate, s.ammonium, share, buried, reach);
        surfaceReach(reach);
        takes(need, reach, taken);
        slow(need, taken, decayed);
        shares(taken, reach, t.residue[3]);
        Lane.times(share, t.residue[3], share);
        takeAway(t.residue[3], share, buried);
        settle(decayed, need, taken);
        release(pace);
    }

    /** Both columns of a member alike. */
    private void twice(double[] members, double[] columns) {
        System.arraycopy(members, 0, columns, 0, s.members);
        System.arraycopy(members, 0, columns, s.members, s.members);
    }

    private static void paces(
            double[] water, double[] wp, double[] perRange, double[] entered, double[] warm, double[] out) {
        for (int j = 0; j < out.length; j++) {
            double moist = Lanes.clamp((water[j] - wp[j]) * perRange[j], .05, 1);
            out[j] = warm[j] * Math.max(moist, .6 * Lanes.isPositive(entered[j]));
        }
    }

    private static void decays(
            double[] carbon, double[] pace, double[] buried, double surface, double more, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = carbon[j] * Math.min(1, (surface + more * buried[j]) * pace[j]);
        }
    }

    private static void needs(
            double[] decayed, double[] nitrogen, double[] carbon, double use, double microbeCn, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = need(decayed[j], nitrogen[j] / Math.max(1e-300, carbon[j]), use, microbeCn);
        }
    }

    /** Mineral nitrogen of layer 1 within reach, of layer 2 as well where residue is buried. */
    private static void reaches(double[] nitrate, double[] ammonium, double[] share, double[] buried, double[] out) {
        int second = out.length;
        for (int j = 0; j < second; j++) {
            double below = buried[j] * (nitrate[second + j] + ammonium[second + j]);
            out[j] = share[j] * (nitrate[j] + ammonium[j] + below);
        }
    }

    private void surfaceReach(double[] reach) {
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < s.pools.length; p++) {
            SurfacePool pool = s.pools[p];
            int at = p / SeasonState.POOLS * s.members;
            for (int m = 0; pool.used && m < s.members; m++) {
                double lying = pool.ammonium[m] + pool.nitrate[m] + pool.alkaline[m];
                reach[at + m] += surface * pool.contact[m] * lying;
            }
        }
    }

    private static void takes(double[] need, double[] reach, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = Math.min(Math.max(0, need[j]), reach[j]);
        }
    }

    /** Decay goes slower where less is to be had than it needs. */
    private static void slow(double[] need, double[] taken, double[] decayed) {
        for (int j = 0; j < decayed.length; j++) {
            double unmet = Lanes.isPositive(need[j]) * (1 - taken[j] / Math.max(1e-300, Math.abs(need[j])));
            decayed[j] *= 1 - .65 * unmet;
        }
    }

    private static void shares(double[] taken, double[] reach, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = taken[j] / Math.max(1e-300, reach[j]);
        }
    }

    /**
     * Takes the same share of everything within reach.
     *
     * @param share of what is within reach
     * @param ofSoil of the mineral nitrogen of a layer within reach
     */
    private void takeAway(double[] share, double[] ofSoil, double[] buried) {
        int second = share.length;
        keep(s.nitrate, 0, ofSoil);
        keep(s.ammonium, 0, ofSoil);
        keep(s.guarded, 0, ofSoil);
        Lane.times(ofSoil, buried, ofSoil);
        keep(s.nitrate, second, ofSoil);
        keep(s.ammonium, second, ofSoil);
        keep(s.guarded, second, ofSoil);
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < s.pools.length; p++) {
            SurfacePool pool = s.pools[p];
            int at = p / SeasonState.POOLS * s.members;
            for (int m = 0; pool.used && m < s.members; m++) {
                double keep = 1 - share[at + m] * surface * pool.contact[m];
                pool.ammonium[m] *= keep;
                pool.nitrate[m] *= keep;
                pool.alkaline[m] *= keep;
            }
        }
    }

    private static void keep(double[] pool, int at, double[] share) {
        for (int j = 0; j < share.length; j++) {
            pool[at + j] *= 1 - share[j];
        }
    }

    /** What decays goes to microbes with what they took, less what they give back at once. */
    private void settle(double[] decayed, double[] need, double[] taken) {
        double[] nitrogen = t.residue[0];
        double[] given = t.residue[1];
        ofCarbon(decayed, s.residueN, s.residueC, nitrogen);
        for (int j = 0; j < given.length; j++) {
            given[j] = Math.max(0, -need[j]);
        }
        Lane.subtract(s.residueC, decayed);
        Lane.subtract(s.residueN, nitrogen);
        Lane.add(s.microbes, nitrogen);
        Lane.add(s.microbes, taken);
        Lane.subtract(s.microbes, given);
        Lane.add(s.ammonium, 0, given);
        Lane.addColumns(s.ledger[Ledger.RESIDUE_TAKEN.ordinal()], taken, 0, site.share);
        Lane.addColumns(s.ledger[Ledger.RESIDUE_RELEASED.ordinal()], given, 0, site.share);
    }

    private static void ofCarbon(double[] decayed, double[] nitrogen, double[] carbon, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = decayed[j] * nitrogen[j] / Math.max(1e-300, carbon[j]);
        }
    }

    private void release(double[] pace) {
        double rate = site.of(Parameter.MICROBE_TURNOVER);
        double[] released = t.residue[0];
        for (int j = 0; j < released.length; j++) {
            released[j] = s.microbes[j] * rate * pace[j];
        }
        Lane.subtract(s.microbes, released);
        Lane.add(s.ammonium, 0, released);
        Lane.addColumns(s.ledger[Ledger.RESIDUE_RELEASED.ordinal()], released, 0, site.share);
    }
}
