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
        double r = (water - wp) * perRange;
        double dry = .40 * Math.min(1, water * perWp) + .60 / .90 * Math.max(0, r);
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
        for (int j = 0; j < 2 * s.members; j++) {
            s.nitrate[j] += nitrate;
        }
        for (int j = 0; j < 2 * s.members; j++) {
            s.ammonium[j] += ammonium;
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
        double[] given = t.cell[0];
        freed(s.organic, site.mineralising, t.warmth2, t.moist, given);
        move(given, s.organic);
        if (s.anyManure) {
            freedQuickly(s.manure, site.mineralising, t.warmth2, t.moist, given);
            move(given, s.manure);
        }
    }

    private static void freed(double[] pool, double[] rate, double[] warm, double[] moist, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = pool[n] * (rate[n] * warm[n] * moist[n]);
        }
    }

    private static void freedQuickly(double[] pool, double[] rate, double[] warm, double[] moist, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = pool[n] * Math.min(1, MANURE_PACE * (rate[n] * warm[n] * moist[n]));
        }
    }

    private void move(double[] given, double[] from) {
        Lane.subtract(from, given);
        Lane.add(s.ammonium, given);
        Lane.add(s.mineralised, given);
    }

    private void hydrolyse() {
        double[] gone = t.cell[0];
        ureaRates(site.of(Parameter.UREA_SOIL), t.warmth2, s.water, site.wp, site.fc, gone);
        Lane.lost(s.urea, gone, gone);
        Lane.subtract(s.urea, gone);
        Lane.add(s.ammonium, gone);
        if (s.anyGuarded) {
            // Urea lasts days, so with an inhibitor about nearly all of it was given with the inhibitor.
            for (int n = 0; n < gone.length; n++) {
                s.guarded[n] += s.guardInhibitor[n % s.members] * gone[n];
            }
        }
    }

    private static void ureaRates(double rate, double[] warm, double[] water, double[] wp, double[] fc, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = rate * warm[n] * ureaMoisture(water[n], wp[n], fc[n]);
        }
    }

    private void nitrify(double[] guardRate) {
        double[] rate = t.cell[0];
        double[] gone = t.cell[1];
        double[] taken = t.cell[2];
        nitrifyRates(site.nitrifying, t.warmth22, site.takingBack, t.warmth2, t.moist, rate);
        if (s.anyGuarded) {
            nitrifyGuarded(guardRate, rate, gone);
        } else {
            Lane.above(s.ammonium, site.ammoniumFloor, gone);
            Lane.lost(gone, rate, gone);
        }
        taken(gone, site.takingBack, t.warmth2, t.moist, rate, taken);
        Lane.subtract(s.ammonium, gone);
        Lane.subtract(gone, taken);
        Lane.add(s.nitrate, gone);
        Lane.add(s.organic, taken);
        Lane.add(s.takenBack, taken);
    }

    private static void nitrifyRates(
            double[] nitrifying, double[] warm22, double[] taking, double[] warm2, double[] moist, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = (nitrifying[n] * warm22[n] + taking[n] * warm2[n]) * moist[n];
        }
    }

    private static void taken(
            double[] gone, double[] taking, double[] warm2, double[] moist, double[] rate, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = gone[n] * (taking[n] * warm2[n] * moist[n] / Math.max(1e-300, rate[n]));
        }
    }

    /** Guarded ammonium goes at its own, slower pace. */
    private void nitrifyGuarded(double[] guardRate, double[] rate, double[] gone) {
        for (int n = 0; n < gone.length; n++) {
            double free = Math.max(0, s.ammonium[n] - site.ammoniumFloor[n]);
            double slow = Math.min(s.guarded[n], free);
            double goneSlow = slow * Lanes.lost(rate[n] * guardRate[n % guardRate.length]);
            gone[n] = (free - slow) * Lanes.lost(rate[n]) + goneSlow;
            s.guarded[n] = slow - goneSlow;
        }
    }

    private void denitrify() {
        double[] wet = t.cell[0];
        double[] rate = t.cell[1];
        wetness(t.peak, s.water, site.perSat, wet);
        airless(wet, s.airless);
        denitrifyRates(site.denitrifying, t.warmth2, wet, s.airless, rate);
        Lane.lost(s.nitrate, rate, rate);
        Lane.subtract(s.nitrate, rate);
        Lane.add(s.denitrified, rate);
    }

    private static void wetness(double[] peak, double[] water, double[] perSat, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = 0.5 * (peak[n] + water[n]) * perSat[n];
        }
    }

    private static void airless(double[] wet, double[] days) {
        for (int n = 0; n < days.length; n++) {
            days[n] = (days[n] + 1) * Lanes.isPositive(wet[n] - .75);
        }
    }

    private static void denitrifyRates(double[] rate, double[] warm, double[] wet, double[] days, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = warm[n] * denitrification(rate[n], wet[n], days[n]);
        }
    }
}
