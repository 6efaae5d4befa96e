// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.SeasonState.SurfacePool;
import org.earleaf.season.parameter.Parameter;

/**
 * Nitrogen lying on the surface: washed in, hydrolysed, lost as ammonia, nitrified.
 *
 * <pre>
 * w    = 1 - exp(-I0/4) of every form moves into layer 1
 * kh   = 0.30 Q10(2) thr sqrt(fb)(1 + 0.3 cover) UI,  UI = 0.10 + 0.90 clamp((age - 7)/14, 0, 1) with inhibitor
 * kdif = 0.08 thr
 * kv   = 0.25 clamp((age + 1)/4, .25, 1) Q10(1.6 at 22) clamp(exp(0.5 (pH - 6.5)), .4, 2.2)
 *        sqrt(clamp(20/CEC, .5, 1.8))(1 + 0.5 cover) fb
 * kf   = 0.33         thr = clamp((th1 - 0.5 WP)/(FC - 0.5 WP), .1, 1), at least .8 when water came in
 *
 * I0     water that entered the column today     [mm]
 * fb     1 spread, 0.75 in a band
 * Source own construct, calibrated to: urea losing 31 % untreated and 14.8 % with inhibitor (Silva et al. 2017, Agron.
 *        J. 109:1), over 30 % after 5 to 7 dry days (Fox, Kern & Piekielek 1986, Agron. J. 78:741).
 * Check  SurfaceNitrogenTest
 * </pre>
 */
final class SurfaceNitrogen {
    private static final double GONE_KGHA = 1e-6;

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    SurfaceNitrogen(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double washedIn(double entered_mm, double scale_mm) {
        return 1 - Math.exp(-entered_mm / scale_mm);
    }

    /** {@code pace} is the rate in this warmth and moisture, {@code held} the share that an inhibitor leaves of it. */
    static double hydrolysis(double pace, double band, double cover, double held) {
        return pace * Math.sqrt(band) * (1 + 0.3 * cover) * held;
    }

    /** Of the pace of hydrolysis under a urease inhibitor, by days since it was laid. */
    static double inhibition(double age) {
        return 0.10 + 0.90 * Lanes.clamp((age - 7) / 14, 0, 1);
    }

    static double volatilisation(double rate, double age, double t_C, double soil, double cover, double band) {
        double onset = Lanes.clamp((age + 1) / 4, .25, 1);
        double warmth = SoilTemperature.q10(t_C, SoilTemperature.LN_16, 22);
        return rate * onset * warmth * soil * (1 + 0.5 * cover) * band;
    }

    /** What pH and exchange capacity of the surface do to the loss of ammonia. */
    static double soilFactor(double ph, double cec) {
        return Lanes.clamp(Math.exp(0.5 * (ph - 6.5)), .4, 2.2) * Math.sqrt(Lanes.clamp(20 / cec, .5, 1.8));
    }

    /** Water of the day carries nitrogen from the surface into layer 1. */
    void wash() {
        if (!t.anyWater) {
            return;
        }
        double scale = site.of(Parameter.WASH_IN);
        for (int c = 0; c < 2; c++) {
            for (int p = 0; p < SeasonState.POOLS; p++) {
                SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
                for (int m = 0; pool.used && m < s.members; m++) {
                    double entered = t.entered[s.at(c, 0) + m];
                    move(pool, s.at(c, 0) + m, m, entered > 0 ? washedIn(entered, scale) : 0);
                }
            }
        }
    }

    private void move(SurfacePool pool, int cell, int m, double w) {
        double a = w * (pool.ammonium[m] + pool.alkaline[m]);
        s.urea[cell] += w * pool.urea[m];
        s.ammonium[cell] += a;
        s.nitrate[cell] += w * pool.nitrate[m];
        if (pool.nitrificationInhibitor[m] > 0) {
            s.guarded[cell] += a;
        }
        pool.urea[m] *= 1 - w;
        pool.alkaline[m] *= 1 - w;
        pool.ammonium[m] *= 1 - w;
        pool.nitrate[m] *= 1 - w;
    }

    void transform() {
        for (int c = 0; c < 2; c++) {
            for (int p = 0; p < SeasonState.POOLS; p++) {
                SurfacePool pool = s.pools[c * SeasonState.POOLS + p];
                if (pool.used) {
                    transform(c, pool);
                }
            }
        }
    }

    private void transform(int c, SurfacePool pool) {
        double soil = soilFactor(
                site.setup.soil().ph().get(0), site.setup.soil().cec_cmolKg().get(0));
        boolean any = false;
        for (int m = 0; m < s.members; m++) {
            double total = pool.urea[m] + pool.alkaline[m] + pool.ammonium[m] + pool.nitrate[m];
            if (total == 0) {
                continue;
            }
            react(c, pool, m, soil);
            pool.age[m] += 1;
            total = pool.urea[m] + pool.alkaline[m] + pool.ammonium[m] + pool.nitrate[m];
            if (total < GONE_KGHA) {
                move(pool, s.at(c, 0) + m, m, 1);
            } else {
                any = true;
            }
        }
        pool.used = any;
    }

    private void react(int c, SurfacePool pool, int m, double soil) {
        int cell = s.at(c, 0) + m;
        double half = 0.5 * site.wp[cell];
        double moist = Lanes.clamp((s.water[cell] - half) / (site.fc[cell] - half), .1, 1);
        moist = t.entered[s.at(c, 0) + m] > 0 ? Math.max(.8, moist) : moist;
        double cover = s.soilCover[m];
        double pace = site.of(Parameter.UREA_SURFACE) * t.warmth2[cell] * moist;
        double held = pool.ureaseInhibitor[m] > 0 ? inhibition(pool.age[m]) : 1;
        double kh = hydrolysis(pace, pool.band[m], cover, held);
        double kdif = site.of(Parameter.UREA_ENTRY) * moist;
        double gone = pool.urea[m] * Lanes.lost(kh + kdif);
        double hydrolysed = gone * kh / Math.max(1e-300, kh + kdif);
        pool.urea[m] -= gone;
        pool.alkaline[m] += hydrolysed;
        s.urea[cell] += gone - hydrolysed;
        double kv = volatilisation(
                site.lane(Parameter.AMMONIA_LOSS)[m], pool.age[m], s.soilTemperature[m], soil, cover, pool.band[m]);
        double kf = s.soilTemperature[m] > 0 ? site.of(Parameter.AMMONIA_FIXED) : 0;
        double left = pool.alkaline[m] * Lanes.lost(kv + kf);
        double lost = left * kv / Math.max(1e-300, kv + kf);
        pool.alkaline[m] -= left;
        s.ammonium[cell] += left - lost;
        s.ledger[Ledger.VOLATILISED.ordinal()][m] += site.share[c] * lost;
        if (pool.nitrificationInhibitor[m] > 0) {
            s.guarded[cell] += left - lost;
        }
        double slowed = pool.nitrificationInhibitor[m] > 0 ? SoilNitrogen.inhibition(s.guardHeat[m]) : 1;
        double nitrified =
                pool.ammonium[m] * Lanes.lost(site.of(Parameter.SURFACE_NITRIFY) * t.warmth22[cell] * moist * slowed);
        pool.ammonium[m] -= nitrified;
        pool.nitrate[m] += nitrified;
    }
}
