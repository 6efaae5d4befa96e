// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import org.earleaf.season.SeasonState.Ledger;

/**
 * Water into and through the layers of a column, and sideways between the columns, with the nitrogen that rides along.
 *
 * <pre>
 * A  fill each layer to SAT from the top; what is left at the bottom drains today, at most Dmax
 * B  from the bottom up, x = max(0, SW - FC) kd goes to the layer below, kd = clamp(0.25 + 0.20 log10(Ksat), 0.10, 0.80)
 * N  out of a layer: 0.8 F/(SW + F) of nitrate and urea, the same over R of ammonium, R = 1 + BD Kd/theta, Kd = 0.2 CEC
 * V  sideways: 0.15 clamp((th - WP)/(FC - WP), 0, 1)^3 (thR - thM) dz fR fM/(fR + fM)
 *
 * SW     water of a layer; WP, FC, SAT its limits   [mm]
 * F      water that left the layer downward today   [mm]
 * Ksat   saturated conductivity                     [mm/h]
 * BD, theta, CEC   [g/cm3], [share of volume], [cmol/kg]
 * Source own construct (cascade with a daily drainage share); 0.8: share of solute in moving water, own construct.
 * Check  SoilWaterFlowTest
 * </pre>
 */
final class SoilWaterFlow {
    private final SeasonSite site;
    private final SeasonState s;
    private final Today t;

    SoilWaterFlow(SeasonSite site, SeasonState state, Today today) {
        this.site = site;
        this.s = state;
        this.t = today;
    }

    static double drainShare(double ksat_mmh) {
        return Math.max(0.10, Math.min(0.80, 0.25 + 0.20 * Math.log10(ksat_mmh)));
    }

    /** Share of nitrate or urea leaving with the water. */
    static double moved(double flux_mm, double water_mm, double mixed) {
        return mixed * flux_mm / Math.max(1e-300, water_mm + flux_mm);
    }

    void step() {
        for (int c = 0; c < 2; c++) {
            enter(c);
            drain(c);
            carry(c);
        }
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            sideways(i);
        }
    }

    private void enter(int c) {
        double[] left = t.scratch;
        double[] spilled = s.ledger[Ledger.RUNOFF.ordinal()];
        double[] reaching = t.reaching[c];
        double[] entered = t.entered[c];
        double share = site.share[c];
        for (int m = 0; m < left.length; m++) {
            double room = site.drainMax[m];
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                room += site.sat[i][m] - s.water[c * SeasonState.LAYERS + i][m];
            }
            double q = Math.min(reaching[m], Math.max(0, room));
            spilled[m] += share * (reaching[m] - q);
            entered[m] = q;
            left[m] = q;
        }
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            fill(c * SeasonState.LAYERS + i, i, left);
        }
    }

    private void fill(int k, int i, double[] left) {
        double[] water = s.water[k];
        double[] sat = site.sat[i];
        double[] flux = t.flux[k];
        double[] peak = t.peak[k];
        for (int m = 0; m < left.length; m++) {
            double put = Math.min(left[m], Math.max(0, sat[m] - water[m]));
            double w = water[m] + put;
            left[m] -= put;
            water[m] = w;
            peak[m] = w;
            flux[m] = left[m];
        }
    }

    private void drain(int c) {
        int bottom = c * SeasonState.LAYERS + SeasonState.LAYERS - 1;
        double[] through = t.flux[bottom];
        double[] limit = t.scratch2;
        for (int m = 0; m < limit.length; m++) {
            limit[m] = site.drainMax[m] - through[m];
        }
        release(bottom, SeasonState.LAYERS - 1, limit, null);
        for (int i = SeasonState.LAYERS - 2; i >= 0; i--) {
            int k = c * SeasonState.LAYERS + i;
            double[] below = s.water[k + 1];
            double[] sat = site.sat[i + 1];
            for (int m = 0; m < limit.length; m++) {
                limit[m] = sat[m] - below[m];
            }
            release(k, i, limit, below);
        }
    }

    private void release(int k, int i, double[] limit, double @org.jspecify.annotations.Nullable [] below) {
        double[] water = s.water[k];
        double[] fc = site.fc[i];
        double[] kd = site.drainShare[i];
        double[] flux = t.flux[k];
        for (int m = 0; m < limit.length; m++) {
            double x = Math.min(Math.max(0, water[m] - fc[m]) * kd[m], Math.max(0, limit[m]));
            water[m] -= x;
            flux[m] += x;
            limit[m] = x;
        }
        if (below != null) {
            for (int m = 0; m < limit.length; m++) {
                below[m] += limit[m];
            }
        }
    }

    private void carry(int c) {
        double[] nitrate = t.scratch;
        double[] urea = t.scratch2;
        double[] ammonium = t.scratch3;
        java.util.Arrays.fill(nitrate, 0);
        java.util.Arrays.fill(urea, 0);
        java.util.Arrays.fill(ammonium, 0);
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            carry(c * SeasonState.LAYERS + i, i, nitrate, urea, ammonium);
        }
        double[] drained = s.ledger[Ledger.DRAINAGE.ordinal()];
        double[] leached = s.ledger[Ledger.LEACHED.ordinal()];
        double[] out = t.flux[c * SeasonState.LAYERS + SeasonState.LAYERS - 1];
        double share = site.share[c];
        for (int m = 0; m < out.length; m++) {
            drained[m] += share * out[m];
            leached[m] += share * (nitrate[m] + urea[m] + ammonium[m]);
        }
    }

    private void carry(int k, int i, double[] nitrateIn, double[] ureaIn, double[] ammoniumIn) {
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        double sorbed = site.sorbed[i] * site.dz[i];
        double[] water = s.water[k];
        double[] flux = t.flux[k];
        double[] no3 = s.nitrate[k];
        double[] urea = s.urea[k];
        double[] nh4 = s.ammonium[k];
        for (int m = 0; m < flux.length; m++) {
            double out = moved(flux[m], water[m], mixed);
            double n = no3[m] + nitrateIn[m];
            double u = urea[m] + ureaIn[m];
            double a = nh4[m] + ammoniumIn[m];
            double slow = out / (1 + sorbed / water[m]);
            nitrateIn[m] = n * out;
            ureaIn[m] = u * out;
            ammoniumIn[m] = a * slow;
            no3[m] = n - nitrateIn[m];
            urea[m] = u - ureaIn[m];
            nh4[m] = a - ammoniumIn[m];
        }
    }

    private void sideways(int i) {
        int row = i;
        int middle = SeasonState.LAYERS + i;
        double rate = site.of(Parameter.LATERAL);
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        double fR = site.share[0];
        double fM = site.share[1];
        double pair = fR * fM / (fR + fM);
        for (int m = 0; m < s.members; m++) {
            double wR = s.water[row][m];
            double wM = s.water[middle][m];
            double wp = site.wp[i][m];
            double wet = Lanes.clamp((0.5 * (wR + wM) - wp) / (site.fc[i][m] - wp), 0, 1);
            double v = rate * wet * wet * wet * (wR - wM) * pair;
            double sat = site.sat[i][m];
            // Towards the middle when positive; the receiver's room is the limit.
            double toMiddle = Math.min(Math.max(0, v), Math.max(0, sat - wM) * fM);
            double toRow = Math.min(Math.max(0, -v), Math.max(0, sat - wR) * fR);
            double shareOut = mixed * toMiddle / (fR * Math.max(1e-300, wR));
            double shareIn = mixed * toRow / (fM * Math.max(1e-300, wM));
            s.water[row][m] = wR + (toRow - toMiddle) / fR;
            s.water[middle][m] = wM + (toMiddle - toRow) / fM;
            exchange(s.nitrate[row], s.nitrate[middle], m, shareOut, shareIn, fR, fM);
            exchange(s.urea[row], s.urea[middle], m, shareOut, shareIn, fR, fM);
        }
    }

    private static void exchange(
            double[] row, double[] middle, int m, double shareOut, double shareIn, double fR, double fM) {
        double out = row[m] * shareOut * fR;
        double in = middle[m] * shareIn * fM;
        row[m] += (in - out) / fR;
        middle[m] += (out - in) / fM;
    }
}
