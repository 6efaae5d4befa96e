// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.Parameter;

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
    private final double usual;
    private final double wet;
    // by member, of the day; work space
    private final double[] given;
    /** How much of a small rain the canopy leads to the stems; then of this one. */
    private final double[] stems;

    private final double[] runoff;
    private final double[] row;
    private final double[] middle;
    private final double[] other;
    /** Dew of a night without rain under a closed canopy [mm]. */
    private final double[] dew;

    Rainfall(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
        usual = site.setup.ground().curveNumber();
        dry = dryCurve(usual);
        wet = wetCurve(usual);
        given = t.given;
        stems = t.member[0];
        runoff = t.member[1];
        row = t.member[2];
        middle = t.member[3];
        other = t.member[4];
        dew = t.member[5];
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
        double over = Lanes.positive(net_mm - 0.2 * s);
        return over * over / (net_mm + 0.8 * s + 1e-300);
    }

    void step() {
        give(site.lane(Parameter.RAIN_CATCH));
        boolean rains = Columns.anyPositive(given);
        dew(given, s.lai, t.dew, dew);
        boolean dews = Columns.anyPositive(dew);
        t.anyWater = rains || dews;
        Arrays.fill(t.wetLeaves, 0);
        Arrays.fill(row, 0);
        Arrays.fill(middle, 0);
        if (t.anyWater) {
            stems(s.lai, stems);
        }
        if (rains) {
            rain();
        }
        if (dews) {
            dew();
        }
        System.arraycopy(row, 0, t.reaching, 0, row.length);
        System.arraycopy(middle, 0, t.reaching, row.length, row.length);
    }

    private void give(double[] catchShare) {
        caught(t.rain, catchShare, given);
        Columns.add(given, s.ledger[Ledger.RAIN.ordinal()]);
        if (Columns.anyPositive(s.irrigation)) {
            Columns.add(s.irrigation, s.ledger[Ledger.IRRIGATION.ordinal()]);
            Columns.add(s.irrigation, given);
        }
    }

    private static void caught(double[] rain, double[] share, double[] caught) {
        for (int m = 0; m < caught.length; m++) {
            caught[m] = rain[m] * share[m];
        }
    }

    private static void stems(double[] lai, double[] stems) {
        for (int m = 0; m < stems.length; m++) {
            stems[m] = stems(lai[m]);
        }
    }

    private void rain() {
        hold(given, s.lai, site.of(Parameter.INTERCEPTION), t.wetLeaves);
        Columns.sum(s.water, 3, site.share, other, runoff);
        curves(site.footWp, site.perFootRange, runoff);
        runoff(given, t.wetLeaves, runoff);
        stormShares(site.lane(Parameter.STEMFLOW));
        split(site.share[0]);
        Columns.add(t.wetLeaves, s.ledger[Ledger.INTERCEPTION.ordinal()]);
        Columns.add(runoff, s.ledger[Ledger.RUNOFF.ordinal()]);
    }

    private static void hold(double[] given, double[] lai, double perLai, double[] held) {
        for (int m = 0; m < held.length; m++) {
            held[m] = Math.min(given[m], perLai * lai[m]);
        }
    }

    /** From the water of the top foot; its curve numbers take its place. */
    private void curves(double[] wp, double[] perRange, double[] water) {
        for (int m = 0; m < water.length; m++) {
            water[m] = curve(dry, usual, wet, (water[m] - wp[m]) * perRange[m]);
        }
    }

    /** From the curve numbers; what runs off takes their place. */
    private static void runoff(double[] given, double[] held, double[] runoff) {
        for (int m = 0; m < runoff.length; m++) {
            runoff[m] = runoff_mm(given[m] - held[m], runoff[m]);
        }
    }

    private void stormShares(double[] scale) {
        for (int m = 0; m < other.length; m++) {
            other[m] = given[m] > 0 ? Math.min(0.95, storm(given[m]) * stems[m] * scale[m]) : 0;
        }
    }

    private void split(double rowShare) {
        split(given, t.wetLeaves, runoff, middle);
        atStems(middle, other, 1 / rowShare, row);
        beside(other, middle);
    }

    private static void split(double[] given, double[] held, double[] runoff, double[] in) {
        for (int m = 0; m < in.length; m++) {
            in[m] = given[m] - held[m] - runoff[m];
        }
    }

    private static void atStems(double[] in, double[] stem, double perRow, double[] row) {
        for (int m = 0; m < row.length; m++) {
            row[m] = in[m] * (stem[m] * perRow + (1 - stem[m]));
        }
    }

    private static void beside(double[] stem, double[] middle) {
        for (int m = 0; m < middle.length; m++) {
            middle[m] *= 1 - stem[m];
        }
    }

    /** A closed canopy gathers dew on nights without rain. */
    private static void dew(double[] given, double[] lai, double[] night, double[] dew) {
        for (int m = 0; m < dew.length; m++) {
            dew[m] = (1 - Lanes.isPositive(given[m])) * Lanes.isPositive(lai[m] - 2) * Lanes.positive(night[m]);
        }
    }

    /** Half of it reaches the row base, the rest dries off before the day's demand begins. */
    private void dew() {
        double[] toRow = stems;
        toRow(dew, toRow);
        Columns.add(dew, s.ledger[Ledger.DEW.ordinal()]);
        dryOff(dew, toRow, s.ledger[Ledger.INTERCEPTION.ordinal()]);
        runDown(toRow, 1 / site.share[0], row);
    }

    /** From the shares that canopies lead to the stems; the dew on its way takes their place. */
    private static void toRow(double[] dew, double[] stems) {
        for (int m = 0; m < stems.length; m++) {
            stems[m] *= 0.5 * dew[m];
        }
    }

    private static void dryOff(double[] dew, double[] toRow, double[] lost) {
        for (int m = 0; m < lost.length; m++) {
            lost[m] += dew[m] - toRow[m];
        }
    }

    private static void runDown(double[] toRow, double perRow, double[] row) {
        for (int m = 0; m < row.length; m++) {
            row[m] += toRow[m] * perRow;
        }
    }
}
