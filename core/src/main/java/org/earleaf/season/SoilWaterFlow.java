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

    /** Bulk density times the distribution coefficient of ammonium, 0.2 CEC. */
    static double sorbed(double bulkDensity_gcm3, double cec_cmolKg) {
        return bulkDensity_gcm3 * 0.2 * cec_cmolKg;
    }

    /** Share of nitrate or urea leaving with the water. */
    static double moved(double flux_mm, double water_mm, double mixed) {
        return mixed * flux_mm / Math.max(1e-300, water_mm + flux_mm);
    }

    /** What of the water reaching the ground goes in; the rest runs off. */
    void enter() {
        double[] entered = t.entered;
        if (!t.anyWater) {
            java.util.Arrays.fill(entered, 0);
            return;
        }
        int n = s.members;
        double[] room = t.column[0];
        System.arraycopy(site.drainMax, 0, room, 0, n);
        System.arraycopy(site.drainMax, 0, room, n, n);
        for (int at = 0; at < s.water.length; at += 2 * n) {
            for (int j = 0; j < room.length; j++) {
                room[j] += site.sat[at + j] - s.water[at + j];
            }
        }
        for (int j = 0; j < room.length; j++) {
            entered[j] = Math.min(t.reaching[j], Math.max(0, room[j]));
        }
        double[] spilled = s.ledger[Ledger.RUNOFF.ordinal()];
        for (int m = 0; m < n; m++) {
            spilled[m] +=
                    site.share[0] * (t.reaching[m] - entered[m]) + site.share[1] * (t.reaching[n + m] - entered[n + m]);
        }
    }

    void step() {
        if (t.anyWater) {
            System.arraycopy(t.entered, 0, t.column[0], 0, t.entered.length);
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                fill(s.at(0, i), t.column[0]);
            }
        } else {
            java.util.Arrays.fill(t.flux, 0);
        }
        System.arraycopy(s.water, 0, t.peak, 0, s.water.length);
        drain();
        carry();
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            sideways(i);
        }
    }

    /** Both columns of a layer: filled to saturation, the rest goes on. */
    private void fill(int at, double[] left) {
        double[] water = s.water;
        double[] sat = site.sat;
        double[] flux = t.flux;
        double[] put = t.column[1];
        for (int j = 0; j < left.length; j++) {
            put[j] = Math.min(left[j], Math.max(0, sat[at + j] - water[at + j]));
        }
        for (int j = 0; j < left.length; j++) {
            left[j] -= put[j];
        }
        for (int j = 0; j < left.length; j++) {
            water[at + j] += put[j];
        }
        System.arraycopy(left, 0, flux, at, left.length);
    }

    private void drain() {
        int n = s.members;
        int last = s.at(0, SeasonState.LAYERS - 1);
        double[] limit = t.column[0];
        double[] out = t.column[1];
        for (int m = 0; m < n; m++) {
            limit[m] = site.drainMax[m] - t.flux[last + m];
        }
        for (int m = 0; m < n; m++) {
            limit[n + m] = site.drainMax[m] - t.flux[last + n + m];
        }
        release(last, limit, out);
        for (int at = last - 2 * n; at >= 0; at -= 2 * n) {
            int below = at + 2 * n;
            for (int j = 0; j < limit.length; j++) {
                limit[j] = site.sat[below + j] - s.water[below + j];
            }
            release(at, limit, out);
            for (int j = 0; j < out.length; j++) {
                s.water[below + j] += out[j];
            }
        }
    }

    private void release(int at, double[] limit, double[] out) {
        double[] water = s.water;
        double[] fc = site.fc;
        double[] kd = site.drainShare;
        double[] flux = t.flux;
        for (int j = 0; j < out.length; j++) {
            double over = Math.max(0, water[at + j] - fc[at + j]) * kd[at + j];
            out[j] = Math.min(over, Math.max(0, limit[j]));
        }
        for (int j = 0; j < out.length; j++) {
            water[at + j] -= out[j];
        }
        for (int j = 0; j < out.length; j++) {
            flux[at + j] += out[j];
        }
    }

    /** Nitrogen goes down with the water, layer by layer, so that what crosses several layers is carried on. */
    private void carry() {
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        double[] water = s.water;
        double[] flux = t.flux;
        double[] free = t.cell[0];
        double[] slow = t.cell[1];
        double[] sorbed = site.sorbed;
        for (int n = 0; n < free.length; n++) {
            free[n] = moved(flux[n], water[n], mixed);
        }
        for (int n = 0; n < free.length; n++) {
            slow[n] = free[n] * water[n] / (water[n] + sorbed[n]);
        }
        double[] leaving = t.column[0];
        carry(s.nitrate, free, leaving);
        book(leaving);
        if (s.anyUrea) {
            carry(s.urea, free, leaving);
            book(leaving);
        }
        carry(s.ammonium, slow, leaving);
        book(leaving);
        int n = s.members;
        int last = s.at(0, SeasonState.LAYERS - 1);
        double[] drained = s.ledger[Ledger.DRAINAGE.ordinal()];
        for (int m = 0; m < n; m++) {
            drained[m] += site.share[0] * flux[last + m] + site.share[1] * flux[last + n + m];
        }
    }

    private static void carry(double[] pool, double[] share, double[] leaving) {
        java.util.Arrays.fill(leaving, 0);
        for (int at = 0; at < pool.length; at += leaving.length) {
            for (int j = 0; j < leaving.length; j++) {
                pool[at + j] += leaving[j];
            }
            for (int j = 0; j < leaving.length; j++) {
                leaving[j] = pool[at + j] * share[at + j];
            }
            for (int j = 0; j < leaving.length; j++) {
                pool[at + j] -= leaving[j];
            }
        }
    }

    private void book(double[] leaving) {
        double[] leached = s.ledger[Ledger.LEACHED.ordinal()];
        int n = s.members;
        for (int m = 0; m < n; m++) {
            leached[m] += site.share[0] * leaving[m] + site.share[1] * leaving[n + m];
        }
    }

    private void sideways(int i) {
        int row = s.at(0, i);
        int middle = s.at(1, i);
        double fR = site.share[0];
        double fM = site.share[1];
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        double[] water = s.water;
        double[] sat = site.sat;
        double[] v = t.member[0];
        double[] toMiddle = t.member[1];
        double[] toRow = t.member[2];
        exchanged(row, middle, site.of(Parameter.LATERAL) * fR * fM / (fR + fM), v);
        // Towards the middle when positive; the receiver's room is the limit.
        for (int m = 0; m < v.length; m++) {
            toMiddle[m] = Math.min(Math.max(0, v[m]), Math.max(0, sat[middle + m] - water[middle + m]) * fM);
        }
        for (int m = 0; m < v.length; m++) {
            toRow[m] = Math.min(Math.max(0, -v[m]), Math.max(0, sat[row + m] - water[row + m]) * fR);
        }
        double[] shareOut = v;
        double[] shareIn = t.member[3];
        for (int m = 0; m < v.length; m++) {
            shareOut[m] = mixed * toMiddle[m] / (fR * Math.max(1e-300, water[row + m]));
        }
        for (int m = 0; m < v.length; m++) {
            shareIn[m] = mixed * toRow[m] / (fM * Math.max(1e-300, water[middle + m]));
        }
        for (int m = 0; m < v.length; m++) {
            water[row + m] += (toRow[m] - toMiddle[m]) / fR;
        }
        for (int m = 0; m < v.length; m++) {
            water[middle + m] += (toMiddle[m] - toRow[m]) / fM;
        }
        swap(s.nitrate, row, middle, shareOut, shareIn, toMiddle);
        if (s.anyUrea) {
            swap(s.urea, row, middle, shareOut, shareIn, toMiddle);
        }
    }

    /** Water that would go from row to middle [mm of field]; the mean of the two columns sets the pace. */
    private void exchanged(int row, int middle, double rate, double[] v) {
        double[] water = s.water;
        double[] wp = site.wp;
        double[] perRange = site.perRange;
        for (int m = 0; m < v.length; m++) {
            double mean = 0.5 * (water[row + m] + water[middle + m]);
            double wet = Lanes.clamp((mean - wp[row + m]) * perRange[row + m], 0, 1);
            v[m] = rate * wet * wet * wet * (water[row + m] - water[middle + m]);
        }
    }

    private void swap(double[] pool, int row, int middle, double[] shareOut, double[] shareIn, double[] net) {
        double fR = site.share[0];
        double fM = site.share[1];
        for (int m = 0; m < net.length; m++) {
            net[m] = pool[row + m] * shareOut[m] * fR - pool[middle + m] * shareIn[m] * fM;
        }
        for (int m = 0; m < net.length; m++) {
            pool[row + m] -= net[m] / fR;
        }
        for (int m = 0; m < net.length; m++) {
            pool[middle + m] += net[m] / fM;
        }
    }
}
