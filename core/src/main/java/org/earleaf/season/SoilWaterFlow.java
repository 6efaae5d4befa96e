// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
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
    /** Whether today's water goes below the top layer of any column. */
    private boolean deeper;

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
        return mixed * flux_mm / (water_mm + flux_mm);
    }

    /** What of the water reaching the ground goes in; the rest runs off. */
    void enter() {
        deeper = false;
        if (!t.anyWater) {
            Arrays.fill(t.entered, 0);
            return;
        }
        double[] space = t.cell[0];
        space(site.sat, s.water, space);
        deeper = exceeds(t.reaching, space);
        if (!deeper) {
            System.arraycopy(t.reaching, 0, t.entered, 0, t.entered.length);
            return;
        }
        double[] room = t.column[0];
        double[] spilled = t.column[1];
        Columns.spread(site.drainMax, room);
        for (int at = 0; at < space.length; at += room.length) {
            addLayer(space, at, room);
        }
        letIn(t.reaching, room, t.entered, spilled);
        Columns.book(spilled, 0, site.share, s.ledger[Ledger.RUNOFF.ordinal()]);
    }

    /** Pores that are free. */
    private static void space(double[] sat, double[] water, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = Lanes.positive(sat[n] - water[n]);
        }
    }

    /** Whether more reaches any column than its top layer takes. */
    private static boolean exceeds(double[] reaching, double[] space) {
        for (int j = 0; j < reaching.length; j++) {
            if (reaching[j] > space[j]) {
                return true;
            }
        }
        return false;
    }

    private static void addLayer(double[] cells, int at, double[] sum) {
        for (int j = 0; j < sum.length; j++) {
            sum[j] += cells[at + j];
        }
    }

    private static void letIn(double[] reaching, double[] room, double[] entered, double[] spilled) {
        for (int j = 0; j < entered.length; j++) {
            entered[j] = Math.min(reaching[j], room[j]);
            spilled[j] = reaching[j] - entered[j];
        }
    }

    void step() {
        if (deeper) {
            fill();
        } else {
            Arrays.fill(t.flux, 0);
            addTop(s.water, t.entered);
        }
        System.arraycopy(s.water, 0, t.peak, 0, s.water.length);
        if (drain() | deeper) {
            carry();
        }
        sideways();
    }

    private static void addTop(double[] water, double[] entered) {
        for (int j = 0; j < entered.length; j++) {
            water[j] += entered[j];
        }
    }

    /** Each layer takes what it has room for, the rest goes on. */
    private void fill() {
        double[] space = t.cell[0];
        double[] left = t.column[0];
        System.arraycopy(t.entered, 0, left, 0, left.length);
        for (int at = 0; at < space.length; at += left.length) {
            fill(left, space, at, s.water, t.flux);
        }
    }

    private static void fill(double[] left, double[] space, int at, double[] water, double[] flux) {
        for (int j = 0; j < left.length; j++) {
            double on = Lanes.positive(left[j] - space[at + j]);
            water[at + j] += left[j] - on;
            flux[at + j] = on;
            left[j] = on;
        }
    }

    /** Layers above field capacity drain, from the bottom up; false when none is. */
    private boolean drain() {
        double[] over = t.cell[0];
        double[] space = t.cell[1];
        double[] out = t.column[0];
        over(s.water, site.fc, site.drainShare, over);
        if (!Columns.anyPositive(over)) {
            return false;
        }
        space(site.sat, s.water, space);
        int last = over.length - out.length;
        Columns.spread(site.drainMax, out);
        release(over, last, out, t.flux, s.water);
        for (int at = last - out.length; at >= 0; at -= out.length) {
            release(over, space, at, out, t.flux, s.water);
        }
        return true;
    }

    /** What drains in a day if nothing is in its way. */
    private static void over(double[] water, double[] fc, double[] kd, double[] out) {
        for (int n = 0; n < out.length; n++) {
            out[n] = Lanes.positive(water[n] - fc[n]) * kd[n];
        }
    }

    /** Out of the lowest layer goes at most what {@code out} holds less what went today. */
    private static void release(double[] over, int at, double[] out, double[] flux, double[] water) {
        for (int j = 0; j < out.length; j++) {
            out[j] = Math.min(over[at + j], Lanes.positive(out[j] - flux[at + j]));
            water[at + j] -= out[j];
            flux[at + j] += out[j];
        }
    }

    /** Into the layer below goes what fits there after that one has drained. */
    private static void release(double[] over, double[] space, int at, double[] out, double[] flux, double[] water) {
        int below = at + out.length;
        for (int j = 0; j < out.length; j++) {
            double down = Math.min(over[at + j], space[below + j] + out[j]);
            water[at + j] -= down;
            water[below + j] += down;
            flux[at + j] += down;
            out[j] = down;
        }
    }

    /** Nitrogen goes down with the water, layer by layer, so that what crosses several layers is carried on. */
    private void carry() {
        double[] free = t.cell[0];
        double[] slow = t.cell[1];
        movedShares(t.flux, s.water, site.sorbed, site.of(Parameter.SOLUTE_MIXED), free, slow);
        carry(s.nitrate, free);
        carry(s.ammonium, slow);
        if (s.anyUrea) {
            carry(s.urea, free);
        }
        int last = s.at(0, SeasonState.LAYERS - 1);
        Columns.book(t.flux, last, site.share, s.ledger[Ledger.DRAINAGE.ordinal()]);
    }

    private static void movedShares(
            double[] flux, double[] water, double[] sorbed, double mixed, double[] free, double[] slow) {
        for (int n = 0; n < free.length; n++) {
            free[n] = moved(flux[n], water[n], mixed);
            slow[n] = free[n] * water[n] / (water[n] + sorbed[n]);
        }
    }

    private void carry(double[] pool, double[] share) {
        double[] leaving = t.column[0];
        Arrays.fill(leaving, 0);
        for (int at = 0; at < pool.length; at += leaving.length) {
            carry(pool, share, at, leaving);
        }
        Columns.book(leaving, 0, site.share, s.ledger[Ledger.LEACHED.ordinal()]);
    }

    private static void carry(double[] pool, double[] share, int at, double[] leaving) {
        for (int j = 0; j < leaving.length; j++) {
            double held = pool[at + j] + leaving[j];
            double gone = held * share[at + j];
            pool[at + j] = held - gone;
            leaving[j] = gone;
        }
    }

    /** Water between the two cells of each layer, and the nitrogen in it. */
    private void sideways() {
        double[] row = t.layer[0];
        double[] middle = t.layer[1];
        double[] net = t.layer[2];
        double[] out = t.layer[3];
        double[] in = t.layer[4];
        Columns.part(s.water, 0, row);
        Columns.part(s.water, 1, middle);
        double fR = site.share[0];
        double fM = site.share[1];
        wouldGo(row, middle, site.layerWp, site.layerPerRange, site.of(Parameter.LATERAL) * fR * fM / (fR + fM), net);
        canGo(row, middle, site.layerSat, fR, fM, net);
        takenAlong(row, middle, net, site.of(Parameter.SOLUTE_MIXED), out, in);
        exchange(row, middle, net, 1 / fR, 1 / fM);
        Columns.join(row, 0, s.water);
        Columns.join(middle, 1, s.water);
        swap(s.nitrate, out, in);
        if (s.anyUrea) {
            swap(s.urea, out, in);
        }
    }

    /** Water from row to middle [mm of field]; the mean of the two columns sets the pace. */
    private static void wouldGo(
            double[] row, double[] middle, double[] wp, double[] perRange, double rate, double[] net) {
        for (int n = 0; n < net.length; n++) {
            double wet = Lanes.clamp((0.5 * (row[n] + middle[n]) - wp[n]) * perRange[n], 0, 1);
            net[n] = rate * wet * wet * wet * (row[n] - middle[n]);
        }
    }

    /** At most what there is room for on either side. */
    private static void canGo(double[] row, double[] middle, double[] sat, double fR, double fM, double[] net) {
        for (int n = 0; n < net.length; n++) {
            double most = Math.min(net[n], (sat[n] - middle[n]) * fM);
            net[n] = Math.max(most, (row[n] - sat[n]) * fR);
        }
    }

    /** Shares of what is dissolved in a row cell and in a middle cell that go along. */
    private static void takenAlong(
            double[] row, double[] middle, double[] net, double mixed, double[] out, double[] in) {
        for (int n = 0; n < net.length; n++) {
            double toMiddle = Lanes.positive(net[n]);
            out[n] = mixed * toMiddle / row[n];
            in[n] = mixed * (toMiddle - net[n]) / middle[n];
        }
    }

    /** A flow on the area of the field, out of amounts on the areas of the columns. */
    private static void exchange(double[] row, double[] middle, double[] net, double perRow, double perMiddle) {
        for (int n = 0; n < net.length; n++) {
            row[n] -= net[n] * perRow;
            middle[n] += net[n] * perMiddle;
        }
    }

    private void swap(double[] pool, double[] out, double[] in) {
        double[] row = t.layer[0];
        double[] middle = t.layer[1];
        double[] net = t.layer[2];
        Columns.part(pool, 0, row);
        Columns.part(pool, 1, middle);
        net(row, middle, out, in, net);
        exchange(row, middle, net, 1 / site.share[0], 1 / site.share[1]);
        Columns.join(row, 0, pool);
        Columns.join(middle, 1, pool);
    }

    private static void net(double[] row, double[] middle, double[] out, double[] in, double[] net) {
        for (int n = 0; n < net.length; n++) {
            net[n] = row[n] * out[n] - middle[n] * in[n];
        }
    }
}
