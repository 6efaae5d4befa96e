// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;

/**
 * Nitrogen changing form in a cell: mineralisation, hydrolysis of urea, nitrification with the share that microbes and
 * clay take first, denitrification.
 *
 * <pre>
 * mineralised = som 1.5e-4 d Q10(2) fw fpH                        fpH = clamp((pH - 3.5)/3, 0, 1)
 * hydrolysed  = urea (1 - exp(-0.35 Q10(2) clamp((th - .5 WP)/(FC - .5 WP), .1, 1)))
 * av = max(0, NH4 - 1 ppm);  kn = 0.09 Q10(2.2) fw clamp((pH - 4)/2.2, 0, 1);  ki = 0.04 Q10(2) fw fpH d
 * gone = av (1 - exp(-kn - ki)), ki/(kn + ki) of it to som, the rest to nitrate; guarded ammonium at (kn + ki) NI band
 * NI = 1 - 0.8 exp(-G/300),  band = 0.25 + 0.75 clamp((days - 14)/14, 0, 1)
 * denitrified = NO3 (1 - exp(-0.055 Q10(2) clamp((x - .60)/.30, 0, 1)^2 clamp(n/3, .25, 1) c)),
 *        x = (peak + end water)/(2 SAT), n days in a row with x > .75
 * fw: r = (th - WP)/(FC - WP): r < 0 ? .40 th/WP : min(1, .40 + .60 r/.90), and where th/SAT > .7 at most
 *        max(.3, 1 - 0.7 (th/SAT - .7)/.3)
 *
 * som    organic nitrogen of the cell             [kg/ha]
 * d, c   relative rates by layer 1 1 .9 .4 .2 .1 and 1 1 1 .5 .2 .1
 * G      soil warmth since the inhibitor          [°C d]
 * Source moisture: Qiu et al. 2023, Soil Res. 61:1; Linn & Doran 1984, SSSAJ 48:1267; nitrification calibrated to the
 *        Kentucky extension table of nitrate after 0, 3, 6 weeks; denitrification 3 to 5 %/d of nitrate in saturated
 *        June soil (Kentucky, Illinois extension); take-back: Stevens et al. 2005, Agron. J. 97:1037. Forms and
 *        constants: own construct.
 * Check  SoilNitrogenTest
 * </pre>
 */
final class SoilNitrogen {
    /**
     * The quick part of manure's organic nitrogen decays at this multiple of the soil's own pace, about as fast as buried
     * residue, so that the share that is to come in the first year does come in its season (own construct; at eight
     * times the soil's pace only a tenth of it would).
     */
    private static final double MANURE_PACE = 150;

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    SoilNitrogen(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double acidity(double ph) {
        return Lanes.clamp((ph - 3.5) / 3, 0, 1);
    }

    static double nitrifierAcidity(double ph) {
        return Lanes.clamp((ph - 4) / 2.2, 0, 1);
    }

    /** Response of microbial nitrogen to water; wilting point like the water, the limits as their reciprocals. */
    static double moisture(double water, double wp, double perWp, double perRange, double perSat) {
        double dry = .40 * Math.min(1, water * perWp) + .60 / .90 * Lanes.positive((water - wp) * perRange);
        double wet = Math.max(.3, 1 - 0.7 / .3 * (water * perSat - .7));
        return Math.min(Math.min(1, dry), wet);
    }

    static double ureaMoisture(double water, double wp, double fc) {
        return Lanes.clamp((water - .5 * wp) / (fc - .5 * wp), .1, 1);
    }

    static double inhibition(double heatSince_Cd) {
        return 1 - 0.8 * Math.exp(-heatSince_Cd / 300);
    }

    static double bandLag(double daysSince) {
        return 0.25 + 0.75 * Lanes.clamp((daysSince - 14) / 14, 0, 1);
    }

    /** First-order rate of denitrification without the warmth [1/d]. */
    static double denitrification(double rate, double wetness, double airlessDays) {
        double wet = Lanes.clamp((wetness - .60) / .30, 0, 1);
        return rate * wet * wet * Lanes.clamp(airlessDays / 3, .25, 1);
    }

    void step() {
        double[] guardRate = t.member[0];
        guard(guardRate);
        deposit();
        moisten();
        mineralise();
        if (s.anyUrea) {
            hydrolyse();
        }
        nitrify(guardRate);
        denitrify();
    }

    /** Ages the inhibitor and the band; the factor by which guarded ammonium is slowed. */
    private void guard(double[] rate) {
        boolean any = false;
        for (int m = 0; m < s.members; m++) {
            double slowed = 1;
            if (s.guardInhibitor[m] > 0 || s.guardBand[m] > 0) {
                any = true;
                double ni = s.guardInhibitor[m] > 0 ? inhibition(s.guardHeat[m]) : 1;
                double band = s.guardBand[m] > 0 ? bandLag(s.guardAge[m]) : 1;
                slowed = ni * band;
                s.guardHeat[m] += Math.max(0, s.soilTemperature[s.members + m]);
                s.guardAge[m] += 1;
            }
            rate[m] = slowed;
        }
        s.anyGuarded = any;
    }

    private void deposit() {
        double nitrate = site.of(Parameter.DEPOSIT_NITRATE);
        double ammonium = site.of(Parameter.DEPOSIT_AMMONIUM);
        for (int c = 0; c < 2; c++) {
            int top = s.at(c, 0);
            for (int n = top; n < top + s.members; n++) {
                s.nitrate[n] += nitrate;
                s.ammonium[n] += ammonium;
            }
        }
        double[] booked = s.ledger[Ledger.DEPOSITED.ordinal()];
        for (int m = 0; m < s.members; m++) {
            booked[m] += nitrate + ammonium;
        }
    }

    private void moisten() {
        double[] water = s.water;
        double[] wp = site.wp;
        double[] perWp = site.perWp;
        double[] perRange = site.perRange;
        double[] perSat = site.perSat;
        double[] moist = t.moist;
        for (int n = 0; n < moist.length; n++) {
            moist[n] = moisture(water[n], wp[n], perWp[n], perRange[n], perSat[n]);
        }
    }

    private void mineralise() {
        double[] rate = site.mineralising;
        double[] warm = t.warmth2;
        double[] moist = t.moist;
        double[] given = t.cell[0];
        double[] organic = s.organic;
        for (int n = 0; n < given.length; n++) {
            given[n] = organic[n] * (rate[n] * warm[n] * moist[n]);
        }
        move(given, organic, s.ammonium, s.mineralised);
        if (s.anyManure) {
            double[] manure = s.manure;
            for (int n = 0; n < given.length; n++) {
                given[n] = manure[n] * Math.min(1, MANURE_PACE * (rate[n] * warm[n] * moist[n]));
            }
            move(given, manure, s.ammonium, s.mineralised);
        }
    }

    /** Takes amounts out of one pool, puts them into another and books them. */
    private static void move(double[] amounts, double[] from, double[] to, double[] booked) {
        for (int n = 0; n < amounts.length; n++) {
            double amount = amounts[n];
            from[n] -= amount;
            to[n] += amount;
            booked[n] += amount;
        }
    }

    private void hydrolyse() {
        double rate = site.of(Parameter.UREA_SOIL);
        double[] warm = t.warmth2;
        double[] water = s.water;
        double[] wp = site.wp;
        double[] fc = site.fc;
        double[] urea = s.urea;
        double[] ammonium = s.ammonium;
        double[] gone = t.cell[0];
        for (int n = 0; n < gone.length; n++) {
            gone[n] = rate * warm[n] * ureaMoisture(water[n], wp[n], fc[n]);
        }
        for (int n = 0; n < gone.length; n++) {
            gone[n] = urea[n] * Lanes.lostSlowly(gone[n]);
        }
        for (int n = 0; n < gone.length; n++) {
            urea[n] -= gone[n];
            ammonium[n] += gone[n];
        }
        if (s.anyGuarded) {
            // Urea lasts days, so with an inhibitor about nearly all of it was given with the inhibitor.
            double[] inhibited = t.cell[1];
            double[] guarded = s.guarded;
            Columns.spread(s.guardInhibitor, inhibited);
            for (int n = 0; n < gone.length; n++) {
                guarded[n] += inhibited[n] * gone[n];
            }
        }
    }

    private void nitrify(double[] guardRate) {
        double[] warm2 = t.warmth2;
        double[] warm22 = t.warmth22;
        double[] moist = t.moist;
        double[] nitrifying = site.nitrifying;
        double[] taking = site.takingBack;
        double[] ammonium = s.ammonium;
        double[] floor = site.ammoniumFloor;
        double[] rate = t.cell[0];
        double[] part = t.cell[1];
        double[] gone = t.cell[2];
        for (int n = 0; n < rate.length; n++) {
            double ki = taking[n] * warm2[n];
            double both = nitrifying[n] * warm22[n] + ki;
            rate[n] = both * moist[n];
            part[n] = ki / (both + 1e-300);
        }
        if (s.anyGuarded) {
            nitrifyGuarded(guardRate, rate, gone);
        } else {
            for (int n = 0; n < gone.length; n++) {
                gone[n] = Lanes.positive(ammonium[n] - floor[n]) * Lanes.lostSlowly(rate[n]);
            }
        }
        double[] nitrate = s.nitrate;
        double[] organic = s.organic;
        double[] takenBack = s.takenBack;
        for (int n = 0; n < gone.length; n++) {
            double taken = gone[n] * part[n];
            ammonium[n] -= gone[n];
            nitrate[n] += gone[n] - taken;
            organic[n] += taken;
            takenBack[n] += taken;
        }
    }

    /** Guarded ammonium goes at its own, slower pace. */
    private void nitrifyGuarded(double[] guardRate, double[] rate, double[] gone) {
        double[] ammonium = s.ammonium;
        double[] floor = site.ammoniumFloor;
        double[] guarded = s.guarded;
        double[] slowRate = t.cell[3];
        Columns.spread(guardRate, slowRate);
        for (int n = 0; n < gone.length; n++) {
            slowRate[n] *= rate[n];
        }
        for (int n = 0; n < gone.length; n++) {
            double free = Lanes.positive(ammonium[n] - floor[n]);
            guarded[n] = Math.min(guarded[n], free);
            gone[n] = (free - guarded[n]) * Lanes.lostSlowly(rate[n]);
        }
        for (int n = 0; n < gone.length; n++) {
            double slow = guarded[n] * Lanes.lostSlowly(slowRate[n]);
            guarded[n] -= slow;
            gone[n] += slow;
        }
    }

    private void denitrify() {
        double[] water = s.water;
        double[] peak = t.peak;
        double[] perSat = site.perSat;
        double[] rate = site.denitrifying;
        double[] warm = t.warmth2;
        double[] airless = s.airless;
        double[] nitrate = s.nitrate;
        double[] denitrified = s.denitrified;
        double[] wet = t.cell[0];
        double[] pace = t.cell[1];
        for (int n = 0; n < wet.length; n++) {
            wet[n] = 0.5 * (peak[n] + water[n]) * perSat[n];
        }
        for (int n = 0; n < wet.length; n++) {
            airless[n] = (airless[n] + 1) * Lanes.isPositive(wet[n] - .75);
        }
        for (int n = 0; n < wet.length; n++) {
            pace[n] = warm[n] * denitrification(rate[n], wet[n], airless[n]);
        }
        for (int n = 0; n < wet.length; n++) {
            double lost = nitrate[n] * Lanes.lostSlowly(pace[n]);
            nitrate[n] -= lost;
            denitrified[n] += lost;
        }
    }
}
