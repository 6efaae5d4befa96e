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
        sideways();
    }

    /** Both columns of a layer: filled to saturation, the rest goes on. */
    private void fill(int at, double[] left) {
        double[] put = t.column[1];
        fitting(left, site.sat, s.water, at, put);
        Lane.subtract(left, put);
        Lane.add(s.water, at, put);
        System.arraycopy(left, 0, t.flux, at, left.length);
    }

    private static void fitting(double[] left, double[] sat, double[] water, int at, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = Math.min(left[j], Math.max(0, sat[at + j] - water[at + j]));
        }
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
        draining(s.water, site.fc, site.drainShare, last, limit, out);
        release(last, out);
        for (int at = last - 2 * n; at >= 0; at -= 2 * n) {
            room(site.sat, s.water, at + 2 * n, limit);
            draining(s.water, site.fc, site.drainShare, at, limit, out);
            release(at, out);
            Lane.add(s.water, at + 2 * n, out);
        }
    }

    private static void room(double[] sat, double[] water, int at, double[] out) {
        for (int j = 0; j < out.length; j++) {
            out[j] = sat[at + j] - water[at + j];
        }
    }

    private static void draining(double[] water, double[] fc, double[] kd, int at, double[] limit, double[] out) {
        for (int j = 0; j < out.length; j++) {
            double over = Math.max(0, water[at + j] - fc[at + j]) * kd[at + j];
            out[j] = Math.min(over, Math.max(0, limit[j]));
        }
    }

    private void release(int at, double[] out) {
        Lane.subtract(s.water, at, out);
        Lane.add(t.flux, at, out);
    }

    /** Nitrogen goes down with the water, layer by layer, so that what crosses several layers is carried on. */
    private void carry() {
        double[] free = t.cell[0];
        double[] slow = t.cell[1];
        movedShares(t.flux, s.water, site.of(Parameter.SOLUTE_MIXED), free);
        slowed(free, s.water, site.sorbed, slow);
        double[] leaving = t.column[0];
        double[] leached = s.ledger[Ledger.LEACHED.ordinal()];
        carry(s.nitrate, free, leaving);
        Lane.addColumns(leached, leaving, 0, site.share);
        if (s.anyUrea) {
            carry(s.urea, free, leaving);
            Lane.addColumns(leached, leaving, 0, site.share);
        }
        carry(s.ammonium, slow, leaving);
        Lane.addColumns(leached, leaving, 0, site.share);
        int last = s.at(0, SeasonState.LAYERS - 1);
        Lane.addColumns(s.ledger[Ledger.DRAINAGE.ordinal()], t.flux, last, site.share);
    }

    private static void movedShares(double[] flux, double[] water, double mixed, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = moved(flux[n], water[n], mixed);
        }
    }

    /** Ammonium goes with the water R times slower. */
    private static void slowed(double[] share, double[] water, double[] sorbed, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = share[n] * water[n] / (water[n] + sorbed[n]);
        }
    }

    private static void carry(double[] pool, double[] share, double[] leaving) {
        java.util.Arrays.fill(leaving, 0);
        for (int at = 0; at < pool.length; at += leaving.length) {
            pass(pool, share, at, leaving);
        }
    }

    /** What came from above joins the layer; its share goes on. */
    private static void pass(double[] pool, double[] share, int at, double[] leaving) {
        for (int j = 0; j < leaving.length; j++) {
            double held = pool[at + j] + leaving[j];
            double out = held * share[at + j];
            leaving[j] = out;
            pool[at + j] = held - out;
        }
    }

    /** Both columns side by side, all layers at once: rows in one array, middles in another. */
    private void sideways() {
        double fR = site.share[0];
        double fM = site.share[1];
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        double[] row = t.layer[0];
        double[] middle = t.layer[1];
        double[] v = t.layer[2];
        double[] room = t.layer[3];
        Columns.part(s.water, 0, s.members, row);
        Columns.part(s.water, 1, s.members, middle);
        double rate = site.of(Parameter.LATERAL) * fR * fM / (fR + fM);
        exchanged(row, middle, site.layerWp, site.layerPerRange, rate, v);
        limited(middle, site.layerSat, fM, v, room);
        limited(row, site.layerSat, -fR, room, v);
        swap(s.nitrate, row, middle, mixed, v);
        if (s.anyUrea) {
            swap(s.urea, row, middle, mixed, v);
        }
        Lane.addScaled(row, -1 / fR, v);
        Lane.addScaled(middle, 1 / fM, v);
        Columns.join(row, 0, s.members, s.water);
        Columns.join(middle, 1, s.members, s.water);
    }

    /** Water that would go from row to middle [mm of field]; the mean of the two columns sets the pace. */
    private static void exchanged(
            double[] row, double[] middle, double[] wp, double[] perRange, double rate, double[] out) {
        for (int n = 0; n < out.length; n++) {
            double mean = 0.5 * (row[n] + middle[n]);
            double wet = Lanes.clamp((mean - wp[n]) * perRange[n], 0, 1);
            out[n] = rate * wet * wet * wet * (row[n] - middle[n]);
        }
    }

    /** No more than the receiver has room for; the share is below 0 where water goes the other way. */
    private static void limited(double[] water, double[] sat, double share, double[] v, double[] out) {
        double sign = Math.signum(share);
        double size = Math.abs(share);
        for (int n = 0; n < out.length; n++) {
            out[n] = sign * Math.min(sign * v[n], Math.max(0, sat[n] - water[n]) * size);
        }
    }

    /** Solute goes along with the water. */
    private void swap(double[] pool, double[] rowWater, double[] middleWater, double mixed, double[] v) {
        double[] row = t.layer[4];
        double[] middle = t.layer[5];
        double[] net = t.layer[3];
        Columns.part(pool, 0, s.members, row);
        Columns.part(pool, 1, s.members, middle);
        net(row, rowWater, middle, middleWater, mixed, v, net);
        Lane.addScaled(row, -1 / site.share[0], net);
        Lane.addScaled(middle, 1 / site.share[1], net);
        Columns.join(row, 0, s.members, pool);
        Columns.join(middle, 1, s.members, pool);
    }

    /** From row to middle, less what comes back [kg/ha of field]. */
    private static void net(
            double[] row,
            double[] rowWater,
            double[] middle,
            double[] middleWater,
            double mixed,
            double[] v,
            double[] out) {
        for (int n = 0; n < out.length; n++) {
            double go = Math.max(0, v[n]) * row[n] / Math.max(1e-300, rowWater[n]);
            double come = Math.min(0, v[n]) * middle[n] / Math.max(1e-300, middleWater[n]);
            out[n] = mixed * (go + come);
        }
    }
}
