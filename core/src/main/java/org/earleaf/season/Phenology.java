// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.units.Units;

/**
 * Thermal time, stage, leaf area and height of corn.
 *
 * <pre>
 * GDD  = (c(Tmax) + c(Tmin))/2 - 50            c clamps to 50..86 °F
 * V    = (g - VE)/82 to V10, then 10 + (g - g10)/50, at most V at tassel
 * rep  = clamp((g - gSilk)/(gBL - gSilk), 0, 1)
 * LAI  = Lmax S(10 (x - 0.62))/S(3.8) before silk, x = (g - VE)/(gSilk - VE);
 *        Lmax (1 - 0.75 max(0, (rep - 0.3)/0.7)^2) after; times clamp(0.5 + 0.5 min(1, NNI/0.9), 0.5, 1)
 *
 * g      thermal time since planting             [°F d]
 * VE     thermal time at emergence               [°F d]
 * V      leaf collars
 * S      logistic function
 * Range  relative maturity 80 to 120 d; 75 to 79 with one leaf rate of 59 °F d
 * Source GDD 86/50: extension services of Purdue, Ohio State, Minnesota; 82 and 50 °F d a collar: R. L. Nielsen,
 *        Purdue; LAI: own construct within 5 to 6 measured by Suyker & Verma 2008, Agric. For. Meteorol.
 * Check  PhenologyTest
 * </pre>
 */
final class Phenology {
    /** One leaf rate of very early hybrids [°F d a collar]. */
    static final double FAR_NORTH_LEAF = 59;

    private static final double KILLING_FROST_C = -2.2;
    /** Height of the arch of the uppermost leaves by collar [cm]: extension tables to V6, above common practice. */
    private static final double[] COLLARS = {0, 2, 3, 4, 5, 6, 8, 10, 12, 14, 16};

    private static final double[] HEIGHT_CM = {0, 10, 15, 22, 30, 43, 66, 98, 140, 185, 225};
    private static final double HEIGHT_AT_TASSEL_CM = 260;

    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    Phenology(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double gdd(double tmax_C, double tmin_C) {
        double high = Math.max(50, Math.min(86, Units.fahrenheit(tmax_C)));
        double low = Math.max(50, Math.min(86, Units.fahrenheit(tmin_C)));
        return (high + low) / 2 - 50;
    }

    /** Leaf collars at thermal time g; below 0 before emergence. */
    static double collarsAt(double g, double emergence, double early, double late, double tassel) {
        double v = (g - emergence) / early;
        double after = 10 + (g - emergence - 10 * early) / late;
        return Math.min(v > 10 ? after : v, tassel);
    }

    static double leafArea(double g, double rep, double emergence, double silk, double largest) {
        if (g < emergence) {
            return 0;
        }
        if (rep > 0 || g >= silk) {
            double late = Math.max(0, (rep - 0.3) / 0.7);
            return largest * (1 - 0.75 * late * late);
        }
        double x = (g - emergence) / (silk - emergence);
        return largest * (1 + Math.exp(-3.8)) / (1 + Math.exp(-10 * (x - 0.62)));
    }

    /** Canopy height [cm] of an unstressed crop of a hybrid with this many collars at tassel. */
    static double height_cm(double collars, double tassel) {
        if (collars >= tassel) {
            return HEIGHT_AT_TASSEL_CM;
        }
        for (int k = 1; k < COLLARS.length && COLLARS[k] < tassel; k++) {
            if (collars <= COLLARS[k]) {
                return line(collars, COLLARS[k - 1], HEIGHT_CM[k - 1], COLLARS[k], HEIGHT_CM[k]);
            }
        }
        int last = COLLARS.length - 1;
        while (COLLARS[last] >= tassel) {
            last--;
        }
        return line(collars, COLLARS[last], HEIGHT_CM[last], tassel, HEIGHT_AT_TASSEL_CM);
    }

    private static double line(double x, double x0, double y0, double x1, double y1) {
        return y0 + (y1 - y0) * (Math.max(x, x0) - x0) / (x1 - x0);
    }

    void step(int day) {
        double[] emergence = site.lane(Parameter.EMERGENCE);
        double[] leafMax = site.lane(Parameter.LAI_MAX);
        double[] heightScale = site.lane(Parameter.HEIGHT_SCALE);
        double crowd = Math.sqrt(site.setup.population_m2() / 8);
        double early = site.earlyLeaf;
        double late = site.lateLeaf;
        boolean frosts = site.of(Parameter.FROST) > 0;
        t.anyUp = false;
        boolean growing = day >= site.plantedDay;
        for (int m = 0; m < s.members; m++) {
            t.nni[m] = s.shoot[m] < CropNitrogen.NO_INDEX_BELOW_KGHA ? 1 : s.shootN[m] / s.critical[m];
            if (!growing) {
                continue;
            }
            double g = s.gdd[m] + gdd(t.tmax[m], t.tmin[m]);
            s.gdd[m] = g;
            boolean up = g >= emergence[m];
            t.anyUp |= up;
            if (frosts && up) {
                frost(m);
            }
            double v = Math.max(0, collarsAt(g, emergence[m], early, late, site.tassel[m]));
            grow(m, v, heightScale[m]);
            s.rep[m] = Math.max(0, Math.min(1, (g - site.silk[m]) / (site.black[m] - site.silk[m])));
            double leaf = leafArea(g, s.rep[m], emergence[m], site.silk[m], leafMax[m] * crowd);
            double fed = Math.max(0.5, Math.min(1, 0.5 + 0.5 * Math.min(1, t.nni[m] / 0.9)));
            s.lai[m] = leaf * fed * s.frost[m];
            mark(s.emergenceDay, m, up, day);
            mark(s.silkDay, m, g >= site.silk[m], day);
            mark(s.blackLayerDay, m, g >= site.black[m], day);
        }
    }

    private static void mark(double[] first, int m, boolean reached, int day) {
        if (reached && first[m] < 0) {
            first[m] = day;
        }
    }

    /** Height only grows: increments of the table, after V6 scaled by hybrid and by yesterday's stress. */
    private void grow(int m, double v, double scale) {
        double tassel = site.tassel[m];
        double increment = height_cm(v, tassel) - height_cm(s.collars[m], tassel);
        if (v > 6) {
            increment *= scale * Math.sqrt(Math.min(s.waterFactor[m], s.nitrogenFactor[m]));
        }
        s.height[m] += s.killed[m] > 0 ? 0 : increment;
        s.collars[m] = v;
    }

    /**
     * 28 °F kills all leaf; between that and freezing three tenths of it goes, and grows back with the next three
     * collars while the growing point is below ground (common practice, no source; the growing back is an own
     * construct).
     */
    private void frost(int m) {
        if (t.tmin[m] <= KILLING_FROST_C && s.collars[m] >= 6) {
            s.killed[m] = 1;
            s.frost[m] = 0;
        } else if (t.tmin[m] <= 0) {
            s.frost[m] *= t.tmin[m] <= KILLING_FROST_C ? 0.1 : 0.7;
            s.frostCollars[m] = s.collars[m];
        } else if (s.frost[m] < 1 && s.killed[m] == 0 && s.frostCollars[m] < 6) {
            s.frost[m] = Math.min(1, s.frost[m] + 0.3 * Math.max(0, s.collars[m] - s.frostCollars[m]));
            s.frostCollars[m] = s.collars[m];
        }
    }
}
