// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.Parameter;

/**
 * Nitrogen changing form in a cell: mineralisation, hydrolysis of urea, nitrification with the share that microbes and
 * clay take first, denitrification.
 *
 * <pre>
 * mineralised = som 0.78e-4 d Q10(2) fw fpH                        fpH = clamp((pH - 3.5)/3, 0, 1)
 * hydrolysed  = urea (1 - exp(-0.35 Q10(2) clamp((th - .5 WP)/(FC - .5 WP), .1, 1)))
 * av = max(0, NH4 - 1 ppm);  kn = 0.09 Q10(2.2) fw clamp((pH - 4)/2.2, 0, 1);  ki = 0.04 Q10(2) fw fpH d
 * gone = av (1 - exp(-kn - ki)), ki/(kn + ki) of it to som, the rest to nitrate; guarded ammonium at (kn + ki) NI band
 * NI = 1 - 0.8 exp(-G/300),  band = 0.25 + 0.75 clamp((days - 14)/14, 0, 1)
 * denitrified = NO3 (1 - exp(-0.028 Q10(2) clamp((x - .60)/.30, 0, 1)^2 clamp(n/3, .25, 1) c)),
 *        x = (peak + end water)/(2 SAT), n days in a row with x > .75
 * fw: r = (th - WP)/(FC - WP): r < 0 ? .40 th/WP : min(1, .40 + .60 r/.90), and where th/SAT > .7 at most
 *        max(.3, 1 - 0.7 (th/SAT - .7)/.3)
 *
 * som    organic nitrogen of the cell             [kg/ha]
 * d, c   relative rates by layer 1 1 .9 .4 .2 .1 and 1 1 1 .5 .2 .1
 * G      soil warmth since the inhibitor          [°C d]
 * Source moisture: Qiu et al. 2023, Soil Res. 61:1; Linn & Doran 1984, SSSAJ 48:1267; nitrification calibrated to the
 *        Kentucky extension table of nitrate after 0, 3, 6 weeks; denitrification and mineralisation
 *        fitted in bench/trials, the first below the 3 to 5 %/d of nitrate in saturated June soil of Kentucky and Illinois
 *        extension; take-back: Stevens et al. 2005, Agron. J. 97:1037. Forms and constants: own construct.
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
        return Math.min(whereDry(water, wp, perWp, perRange), whereWet(water, perSat));
    }

    private static double whereDry(double water, double wp, double perWp, double perRange) {
        return .40 * Math.min(1, water * perWp) + .60 / .90 * Lanes.positive((water - wp) * perRange);
    }

    /** Between 1 and, at saturation, .3. */
    private static double whereWet(double water, double perSat) {
        return 1 - 0.7 / .3 * Lanes.positive(water * perSat - .7);
    }

    /** With the reciprocal of the way from half of the wilting point to field capacity. */
    static double ureaMoisture(double water, double wp, double perUreaRange) {
        return Lanes.clamp((water - .5 * wp) * perUreaRange, .1, 1);
    }

    static double inhibition(double heatSince_Cd) {
        return 1 - 0.8 * Math.exp(-heatSince_Cd / 300);
    }

    static double bandLag(double daysSince) {
        return 0.25 + 0.75 * Lanes.clamp((daysSince - 14) / 14, 0, 1);
    }

    /** First-order rate of denitrification without the warmth [1/d]. */
    static double denitrification(double rate, double wetness, double airlessDays) {
        double wet = Lanes.share((wetness - .60) * (1 / .30));
        return rate * wet * wet * Lanes.clamp(airlessDays * (1.0 / 3), .25, 1);
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
        deposit(nitrate, ammonium, s.nitrate, s.ammonium, 2 * s.members);
        double[] booked = s.ledger[Ledger.DEPOSITED.ordinal()];
        for (int m = 0; m < booked.length; m++) {
            booked[m] += nitrate + ammonium;
        }
    }

    private static void deposit(double no3, double nh4, double[] nitrate, double[] ammonium, int end) {
        for (int n = 0; n < end; n++) {
            nitrate[n] += no3;
            ammonium[n] += nh4;
        }
    }

    private void moisten() {
        dry(s.water, site.wp, site.perWp, site.perRange, t.moist);
        wet(s.water, site.perSat, t.moist);
    }

    private static void dry(double[] water, double[] wp, double[] perWp, double[] perRange, double[] moist) {
        for (int n = 0; n < moist.length; n++) {
            moist[n] = whereDry(water[n], wp[n], perWp[n], perRange[n]);
        }
    }

    private static void wet(double[] water, double[] perSat, double[] moist) {
        for (int n = 0; n < moist.length; n++) {
            moist[n] = Math.min(moist[n], whereWet(water[n], perSat[n]));
        }
    }

    private void mineralise() {
        mineralise(site.mineralising, t.warmth2, t.moist, s.organic, s.ammonium, s.mineralised);
        if (s.anyManure) {
            mineraliseManure(site.mineralising, t.warmth2, t.moist, s.manure, s.ammonium, s.mineralised);
        }
    }

    private static void mineralise(
            double[] rate, double[] warm, double[] moist, double[] organic, double[] ammonium, double[] booked) {
        for (int n = 0; n < rate.length; n++) {
            double given = organic[n] * (rate[n] * warm[n] * moist[n]);
            organic[n] -= given;
            ammonium[n] += given;
            booked[n] += given;
        }
    }

    private static void mineraliseManure(
            double[] rate, double[] warm, double[] moist, double[] manure, double[] ammonium, double[] booked) {
        for (int n = 0; n < rate.length; n++) {
            double given = manure[n] * Math.min(1, MANURE_PACE * (rate[n] * warm[n] * moist[n]));
            manure[n] -= given;
            ammonium[n] += given;
            booked[n] += given;
        }
    }

    private void hydrolyse() {
        double[] gone = t.cell[0];
        double rate = site.of(Parameter.UREA_SOIL);
        hydrolysis(s.water, site.wp, site.perUreaRange, t.warmth2, rate, gone);
        hydrolyse(gone, s.urea, s.ammonium);
        if (s.anyGuarded) {
            // Urea lasts days, so with an inhibitor about nearly all of it was given with the inhibitor.
            double[] inhibited = t.cell[1];
            Columns.spread(s.guardInhibitor, inhibited);
            guardMore(inhibited, gone, s.guarded);
        }
    }

    private static void hydrolysis(
            double[] water, double[] wp, double[] perUreaRange, double[] warm, double rate, double[] k) {
        for (int n = 0; n < k.length; n++) {
            k[n] = rate * warm[n] * ureaMoisture(water[n], wp[n], perUreaRange[n]);
        }
    }

    /** From the rates; what was hydrolysed takes their place. */
    private static void hydrolyse(double[] k, double[] urea, double[] ammonium) {
        for (int n = 0; n < k.length; n++) {
            double gone = urea[n] * Lanes.lostSlowly(k[n]);
            urea[n] -= gone;
            ammonium[n] += gone;
            k[n] = gone;
        }
    }

    private static void guardMore(double[] inhibited, double[] gone, double[] guarded) {
        for (int n = 0; n < gone.length; n++) {
            guarded[n] += inhibited[n] * gone[n];
        }
    }

    private void nitrify(double[] guardRate) {
        double[] rate = t.cell[0];
        double[] part = t.cell[1];
        double[] gone = t.cell[2];
        rates(rate, part);
        if (s.anyGuarded) {
            double[] slowRate = t.cell[3];
            Columns.spread(guardRate, slowRate);
            times(rate, slowRate);
            above(s.ammonium, site.ammoniumFloor, s.guarded, gone);
            free(rate, gone);
            guarded(slowRate, s.guarded, gone);
        } else {
            free(s.ammonium, site.ammoniumFloor, rate, gone);
        }
        nitrify(gone, part, s.ammonium, s.nitrate, s.organic, s.takenBack);
    }

    /** Rate of both ways together, and the part of it that is taken back. */
    private void rates(double[] rate, double[] part) {
        double[] nitrifying = site.nitrifying;
        double[] taking = site.takingBack;
        double[] warm2 = t.warmth2;
        double[] warm22 = t.warmth22;
        double[] moist = t.moist;
        for (int n = 0; n < rate.length; n++) {
            double ki = taking[n] * warm2[n];
            double both = nitrifying[n] * warm22[n] + ki;
            rate[n] = both * moist[n];
            part[n] = ki / (both + 1e-300);
        }
    }

    private static void times(double[] factor, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] *= factor[n];
        }
    }

    private static void free(double[] ammonium, double[] floor, double[] rate, double[] gone) {
        for (int n = 0; n < gone.length; n++) {
            gone[n] = Lanes.positive(ammonium[n] - floor[n]) * Lanes.lostSlowly(rate[n]);
        }
    }

    /** What is not guarded of that above the floor; no more than that can be guarded. */
    private static void above(double[] ammonium, double[] floor, double[] guarded, double[] free) {
        for (int n = 0; n < free.length; n++) {
            double above = Lanes.positive(ammonium[n] - floor[n]);
            guarded[n] = Math.min(guarded[n], above);
            free[n] = above - guarded[n];
        }
    }

    private static void free(double[] rate, double[] gone) {
        for (int n = 0; n < gone.length; n++) {
            gone[n] *= Lanes.lostSlowly(rate[n]);
        }
    }

    /** Guarded ammonium goes at its own, slower pace. */
    private static void guarded(double[] slowRate, double[] guarded, double[] gone) {
        for (int n = 0; n < gone.length; n++) {
            double slow = guarded[n] * Lanes.lostSlowly(slowRate[n]);
            guarded[n] -= slow;
            gone[n] += slow;
        }
    }

    private static void nitrify(
            double[] gone, double[] part, double[] ammonium, double[] nitrate, double[] organic, double[] takenBack) {
        for (int n = 0; n < gone.length; n++) {
            double taken = gone[n] * part[n];
            ammonium[n] -= gone[n];
            nitrate[n] += gone[n] - taken;
            organic[n] += taken;
            takenBack[n] += taken;
        }
    }

    private void denitrify() {
        double[] wet = t.cell[0];
        double[] rate = t.cell[1];
        wetness(t.peak, s.water, site.perSat, wet, s.airless);
        rate(site.denitrifying, t.warmth2, wet, s.airless, rate);
        lose(rate, s.nitrate, s.denitrified);
    }

    /** Mean of the wettest state of the day and its end, as a share of saturation; and the days in a row above 3/4. */
    private static void wetness(double[] peak, double[] water, double[] perSat, double[] wet, double[] airless) {
        for (int n = 0; n < wet.length; n++) {
            wet[n] = 0.5 * (peak[n] + water[n]) * perSat[n];
            // A share lies between 0 and 1, so this rounds to 1 above 3/4 and to 0 below.
            airless[n] = (airless[n] + 1) * Math.ceil(wet[n] - .75);
        }
    }

    private static void rate(double[] most, double[] warm, double[] wet, double[] airless, double[] rate) {
        for (int n = 0; n < rate.length; n++) {
            rate[n] = warm[n] * denitrification(most[n], wet[n], airless[n]);
        }
    }

    private static void lose(double[] rate, double[] pool, double[] booked) {
        for (int n = 0; n < rate.length; n++) {
            double lost = pool[n] * Lanes.lostSlowly(rate[n]);
            pool[n] -= lost;
            booked[n] += lost;
        }
    }
}
