// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;
import org.earleaf.season.parameter.Parameter;

/**
 * Decay of last crop's residue, and the nitrogen that its microbes take or give.
 *
 * <pre>
 * dC   = C k Q10(2) wR,  k = 0.012 on the surface, 0.030 buried;  wR = clamp((th1 - WP)/(FC - WP), .05, 1)
 * need = dC (0.40/8.5 - N/C)
 * need > 0: take = min(need, reach);  dC *= 0.35 + 0.65 take/need;  microbes += dC N/C + take
 * need <= 0: microbes += dC 0.40/8.5, the rest to ammonium;  microbes release 0.008 Q10(2) wR a day
 * reach = 0.2 contact of surface ammonium and nitrate + 0.05 of mineral nitrogen in layer 1 (1 and 2 when buried)
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
        Columns.spread(s.buried, within);
        pace(s.water, site.wp, site.perRange, t.entered, t.warmth2, pace);
        decay(within);
        reach(s.nitrate, s.ammonium, site.residueReach, within);
        reachFurther(anyBuried);
        take();
        keep(within, site.residueReach, s.nitrate, s.ammonium, s.guarded);
        keepFurther(anyBuried);
        give(site.of(Parameter.MICROBE_TURNOVER));
        settle(decayed, ratio, given, s.residueC, s.residueN, s.ammonium);
        Columns.book(taken, 0, site.share, t.member[0], s.ledger[Ledger.RESIDUE_TAKEN.ordinal()]);
        Columns.book(given, 0, site.share, t.member[0], s.ledger[Ledger.RESIDUE_RELEASED.ordinal()]);
    }

    /** Warmth times moisture of the top layer. */
    private static void pace(
            double[] water, double[] wp, double[] perRange, double[] entered, double[] warm, double[] pace) {
        for (int j = 0; j < pace.length; j++) {
            double moist = Lanes.clamp((water[j] - wp[j]) * perRange[j], .05, 1);
            pace[j] = warm[j] * Math.max(moist, .6 * Lanes.isPositive(entered[j]));
        }
    }

    private void decay(double[] buried) {
        double k = site.of(Parameter.RESIDUE_DECAY);
        double moreBuried = site.of(Parameter.RESIDUE_DECAY_BURIED) - k;
        double[] carbon = s.residueC;
        double[] nitrogen = s.residueN;
        for (int j = 0; j < decayed.length; j++) {
            decayed[j] = carbon[j] * Math.min(1, (k + moreBuried * buried[j]) * pace[j]);
            ratio[j] = nitrogen[j] / (carbon[j] + 1e-300);
        }
    }

    private static void reach(double[] nitrate, double[] ammonium, double[] share, double[] within) {
        for (int j = 0; j < within.length; j++) {
            within[j] = share[j] * (nitrate[j] + ammonium[j]);
        }
    }

    /** Into the second layer where residue is buried, and into what lies on the surface. */
    private void reachFurther(boolean anyBuried) {
        int n = s.members;
        for (int j = 0; anyBuried && j < within.length; j++) {
            int second = within.length + j;
            within[j] += s.buried[j % n] * site.residueReach[j] * (s.nitrate[second] + s.ammonium[second]);
        }
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < s.pools.length; p++) {
            SurfacePool pool = s.pools[p];
            int top = s.at(p / SeasonState.POOLS, 0);
            for (int m = 0; pool.used && m < n; m++) {
                within[top + m] += surface * pool.contact[m] * (pool.ammonium[m] + pool.nitrate[m] + pool.alkaline[m]);
            }
        }
    }

    /** Where less is within reach than is wanted, decay slows; the same share is taken of all within reach. */
    private void take() {
        double use = site.of(Parameter.CARBON_USE);
        double microbeCn = site.of(Parameter.MICROBE_CN);
        for (int j = 0; j < taken.length; j++) {
            need[j] = need(decayed[j], ratio[j], use, microbeCn);
            double wanted = Lanes.positive(need[j]);
            taken[j] = Math.min(wanted, within[j]);
            decayed[j] *= 1 - 0.65 * (wanted - taken[j]) / (wanted + 1e-300);
            within[j] = taken[j] / (within[j] + 1e-300);
        }
    }

    private static void keep(double[] share, double[] reach, double[] nitrate, double[] ammonium, double[] guarded) {
        for (int j = 0; j < share.length; j++) {
            double keep = 1 - share[j] * reach[j];
            nitrate[j] *= keep;
            ammonium[j] *= keep;
            guarded[j] *= keep;
        }
    }

    private void keepFurther(boolean anyBuried) {
        int n = s.members;
        for (int j = 0; anyBuried && j < within.length; j++) {
            double keep = 1 - within[j] * site.residueReach[j] * s.buried[j % n];
            int second = within.length + j;
            s.nitrate[second] *= keep;
            s.ammonium[second] *= keep;
            s.guarded[second] *= keep;
        }
        double surface = site.of(Parameter.RESIDUE_REACH_SURFACE);
        for (int p = 0; p < s.pools.length; p++) {
            SurfacePool pool = s.pools[p];
            int top = s.at(p / SeasonState.POOLS, 0);
            for (int m = 0; pool.used && m < n; m++) {
                double keep = 1 - within[top + m] * surface * pool.contact[m];
                pool.ammonium[m] *= keep;
                pool.nitrate[m] *= keep;
                pool.alkaline[m] *= keep;
            }
        }
    }

    /** Microbes keep what they need; the rest of it, and a little of what they held, becomes ammonium. */
    private void give(double turnover) {
        double[] microbes = s.microbes;
        for (int j = 0; j < given.length; j++) {
            double spare = Lanes.positive(-need[j]);
            double held = microbes[j] + decayed[j] * ratio[j] + taken[j] - spare;
            double released = held * turnover * pace[j];
            microbes[j] = held - released;
            given[j] = spare + released;
        }
    }

    private static void settle(
            double[] decayed, double[] ratio, double[] given, double[] carbon, double[] nitrogen, double[] ammonium) {
        for (int j = 0; j < given.length; j++) {
            carbon[j] -= decayed[j];
            nitrogen[j] -= decayed[j] * ratio[j];
            ammonium[j] += given[j];
        }
    }
}
