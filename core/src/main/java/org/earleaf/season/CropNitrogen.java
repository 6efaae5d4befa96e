// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.parameter.Parameter;

/**
 * What nitrogen the crop must hold, holds, wants and takes.
 *
 * <pre>
 * Nuc    = c W below 1 t/ha, c W^0.63 above, c = 37     critical nitrogen of the shoot
 * NNI    = N / Nuc, 1 while W < 0.05
 * demand = clamp(Nuc - N, 0, 8.8)/(1 - fRoot), 0 once rep >= 0.97
 * nitrate  taken at most  min(av, 0.065 RD fw av + T/max(1, SW) NO3),  av = NO3 - 0.5 ppm
 * ammonium taken at most  0.03 RD fw (NH4 - 1 ppm),  fw = clamp(2 (SW - WP)/(FC - WP), 0, 1)
 *
 * W      shoot dry matter                              [t/ha]
 * N      nitrogen in the shoot                         [kg/ha]
 * RD     root activity, T water taken                  [0 to 1], [mm]
 * SW     water of the cell; WP, FC its limits          [mm]
 * Range  emergence to 25 d after silk, W to 22 t/ha
 * Source Plenet & Lemaire 2000, Plant Soil 216:65 (critical curve); 8.8 kg/ha/d: Bender et al. 2013, Agron. J.
 *        105:161; supply: own construct.
 * Check  CropNitrogenTest
 * </pre>
 */
final class CropNitrogen {
    /** Below this shoot weight the index is taken as 1. */
    static final double NO_INDEX_BELOW_KGHA = 50;

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    CropNitrogen(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    /** Critical nitrogen [kg/ha] of a shoot [kg/ha], with so much of it per t/ha of a small shoot. */
    static double critical_kgHa(double shoot_kgHa, double perTonne) {
        double w = shoot_kgHa / 1000;
        return critical(w, Lanes.ln(Math.max(1, w)), perTonne);
    }

    /** From the weight [t/ha] and its logarithm from 1 t/ha on. */
    private static double critical(double w, double lnW, double perTonne) {
        return perTonne * Math.min(w, Lanes.exp(0.63 * lnW));
    }

    static double nni(double shoot_kgHa, double nitrogen_kgHa, double perTonne) {
        return shoot_kgHa < NO_INDEX_BELOW_KGHA ? 1 : nitrogen_kgHa / critical_kgHa(shoot_kgHa, perTonne);
    }

    static double moistureForUptake(double water_mm, double wp_mm, double perRange_mm) {
        return Lanes.share(2 * (water_mm - wp_mm) * perRange_mm);
    }

    /** Nitrate that roots can take from a cell in a day [kg/ha of column]; rate with root activity and moisture. */
    static double nitrateSupply(double no3, double floor, double rate, double drawn_mm, double water_mm) {
        double free = Lanes.positive(no3 - floor);
        return Math.min(free, rate * free + drawn_mm / Math.max(1, water_mm) * no3);
    }

    void step(int day) {
        double[] active = t.cell[0];
        double[] offered = t.cell[1];
        double[] supply = t.member[0];
        double[] part = t.member[1];
        active(s.water, site.wp, site.perRange, t.roots, active);
        nitrate(active, t.fromNitrate);
        ammonium(active, t.fromNitrate, t.fromAmmonium, offered);
        Columns.sum(offered, SeasonState.LAYERS, site.share, part, supply);
        wanted(supply, part);
        take(part);
        System.arraycopy(supply, 0, s.ledger[SeasonState.Ledger.SUPPLY_TODAY.ordinal()], 0, supply.length);
        markShort(day);
    }

    /** Activity of roots where the soil is moist. */
    private static void active(double[] water, double[] wp, double[] perRange, double[] roots, double[] active) {
        for (int n = 0; n < active.length; n++) {
            active[n] = roots[n] * moistureForUptake(water[n], wp[n], perRange[n]);
        }
    }

    private void nitrate(double[] active, double[] offered) {
        double rate = site.of(Parameter.NITRATE_UPTAKE);
        double[] nitrate = s.nitrate;
        double[] floor = site.nitrateFloor;
        double[] drawn = t.drawn;
        double[] water = s.water;
        for (int n = 0; n < offered.length; n++) {
            offered[n] = nitrateSupply(nitrate[n], floor[n], rate * active[n], drawn[n], water[n]);
        }
    }

    /** The second of the two, so both together are offered here. */
    private void ammonium(double[] active, double[] fromNitrate, double[] fromAmmonium, double[] offered) {
        double rate = site.of(Parameter.AMMONIUM_UPTAKE);
        double[] ammonium = s.ammonium;
        double[] floor = site.ammoniumFloor;
        for (int n = 0; n < offered.length; n++) {
            fromAmmonium[n] = rate * active[n] * Lanes.positive(ammonium[n] - floor[n]);
            offered[n] = fromNitrate[n] + fromAmmonium[n];
        }
    }

    private void wanted(double[] supply, double[] part) {
        double[] lnShoot = t.member[2];
        double[] demand = s.ledger[SeasonState.Ledger.DEMAND_TODAY.ordinal()];
        logarithms(s.shoot, lnShoot);
        critical(s.shoot, lnShoot, site.lane(Parameter.CRITICAL), s.critical);
        double[] rootShare = site.lane(Parameter.ROOT_NITROGEN);
        demand(rootShare, demand);
        double[] uptake = s.ledger[SeasonState.Ledger.UPTAKE_TODAY.ordinal()];
        uptake(demand, supply, part, uptake);
        gain(uptake, rootShare, s.shootN, s.rootN);
    }

    private static void logarithms(double[] shoot, double[] lnShoot) {
        for (int m = 0; m < lnShoot.length; m++) {
            lnShoot[m] = Lanes.ln(Math.max(1, shoot[m] / 1000));
        }
    }

    private static void critical(double[] shoot, double[] lnShoot, double[] perTonne, double[] critical) {
        for (int m = 0; m < critical.length; m++) {
            critical[m] = critical(shoot[m] / 1000, lnShoot[m], perTonne[m]);
        }
    }

    /** Until shortly before black layer. */
    private void demand(double[] rootShare, double[] demand) {
        double luxury = site.of(Parameter.LUXURY);
        double most = site.of(Parameter.UPTAKE_MAX);
        double[] critical = s.critical;
        double[] held = s.shootN;
        double[] rep = s.rep;
        double[] killed = s.killed;
        for (int m = 0; m < demand.length; m++) {
            double gap = Lanes.clamp(luxury * critical[m] - held[m], 0, most);
            double takes = (1 - killed[m]) * Lanes.isPositive(0.97 - rep[m]);
            demand[m] = takes * gap / (1 - rootShare[m]);
        }
    }

    private static void uptake(double[] demand, double[] supply, double[] part, double[] uptake) {
        for (int m = 0; m < part.length; m++) {
            part[m] = Math.min(1, demand[m] / (supply[m] + 1e-300));
            uptake[m] = part[m] * supply[m];
        }
    }

    private static void gain(double[] uptake, double[] rootShare, double[] shootN, double[] rootN) {
        for (int m = 0; m < uptake.length; m++) {
            shootN[m] += (1 - rootShare[m]) * uptake[m];
            rootN[m] += rootShare[m] * uptake[m];
        }
    }

    private void take(double[] part) {
        double[] taken = t.cell[0];
        Columns.spread(part, taken);
        if (s.anyGuarded) {
            unguard(taken, t.fromAmmonium, s.ammonium, s.guarded);
        }
        take(taken, t.fromNitrate, t.fromAmmonium, s.nitrate, s.ammonium);
    }

    /** What is taken comes from guarded and free ammonium alike. */
    private static void unguard(double[] taken, double[] offered, double[] ammonium, double[] guarded) {
        for (int n = 0; n < taken.length; n++) {
            guarded[n] *= 1 - taken[n] * offered[n] / (ammonium[n] + 1e-300);
        }
    }

    private static void take(
            double[] taken, double[] fromNitrate, double[] fromAmmonium, double[] nitrate, double[] ammonium) {
        for (int n = 0; n < taken.length; n++) {
            nitrate[n] -= taken[n] * fromNitrate[n];
            ammonium[n] -= taken[n] * fromAmmonium[n];
        }
    }

    private void markShort(int day) {
        for (int m = 0; m < s.members; m++) {
            if (t.nni[m] < SeasonTrace.SHORT_NNI && s.shortDay[m] < 0 && s.collars[m] > 4 && s.rep[m] < 0.9) {
                s.shortDay[m] = day;
            }
        }
    }
}
