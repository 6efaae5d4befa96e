// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.units.Units;

/**
 * Thermal time, stage, leaf area and height of corn.
 *
 * <pre>
 * GDD  = (c(Tmax) + c(Tmin))/2 - 50            c clamps to 50..86 °F
 * V    = (g - VE)/82 to V10, then 10 + (g - g10)/50, at most V at tassel
 * rep  = clamp((g - gSilk)/(gBL - gSilk), 0, 1)
 * LAI  = Lmax S(10 (x - 0.62))/S(3.8) before silk, x = (g - VE)/(gSilk - VE);
 *        Lmax (1 - 0.75 max(0, (rep - 0.3)/0.7)^2) after; times clamp(0.5 + 0.5 NNI, 0.5, 1)
 *
 * g      thermal time since planting, to a killing frost  [°F d]
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

    /** Of the logistic curve of leaf area. */
    private static final double AT_SILK = Math.exp(-3.8);

    private static final double KILLING_FROST_C = -2.2;
    /** Collars with which it comes above ground. */
    private static final double GROWING_POINT_UP = 6;
    /** In place of the collars from which leaf grows back: more than there are. */
    private static final double FOR_GOOD = 99;
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
        double high = Lanes.clamp(Units.fahrenheit(tmax_C), 50, 86);
        double low = Lanes.clamp(Units.fahrenheit(tmin_C), 50, 86);
        return 0.5 * (high + low) - 50;
    }

    /** Leaf collars at thermal time g; below 0 before emergence. */
    static double collarsAt(double g, double emergence, double early, double late, double tassel) {
        double v = (g - emergence) / early;
        return Math.min(v + Lanes.positive(v - 10) * (early / late - 1), tassel);
    }

    static double leafArea(double g, double rep, double emergence, double silk, double largest) {
        double share = leafShare(progress(g, emergence, silk));
        return Lanes.isAtLeast(g, emergence) * largest * leafShare(share, rep, Lanes.isAtLeast(g, silk));
    }

    private static double progress(double g, double emergence, double silk) {
        return 10 * ((g - emergence) / (silk - emergence) - 0.62);
    }

    /** Before silk. */
    private static double leafShare(double z) {
        double e = 1 - Lanes.lost(Math.abs(z));
        double logistic = (e + Lanes.isPositive(z) * (1 - e)) / (1 + e);
        return (1 + AT_SILK) * logistic;
    }

    private static double leafShare(double beforeSilk, double rep, double silked) {
        double late = Lanes.positive((rep - 0.3) * (1 / 0.7));
        return (1 - silked) * beforeSilk + silked * (1 - 0.75 * late * late);
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
        nutrition(s.shoot, s.shootN, s.critical, t.nni);
        t.anyUp = false;
        if (day < site.plantedDay) {
            return;
        }
        double[] emergence = site.lane(Parameter.EMERGENCE);
        warm(t.tmax, t.tmin, s.killed, s.gdd);
        t.anyUp = anyReached(s.gdd, emergence);
        if (!t.anyUp) {
            return;
        }
        if (site.of(Parameter.FROST) > 0) {
            frost(emergence);
        }
        double[] collars = t.member[0];
        collars(s.gdd, emergence, site.earlyLeaf, site.lateLeaf, site.tassel, collars);
        grow(collars, site.lane(Parameter.HEIGHT_SCALE));
        reproductive(s.gdd, site.silk, site.black, s.rep);
        double[] share = t.member[1];
        if (!allReached(s.gdd, site.silk)) {
            progress(s.gdd, emergence, site.silk, share);
            leafShares(share);
        } else {
            Arrays.fill(share, 0);
        }
        leafShares(s.gdd, site.silk, s.rep, share);
        double[] largest = t.member[2];
        largest(site.lane(Parameter.LAI_MAX), s.population, t.nni, s.frost, largest);
        leaf(share, s.gdd, emergence, largest, s.lai);
        mark(s.gdd, emergence, day, s.emergenceDay);
        mark(s.gdd, site.silk, day, s.silkDay);
        mark(s.gdd, site.black, day, s.blackLayerDay);
    }

    private static boolean anyReached(double[] g, double[] onset) {
        for (int m = 0; m < g.length; m++) {
            if (g[m] >= onset[m]) {
                return true;
            }
        }
        return false;
    }

    private static boolean allReached(double[] g, double[] onset) {
        for (int m = 0; m < g.length; m++) {
            if (g[m] < onset[m]) {
                return false;
            }
        }
        return true;
    }

    private static void nutrition(double[] shoot, double[] shootN, double[] critical, double[] nni) {
        for (int m = 0; m < nni.length; m++) {
            double index = shootN[m] / (critical[m] + 1e-300);
            nni[m] = 1 + Lanes.isAtLeast(shoot[m], CropNitrogen.NO_INDEX_BELOW_KGHA) * (index - 1);
        }
    }

    /** A killed crop stays in its stage. */
    private static void warm(double[] tmax, double[] tmin, double[] killed, double[] gdd) {
        for (int m = 0; m < gdd.length; m++) {
            gdd[m] += (1 - killed[m]) * gdd(tmax[m], tmin[m]);
        }
    }

    private static void collars(
            double[] g, double[] emergence, double early, double late, double[] tassel, double[] collars) {
        for (int m = 0; m < collars.length; m++) {
            collars[m] = Math.max(0, collarsAt(g[m], emergence[m], early, late, tassel[m]));
        }
    }

    private static void reproductive(double[] g, double[] silk, double[] black, double[] rep) {
        for (int m = 0; m < rep.length; m++) {
            rep[m] = Lanes.clamp((g[m] - silk[m]) / (black[m] - silk[m]), 0, 1);
        }
    }

    private static void progress(double[] g, double[] emergence, double[] silk, double[] progress) {
        for (int m = 0; m < progress.length; m++) {
            progress[m] = progress(g[m], emergence[m], silk[m]);
        }
    }

    /** From the progress; the shares of leaf area take its place. */
    private static void leafShares(double[] share) {
        for (int m = 0; m < share.length; m++) {
            share[m] = leafShare(share[m]);
        }
    }

    private static void leafShares(double[] g, double[] silk, double[] rep, double[] share) {
        for (int m = 0; m < share.length; m++) {
            share[m] = leafShare(share[m], rep[m], Lanes.isAtLeast(g[m], silk[m]));
        }
    }

    /** The largest leaf area at this stand and nutrition and after frost. */
    private static void largest(double[] most, double[] population, double[] nni, double[] frost, double[] largest) {
        for (int m = 0; m < largest.length; m++) {
            double fed = Lanes.clamp(0.5 + 0.5 * nni[m], 0.5, 1);
            largest[m] = most[m] * Math.sqrt(population[m] / 8) * fed * frost[m];
        }
    }

    private static void leaf(double[] share, double[] g, double[] emergence, double[] largest, double[] lai) {
        for (int m = 0; m < lai.length; m++) {
            lai[m] = Lanes.isAtLeast(g[m], emergence[m]) * largest[m] * share[m];
        }
    }

    /** The day on which an onset was first reached takes the place of -1. */
    private static void mark(double[] g, double[] onset, int day, double[] first) {
        for (int m = 0; m < first.length; m++) {
            double open = 1 - Lanes.isAtLeast(first[m], 0);
            first[m] += open * Lanes.isAtLeast(g[m], onset[m]) * (day + 1);
        }
    }

    /** Height only grows: increments of the table, after V6 scaled by hybrid and by yesterday's stress. */
    private void grow(double[] collars, double[] scale) {
        for (int m = 0; m < collars.length; m++) {
            double v = collars[m];
            if (v > s.collars[m]) {
                double tassel = site.tassel[m];
                double increment = height_cm(v, tassel) - height_cm(s.collars[m], tassel);
                if (v > 6) {
                    increment *= scale[m] * Math.sqrt(Math.min(s.waterFactor[m], s.nitrogenFactor[m]));
                }
                s.height[m] += s.killed[m] > 0 ? 0 : increment;
                s.collars[m] = v;
            }
        }
    }

    private void frost(double[] emergence) {
        for (int m = 0; m < s.members; m++) {
            boolean touched = t.tmin[m] <= 0 || s.frost[m] < 1;
            if (touched && s.gdd[m] >= emergence[m]) {
                frost(m);
            }
        }
    }

    /**
     * 28 °F kills all leaf; between that and freezing three tenths of it goes. What is lost while the growing point is
     * below ground grows back with the next three collars (common practice, no source; the growing back is an own
     * construct).
     */
    private void frost(int m) {
        boolean below = s.collars[m] < GROWING_POINT_UP;
        if (t.tmin[m] <= KILLING_FROST_C && !below) {
            s.killed[m] = 1;
            s.frost[m] = 0;
        } else if (t.tmin[m] <= 0) {
            s.frost[m] *= t.tmin[m] <= KILLING_FROST_C ? 0.1 : 0.7;
            s.frostCollars[m] = below ? s.collars[m] : FOR_GOOD;
        } else if (s.frost[m] < 1 && s.killed[m] == 0 && s.frostCollars[m] < FOR_GOOD) {
            s.frost[m] = Math.min(1, s.frost[m] + 0.3 * Math.max(0, s.collars[m] - s.frostCollars[m]));
            s.frostCollars[m] = s.collars[m];
        }
    }
}
