// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.parameter.Parameter;
import org.earleaf.soil.SoilProfile;

/**
 * Depth, spread and activity of roots.
 *
 * <pre>
 * zr    = 0 before 35 °F d, then 50 + 34 V to V5, 220 + 0.65 (g - g5) after, at most zrMax or the water table
 * share of length above depth d (cm): 1 - 0.961^d, cut at zr
 * L     = 120 (V/Vtassel)^1.5 (1 - 0.2 rep)       gM = clamp((V - 3)/5, 0, 1)
 * row's share of a layer fR/(fR + fM rho), rho = gM (.4 .4 .5 .7 .9 1.0)
 * RD    = 1 - exp(-RLD/0.25)
 *
 * zr     depth of the root front                  [mm]
 * g, g5  thermal time since planting, at V5       [°F d]
 * L      root length on ground                    [cm/cm2]
 * RLD    root length density of a cell            [cm/cm3]
 * RD     root activity of a cell                  [0 to 1]
 * Source depth: Ordonez et al. 2018, Field Crops Res. 215:122; front after V5: set in bench/trials between
 *        roots dug near Ames, Iowa, in 2019 (in 2018 shallower) and what yields answer to, slower than the 3 cm a day of
 *        Ordonez; 0.961: Jackson
 *        et al. 1996, Oecologia 108:389, from memory; lateral spread by V8: common practice, no source; L, rho: own.
 * Check  RootsTest
 * </pre>
 */
final class Roots {
    private static final double[] MIDDLE_TO_ROW = {.4, .4, .5, .7, .9, 1.0};
    private static final double LN_BETA = Math.log(0.961);

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;
    // by layer and member
    /** 0.961^depth in cm of top and bottom. */
    private final double[] top;

    private final double[] bottom;
    private final double[] perFull;
    private final double[] middleToRow;

    Roots(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
        top = Columns.byLayer(s.members, i -> Math.exp(LN_BETA * SoilProfile.top_mm(i) / 10));
        bottom = Columns.byLayer(s.members, i -> Math.exp(LN_BETA * SoilProfile.bottom_mm(i) / 10));
        perFull = Columns.byLayer(s.members, i -> 10 / (site.dz[i] * site.of(Parameter.ROOT_HALF)));
        middleToRow = Columns.byLayer(s.members, i -> MIDDLE_TO_ROW[i]);
    }

    /** @param past thermal time since five collars, below 0 before */
    static double depth_mm(double gdd, double collars, double past, double perDegree, double most) {
        double front = 50 + 34 * Math.min(5, collars) + perDegree * Lanes.positive(past);
        return Lanes.isAtLeast(gdd, 35) * Math.min(front, most);
    }

    static double middleSpread(double collars) {
        return Lanes.share((collars - 3) * (1.0 / 5));
    }

    void step() {
        if (t.anyUp) {
            grow();
        }
        if (site.of(Parameter.WATERLOGGING) > 0) {
            suffocate();
        }
    }

    private void grow() {
        double[] length = t.member[0];
        double[] below = t.member[1];
        double[] spread = t.member[2];
        double table = site.setup.ground().waterTable_mm();
        double limit = Double.isNaN(table) ? Double.POSITIVE_INFINITY : table;
        deepen(limit);
        below(s.rootDepth, below);
        spread(s.collars, spread);
        lengths(s, site.tassel, site.of(Parameter.ROOT_LENGTH), below, length);
        double[] row = t.layer[0];
        double[] middle = t.layer[1];
        double[] reach = t.layer[2];
        double[] beside = t.layer[3];
        Columns.spread(length, row);
        Columns.spread(below, reach);
        Columns.spread(spread, beside);
        double[] within = t.layer[4];
        withinLayer(reach, top, bottom, perFull, row, within);
        densities(within, beside, row, middle);
        Columns.join(row, middle, t.roots);
        activity(t.roots);
    }

    private void deepen(double limit) {
        double[] depth = s.rootDepth;
        double[] collars = s.collars;
        double[] gdd = s.gdd;
        double[] most = site.lane(Parameter.ROOT_DEPTH_MAX);
        double[] emergence = site.lane(Parameter.EMERGENCE);
        double perDegree = site.of(Parameter.ROOT_FRONT);
        double toFive = 5 * site.earlyLeaf;
        for (int m = 0; m < depth.length; m++) {
            double past = gdd[m] - emergence[m] - toFive;
            depth[m] = Math.max(depth[m], depth_mm(gdd[m], collars[m], past, perDegree, Math.min(most[m], limit)));
        }
    }

    /** Share of all length that would lie below the front. */
    private static void below(double[] depth, double[] below) {
        for (int m = 0; m < below.length; m++) {
            below[m] = 1 - Lanes.lost(-LN_BETA / 10 * depth[m]);
        }
    }

    private static void spread(double[] collars, double[] spread) {
        for (int m = 0; m < spread.length; m++) {
            spread[m] = middleSpread(collars[m]);
        }
    }

    /** Per unit of the share cut at the front; 0 before the first collar. */
    private static void lengths(SeasonState s, double[] tassel, double full, double[] below, double[] length) {
        double[] collars = s.collars;
        double[] rep = s.rep;
        double[] killed = s.killed;
        for (int m = 0; m < length.length; m++) {
            double v = collars[m] / tassel[m];
            double grown = full * v * Math.sqrt(v) * (1 - 0.2 * rep[m]) * (1 - killed[m]);
            length[m] = grown / Math.max(1e-9, 1 - below[m]);
        }
    }

    /** Root length of a layer, in units of the density of full activity. */
    private static void withinLayer(
            double[] below, double[] top, double[] bottom, double[] perFull, double[] length, double[] within) {
        for (int n = 0; n < within.length; n++) {
            double share = Math.max(top[n], below[n]) - Math.max(bottom[n], below[n]);
            within[n] = length[n] * share * perFull[n];
        }
    }

    private void densities(double[] within, double[] spread, double[] row, double[] middle) {
        double fR = site.share[0];
        double fM = site.share[1];
        double[] most = middleToRow;
        for (int n = 0; n < within.length; n++) {
            double beside = spread[n] * most[n];
            row[n] = within[n] / (fR + fM * beside);
            middle[n] = row[n] * beside;
        }
    }

    private static void activity(double[] density) {
        for (int n = 0; n < density.length; n++) {
            density[n] = Lanes.lost(density[n]);
        }
    }

    /** Two days with the top foot above 95 % of saturation halve root activity until it has drained. */
    private void suffocate() {
        for (int m = 0; m < s.members; m++) {
            if (s.wetDays[m] >= 2) {
                for (int n = m; n < t.roots.length; n += s.members) {
                    t.roots[n] *= 0.5;
                }
            }
        }
    }

    /**
     * After the day's water has moved: the mean of its wettest state and what is left, as for denitrification. What is
     * left alone would hardly ever count, since a day drains and dries a filled top foot below 95 %.
     */
    void countWetDays() {
        if (site.of(Parameter.WATERLOGGING) == 0) {
            return;
        }
        double[] wettest = t.member[0];
        double[] end = t.member[1];
        Columns.sum(t.peak, 3, site.share, t.member[2], wettest);
        Columns.sum(s.water, 3, site.share, t.member[2], end);
        count(wettest, end, site.footSat, s.wetDays);
    }

    private static void count(double[] wettest, double[] end, double[] full, double[] days) {
        for (int m = 0; m < days.length; m++) {
            days[m] = (days[m] + 1) * Lanes.isPositive(0.5 * (wettest[m] + end[m]) - 0.95 * full[m]);
        }
    }
}
