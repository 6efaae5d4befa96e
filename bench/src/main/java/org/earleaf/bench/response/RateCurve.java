// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.time.LocalDate;
import org.earleaf.bench.response.Plot.Plan;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Units;

/**
 * What one station-year gave at eight rates, in US units.
 *
 * @param yield bu/ac by rate
 * @param shootN lb/ac by rate
 * @param lost leached and denitrified, lb/ac by rate
 * @param netMineralised gross less taken back, without nitrogen, lb/ac
 * @param juneNitrate nitrate of the top foot on the morning of 1 June, mg/kg by rate
 */
record RateCurve(
        StationYear at, double[] yield, double[] shootN, double[] lost, double netMineralised, double[] juneNitrate) {
    static final double[] RATES_KGHA = {0, 40, 80, 120, 160, 200, 240, 280};
    /** Dollars of a pound of nitrogen over dollars of a bushel. */
    static final double PRICE_RATIO = 0.133;

    static RateCurve of(Ground ground, Before before, StationYear at, Plan plan) {
        int n = RATES_KGHA.length;
        SeasonRun run = Plot.start(ground, before, at, n);
        double[] june = new double[n];
        LocalDate sidedress = Plot.sidedress(at);
        while (run.day() < at.days().days().size()) {
            if (run.date().equals(LocalDate.of(at.year(), 6, 1))) {
                for (int m = 0; m < n; m++) {
                    june[m] = topFoot_ppm(run, m);
                }
            }
            Plot.give(run, at, plan, RATES_KGHA, sidedress);
            run.step();
        }
        double[] yield = new double[n];
        double[] shoot = new double[n];
        double[] lost = new double[n];
        for (int m = 0; m < n; m++) {
            yield[m] = Units.buAc(run.yield(m).grain_kgHa());
            shoot[m] = Units.lbAc(run.shootN_kgHa(m));
            lost[m] = Units.lbAc(run.now(m, Daily.LEACHED) + run.now(m, Daily.DENITRIFIED));
        }
        double net = Units.lbAc(run.now(0, Daily.MINERALISED) - run.now(0, Daily.TAKEN_BACK));
        return new RateCurve(at, yield, shoot, lost, net, june);
    }

    private static double topFoot_ppm(SeasonRun run, int m) {
        double nitrate = 0;
        double perPpm = 0;
        double row = run.setup().rowShare();
        for (int i = 0; i < 3; i++) {
            nitrate += row * run.now(m, Cell.NITRATE, 0, i) + (1 - row) * run.now(m, Cell.NITRATE, 1, i);
            double density = run.setup().soil().bulkDensity_gcm3().get(i);
            perPpm += density * org.earleaf.soil.SoilProfile.thickness_mm(i) / 100;
        }
        return nitrate / perPpm;
    }

    private static MonotoneCubic over(double[] values) {
        return new MonotoneCubic(Units.lbAc(RATES_KGHA[1]), values);
    }

    /** The rate that pays best, of a grid of whole pounds [lb/ac]. */
    double best_lbAc() {
        MonotoneCubic curve = over(yield);
        int last = (int) Units.lbAc(RATES_KGHA[RATES_KGHA.length - 1]);
        int best = 0;
        double most = Double.NEGATIVE_INFINITY;
        for (int rate = 0; rate <= last; rate++) {
            double profit = curve.at(rate) - PRICE_RATIO * rate;
            if (profit > most) {
                most = profit;
                best = rate;
            }
        }
        return best;
    }

    double largest() {
        double most = 0;
        for (double y : yield) {
            most = Math.max(most, y);
        }
        return most;
    }

    /** A season, mostly of drought on sand, in which no rate yields anything. */
    boolean isBare() {
        return largest() <= 0;
    }

    double shootAtBest() {
        return over(shootN).at(best_lbAc());
    }

    double juneNitrateAtBest() {
        return over(juneNitrate).at(best_lbAc());
    }

    double recovery() {
        return (shootAtBest() - shootN[0]) / best_lbAc();
    }
}
