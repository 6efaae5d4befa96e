// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

/**
 * Depth, spread and activity of roots.
 *
 * <pre>
 * zr    = 0 before 35 °F d, then 50 + 34 V to V5, 220 + 88 (V - 5) after, at most zrMax or the water table
 * share of length above depth d (cm): 1 - 0.961^d, cut at zr
 * L     = 120 (V/Vtassel)^1.5 (1 - 0.2 rep)       gM = clamp((V - 3)/5, 0, 1)
 * row's share of a layer fR/(fR + fM rho), rho = gM (.4 .4 .5 .7 .9 1.0)
 * RD    = 1 - exp(-RLD/0.25)
 *
 * zr     depth of the root front                  [mm]
 * L      root length on ground                    [cm/cm2]
 * RLD    root length density of a cell            [cm/cm3]
 * RD     root activity of a cell                  [0 to 1]
 * Source front and depth: Ordonez et al. 2018, Field Crops Res. 215:122 (fit to stage: own construct); 0.961: Jackson
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
    /** 0.961^(bottom of the layer in cm). */
    private final double[] left = new double[SeasonState.LAYERS];

    Roots(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
        for (int i = 0; i < left.length; i++) {
            left[i] = Math.exp(LN_BETA * org.earleaf.soil.SoilProfile.bottom_mm(i) / 10);
        }
    }

    static double depth_mm(double gdd, double collars, double most) {
        // The two lines cross at five collars.
        double front = Math.max(50 + 34 * collars, 220 + 88 * (collars - 5));
        return Lanes.isPositive(gdd - 35) * Math.min(front, most);
    }

    static double middleSpread(double collars) {
        return Lanes.clamp((collars - 3) / 5, 0, 1);
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
        double[] density = t.cell[0];
        reach(length, below, spread);
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            densities(i, length, below, spread, density);
        }
        double[] active = t.roots;
        for (int n = 0; n < active.length; n++) {
            active[n] = Lanes.lost(density[n]);
        }
    }

    private void reach(double[] length, double[] below, double[] spread) {
        double[] most = site.lane(Parameter.ROOT_DEPTH_MAX);
        double table = site.setup.waterTable_mm();
        double limit = Double.isNaN(table) ? Double.POSITIVE_INFINITY : table;
        double full = site.of(Parameter.ROOT_LENGTH);
        double[] depth = s.rootDepth;
        double[] collars = s.collars;
        double[] rep = s.rep;
        double[] killed = s.killed;
        double[] tassel = site.tassel;
        for (int m = 0; m < depth.length; m++) {
            depth[m] = Math.max(depth[m], depth_mm(s.gdd[m], collars[m], Math.min(most[m], limit)));
        }
        for (int m = 0; m < below.length; m++) {
            below[m] = 1 - Lanes.lost(-LN_BETA / 10 * depth[m]);
        }
        for (int m = 0; m < spread.length; m++) {
            spread[m] = middleSpread(collars[m]);
        }
        // Per unit of the share cut at the front; 0 before the first collar.
        for (int m = 0; m < length.length; m++) {
            double v = collars[m] / tassel[m];
            double grown = full * v * Math.sqrt(v) * (1 - 0.2 * rep[m]) * (1 - killed[m]);
            length[m] = grown / Math.max(1e-9, 1 - below[m]);
        }
    }

    /** Root length density of a layer's two cells, in units of the density of full activity. */
    private void densities(int i, double[] length, double[] below, double[] spread, double[] density) {
        double top = i == 0 ? 1 : left[i - 1];
        double bottom = left[i];
        double fR = site.share[0];
        double fM = site.share[1];
        double perFull = 10 / (site.dz[i] * site.of(Parameter.ROOT_HALF));
        double ratio = MIDDLE_TO_ROW[i];
        int row = s.at(0, i);
        int middle = s.at(1, i);
        for (int m = 0; m < length.length; m++) {
            double here = length[m] * (Math.max(top, below[m]) - Math.max(bottom, below[m]));
            double inRow = here * perFull / (fR + fM * ratio * spread[m]);
            density[row + m] = inRow;
            density[middle + m] = inRow * ratio * spread[m];
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
        for (int m = 0; m < s.members; m++) {
            double held = 0;
            double full = 0;
            for (int i = 0; i < 3; i++) {
                int row = s.at(0, i) + m;
                int middle = s.at(1, i) + m;
                held += site.share[0] * (t.peak[row] + s.water[row]) / 2;
                held += site.share[1] * (t.peak[middle] + s.water[middle]) / 2;
                full += site.sat[row];
            }
            s.wetDays[m] = held > 0.95 * full ? s.wetDays[m] + 1 : 0;
        }
    }
}
