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
    /** Manure's organic nitrogen decays at this multiple of the soil's own (common practice, no source). */
    private static final double MANURE_PACE = 8;

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

    /** Response of microbial nitrogen to water; all three of the limits in mm like the water. */
    static double moisture(double water, double wp, double fc, double sat) {
        double r = (water - wp) / (fc - wp);
        double dry = .40 * Math.min(1, water / wp) + .60 / .90 * Math.max(0, r);
        double wet = Math.max(.3, 1 - 0.7 / .3 * (water / sat - .7));
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
        double[] guardRate = t.scratch;
        boolean anyGuarded = guard(guardRate);
        for (int c = 0; c < 2; c++) {
            deposit(c);
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                mineralise(c, i);
                nitrify(c, i, guardRate, anyGuarded);
                denitrify(c, i);
            }
        }
    }

    /** Ages the inhibitor and the band; the factor by which guarded ammonium is slowed. */
    private boolean guard(double[] rate) {
        boolean any = false;
        for (int m = 0; m < s.members; m++) {
            double slowed = 1;
            if (s.guardInhibitor[m] > 0 || s.guardBand[m] > 0) {
                any = true;
                double ni = s.guardInhibitor[m] > 0 ? inhibition(s.guardHeat[m]) : 1;
                double band = s.guardBand[m] > 0 ? bandLag(s.guardAge[m]) : 1;
                slowed = ni * band;
                s.guardHeat[m] += Math.max(0, s.soilTemperature[1][m]);
                s.guardAge[m] += 1;
            }
            rate[m] = slowed;
        }
        return any;
    }

    private void deposit(int c) {
        double nitrate = site.of(Parameter.DEPOSIT_NITRATE);
        double ammonium = site.of(Parameter.DEPOSIT_AMMONIUM);
        int top = c * SeasonState.LAYERS;
        double[] booked = s.ledger[Ledger.DEPOSITED.ordinal()];
        for (int m = 0; m < s.members; m++) {
            s.nitrate[top][m] += nitrate;
            s.ammonium[top][m] += ammonium;
            booked[m] += site.share[c] * (nitrate + ammonium);
        }
    }

    private void mineralise(int c, int i) {
        int k = c * SeasonState.LAYERS + i;
        double[] water = s.water[k];
        double[] wp = site.wp[i];
        double[] fc = site.fc[i];
        double[] sat = site.sat[i];
        double[] warm = t.warmth2[i];
        double[] organic = s.organic[k];
        double[] manure = s.manure[k];
        double[] ammonium = s.ammonium[k];
        double[] urea = s.urea[k];
        double[] guarded = s.guarded[k];
        double[] inhibited = s.guardInhibitor;
        double[] rate = site.lane(Parameter.MINERALISATION);
        double[] booked = s.ledger[Ledger.MINERALISED.ordinal()];
        double here = SeasonSite.DEPTH_RATE[i] * site.phMineralise[i];
        double ureaRate = site.of(Parameter.UREA_SOIL);
        double share = site.share[c];
        for (int m = 0; m < water.length; m++) {
            double pace = rate[m] * here * warm[m] * moisture(water[m], wp[m], fc[m], sat[m]);
            double fromSoil = organic[m] * pace;
            double fromManure = manure[m] * Math.min(1, MANURE_PACE * pace);
            double hydrolysed = urea[m] * Lanes.lost(ureaRate * warm[m] * ureaMoisture(water[m], wp[m], fc[m]));
            organic[m] -= fromSoil;
            manure[m] -= fromManure;
            urea[m] -= hydrolysed;
            ammonium[m] += fromSoil + fromManure + hydrolysed;
            // Urea lasts days, so with an inhibitor about nearly all of it was given with the inhibitor.
            guarded[m] += inhibited[m] * hydrolysed;
            booked[m] += share * (fromSoil + fromManure);
        }
    }

    private void nitrify(int c, int i, double[] guardRate, boolean anyGuarded) {
        int k = c * SeasonState.LAYERS + i;
        double[] water = s.water[k];
        double[] wp = site.wp[i];
        double[] fc = site.fc[i];
        double[] sat = site.sat[i];
        double[] warm2 = t.warmth2[i];
        double[] warm22 = t.warmth22[i];
        double[] ammonium = s.ammonium[k];
        double[] nitrate = s.nitrate[k];
        double[] organic = s.organic[k];
        double[] guarded = s.guarded[k];
        double[] nitrifying = site.lane(Parameter.NITRIFICATION);
        double[] taking = site.lane(Parameter.TAKE_BACK);
        double[] booked = s.ledger[Ledger.TAKEN_BACK.ordinal()];
        double floor = site.of(Parameter.AMMONIUM_FLOOR) * site.ppm[i];
        double takeHere = SeasonSite.DEPTH_RATE[i] * site.phMineralise[i];
        double nitrifyHere = site.phNitrify[i];
        double share = site.share[c];
        for (int m = 0; m < water.length; m++) {
            double moist = moisture(water[m], wp[m], fc[m], sat[m]);
            double kn = nitrifying[m] * nitrifyHere * warm22[m] * moist;
            double ki = taking[m] * takeHere * warm2[m] * moist;
            double free = Math.max(0, ammonium[m] - floor);
            double slow = Math.min(guarded[m], free);
            double gone = (free - slow) * Lanes.lost(kn + ki);
            double goneSlow = anyGuarded ? slow * Lanes.lost((kn + ki) * guardRate[m]) : 0;
            double taken = (gone + goneSlow) * ki / Math.max(1e-300, kn + ki);
            guarded[m] = slow - goneSlow;
            ammonium[m] -= gone + goneSlow;
            organic[m] += taken;
            nitrate[m] += gone + goneSlow - taken;
            booked[m] += share * taken;
        }
    }

    private void denitrify(int c, int i) {
        int k = c * SeasonState.LAYERS + i;
        double[] water = s.water[k];
        double[] peak = t.peak[k];
        double[] sat = site.sat[i];
        double[] warm = t.warmth2[i];
        double[] nitrate = s.nitrate[k];
        double[] airless = s.airless[k];
        double[] rate = site.lane(Parameter.DENITRIFICATION);
        double[] booked = s.ledger[Ledger.DENITRIFIED.ordinal()];
        double here = SeasonSite.CARBON_RATE[i];
        double share = site.share[c];
        for (int m = 0; m < water.length; m++) {
            double x = (peak[m] + water[m]) / (2 * sat[m]);
            double days = (airless[m] + 1) * Lanes.isPositive(x - .75);
            double lost = nitrate[m] * Lanes.lost(here * warm[m] * denitrification(rate[m], x, days));
            airless[m] = days;
            nitrate[m] -= lost;
            booked[m] += share * lost;
        }
    }
}
