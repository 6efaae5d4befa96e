// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;

/**
 * How rain, irrigation and dew reach the two columns.
 *
 * <pre>
 * Eint  = min(P, 0.2 LAI)            I = P - Eint - Q
 * sigma = clamp(0.75 - 0.12 ln(max(P, 0.1)/2), 0.40, 0.75) (1 - exp(-0.6 LAI))
 * row   I (sigma + fR (1 - sigma))/fR            middle  I (1 - sigma)
 * Q     = (Pn - 0.2 S)^2/(Pn + 0.8 S) above 0.2 S, Pn = P - Eint, S = 25400/CN - 254
 * CN    between CN1 and CN2 up to r = 0.7, on to CN3 at r = 1.2,  r = (SW - WP)/(FC - WP) of the top foot
 *
 * P      rain and irrigation              [mm]
 * Eint   held by leaves                   [mm]
 * sigma  share that runs down the stems
 * fR     share of ground in the row column
 * Q, CN  runoff [mm], curve number; CN1 = CN2/(2.281 - 0.01281 CN2), CN3 = CN2/(0.427 + 0.00573 CN2)
 * Source stemflow: own construct inside 19 to 49 % (Parkin & Codling 1990, Agron. J. 82:1166) and 78 % under small
 *        storms (Martello et al. 2015, Water 7:2254); runoff: NRCS NEH 630 ch. 10, CN1 and CN3 after Hawkins, from
 *        memory; row of the curve number against soil water: own construct.
 * Check  RainfallTest
 * </pre>
 *
 * A light rain under a closed canopy gives the row base up to eight times what the middle gets; a storm does not.
 */
final class Rainfall {
    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;
    // curve numbers
    private final double dry;
    private final double middle;
    private final double wet;
    /** How much of a small rain the canopy leads to the stems, of the day. */
    private final double[] stems;

    Rainfall(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
        middle = site.setup.curveNumber();
        dry = dryCurve(middle);
        wet = wetCurve(middle);
        stems = t.member[0];
    }

    static double stemShare(double given_mm, double lai) {
        if (given_mm <= 0) {
            return 0;
        }
        return storm(given_mm) * stems(lai);
    }

    private static double storm(double given_mm) {
        return Lanes.clamp(0.75 - 0.12 * Lanes.ln(Math.max(given_mm, 0.1) / 2), 0.40, 0.75);
    }

    private static double stems(double lai) {
        return Lanes.lost(0.6 * lai);
    }

    static double dryCurve(double cn2) {
        return cn2 / (2.281 - 0.01281 * cn2);
    }

    static double wetCurve(double cn2) {
        return cn2 / (0.427 + 0.00573 * cn2);
    }

    /** Curve number at a relative wetness of the top foot. */
    static double curve(double cn2, double wetness) {
        return curve(dryCurve(cn2), cn2, wetCurve(cn2), wetness);
    }

    private static double curve(double dry, double cn2, double wet, double wetness) {
        double toMiddle = Lanes.clamp(wetness * (1 / 0.7), 0, 1);
        double toWet = Lanes.clamp((wetness - 0.7) * (1 / 0.5), 0, 1);
        return dry + (cn2 - dry) * toMiddle + (wet - cn2) * toWet;
    }

    static double runoff_mm(double net_mm, double curve) {
        double s = 25400 / curve - 254;
        double over = net_mm - 0.2 * s;
        return over > 0 ? over * over / (net_mm + 0.8 * s) : 0;
    }

    void step() {
        double[] catchShare = site.lane(Parameter.RAIN_CATCH);
        t.anyWater = false;
        stems(s.lai, stems);
        for (int m = 0; m < s.members; m++) {
            double rain = t.rain[m] * catchShare[m];
            double p = rain + s.irrigation[m];
            t.given[m] = p;
            add(Ledger.RAIN, m, rain);
            add(Ledger.IRRIGATION, m, s.irrigation[m]);
            if (p > 0) {
                t.anyWater = true;
                wet(m, p);
            } else if (s.lai[m] > 2 && t.dew[m] > 0) {
                t.anyWater = true;
                dew(m);
            } else {
                t.wetLeaves[m] = 0;
                t.reaching[m] = 0;
                t.reaching[s.at(1, 0) + m] = 0;
            }
            add(Ledger.INTERCEPTION, m, t.wetLeaves[m]);
        }
    }

    private static void stems(double[] lai, double[] stems) {
        for (int m = 0; m < stems.length; m++) {
            stems[m] = stems(lai[m]);
        }
    }

    private void wet(int m, double p) {
        double lai = s.lai[m];
        double held = Math.min(p, site.of(Parameter.INTERCEPTION) * lai);
        double runoff = runoff_mm(p - held, curve(dry, middle, wet, topFootWetness(m)));
        double in = p - held - runoff;
        double stem = Math.min(0.95, storm(p) * stems[m] * site.lane(Parameter.STEMFLOW)[m]);
        double row = site.share[0];
        t.wetLeaves[m] = held;
        t.reaching[m] = in * (stem + row * (1 - stem)) / row;
        t.reaching[s.at(1, 0) + m] = in * (1 - stem);
        add(Ledger.RUNOFF, m, runoff);
    }

    /** Half of the dew under a closed canopy reaches the row base, the rest dries off. */
    private void dew(int m) {
        double toRow = 0.5 * t.dew[m] * stems[m];
        t.reaching[m] = toRow / site.share[0];
        t.reaching[s.at(1, 0) + m] = 0;
        // Dew dries off before the day's demand begins, so it does not spare transpiration.
        t.wetLeaves[m] = 0;
        add(Ledger.DEW, m, t.dew[m]);
        add(Ledger.INTERCEPTION, m, t.dew[m] - toRow);
    }

    private double topFootWetness(int m) {
        double held = 0;
        double room = 0;
        for (int i = 0; i < 3; i++) {
            int row = s.at(0, i) + m;
            double water = site.share[0] * s.water[row] + site.share[1] * s.water[s.at(1, i) + m];
            held += water - site.wp[row];
            room += site.fc[row] - site.wp[row];
        }
        return held / room;
    }

    private void add(Ledger line, int m, double value) {
        s.ledger[line.ordinal()][m] += value;
    }
}
