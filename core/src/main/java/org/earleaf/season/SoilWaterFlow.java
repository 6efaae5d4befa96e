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
    /** Where the layers begin that today's water did not fill. */
    private int filled;

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

    /** 1/R of ammonium, R - 1 given as an amount of water. */
    static double retained(double water_mm, double sorbed_mm) {
        return water_mm / (water_mm + sorbed_mm);
    }

    /** What of the water reaching the ground goes in and how deep it fills the layers; the rest runs off. */
    void enter() {
        int layer = t.entered.length;
        Arrays.fill(t.flux, 0);
        System.arraycopy(t.reaching, 0, t.entered, 0, layer);
        filled = 0;
        if (!t.anyWater) {
            return;
        }
        passOn(t.entered, 0, site.sat, s.water, 0, t.flux);
        while (anyPositive(t.flux, filled, layer)) {
            filled += layer;
            if (filled == t.flux.length) {
                spill(filled - layer);
                return;
            }
            passOn(t.flux, filled - layer, site.sat, s.water, filled, t.flux);
        }
    }

    /** A layer takes what it has room for, the rest goes on. */
    private void passOn(double[] from, int above, double[] sat, double[] water, int at, double[] flux) {
        for (int j = 0; j < t.entered.length; j++) {
            double room = Lanes.positive(sat[at + j] - water[at + j]);
            flux[at + j] = Lanes.positive(from[above + j] - room);
        }
    }

    private static boolean anyPositive(double[] flux, int at, int layer) {
        for (int n = at; n < at + layer; n++) {
            if (flux[n] > 0) {
                return true;
            }
        }
        return false;
    }

    /** What the ground below cannot drain in a day never enters. */
    private void spill(int last) {
        double[] spilled = t.column[0];
        double[] flux = t.flux;
        Columns.spread(site.drainMax, spilled);
        for (int j = 0; j < spilled.length; j++) {
            spilled[j] = Lanes.positive(flux[last + j] - spilled[j]);
            t.entered[j] -= spilled[j];
        }
        for (int at = 0; at < flux.length; at += spilled.length) {
            for (int j = 0; j < spilled.length; j++) {
                flux[at + j] -= spilled[j];
            }
        }
        Columns.book(spilled, 0, site.share, s.ledger[Ledger.RUNOFF.ordinal()]);
    }

    void step() {
        int layer = t.entered.length;
        if (t.anyWater) {
            take(t.entered, 0, t.flux, 0, s.water);
            for (int at = layer; at <= filled && at < t.flux.length; at += layer) {
                take(t.flux, at - layer, t.flux, at, s.water);
            }
        }
        System.arraycopy(s.water, 0, t.peak, 0, s.water.length);
        if (drain() | filled > 0) {
            carry();
        }
        sideways();
    }

    private void take(double[] in, int above, double[] flux, int at, double[] water) {
        for (int j = 0; j < t.entered.length; j++) {
            water[at + j] += in[above + j] - flux[at + j];
        }
    }

    /** Layers above field capacity drain, from the bottom up; false when none is. */
    private boolean drain() {
        double[] over = t.cell[0];
        double[] space = t.space;
        over(s.water, site.fc, site.drainShare, site.sat, over, space);
        if (!Columns.anyPositive(over)) {
            return false;
        }
        double[] in = t.through;
        int layer = t.entered.length;
        int below = over.length;
        Columns.spread(site.drainMax, t.column[0]);
        stillDrains(t.column[0], t.flux, below - layer, space);
        release(over, space, in);
        double[] out = t.cell[1];
        System.arraycopy(in, layer, out, 0, below);
        settle(in, out, s.water, t.flux);
        return true;
    }

    /** What drains in a day if nothing is in its way, and the pores that are free. */
    private static void over(double[] water, double[] fc, double[] kd, double[] sat, double[] over, double[] space) {
        for (int n = 0; n < over.length; n++) {
            over[n] = Lanes.positive(water[n] - fc[n]) * kd[n];
            space[n] = Lanes.positive(sat[n] - water[n]);
        }
    }

    /** The ground below takes what it can drain in a day less what it got from the rain. */
    private static void stillDrains(double[] most, double[] flux, int last, double[] space) {
        for (int j = 0; j < most.length; j++) {
            space[last + most.length + j] = Lanes.positive(most[j] - flux[last + j]);
        }
    }

    /** Into the layer below goes what fits there after that one has drained. */
    private static void release(double[] over, double[] space, double[] in) {
        int layer = in.length - over.length;
        double[] free = space;
        for (int n = over.length - 1; n >= 0; n--) {
            in[n + layer] = Math.min(over[n], free[n + layer]);
            // The pores above open by what goes down.
            free[n] += in[n + layer];
        }
    }

    private static void settle(double[] in, double[] out, double[] water, double[] flux) {
        for (int n = 0; n < water.length; n++) {
            water[n] += in[n] - out[n];
            flux[n] += out[n];
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
            slow[n] = free[n] * retained(water[n], sorbed[n]);
        }
    }

    private void carry(double[] pool, double[] share) {
        carry(pool, share, t.through);
        Columns.book(t.through, pool.length, site.share, s.ledger[Ledger.LEACHED.ordinal()]);
    }

    private static void carry(double[] pool, double[] share, double[] in) {
        int layer = in.length - pool.length;
        for (int n = 0; n < pool.length; n++) {
            double held = pool[n] + in[n];
            double gone = held * share[n];
            pool[n] = held - gone;
            in[n + layer] = gone;
        }
    }

    /** Water between the two cells of each layer, and the nitrogen in it. */
    private void sideways() {
        double[] row = t.layer[0];
        double[] middle = t.layer[1];
        double[] net = t.layer[2];
        double[] out = t.layer[3];
        double[] in = t.layer[4];
        Columns.part(s.water, row, middle);
        double fR = site.share[0];
        double fM = site.share[1];
        wouldGo(row, middle, site.layerWp, site.layerPerRange, site.of(Parameter.LATERAL) * fR * fM / (fR + fM), net);
        canGo(row, middle, site.layerSat, fR, fM, net);
        takenAlong(row, middle, net, site.of(Parameter.SOLUTE_MIXED), 1 / fR, 1 / fM, out, in);
        Columns.join(row, middle, s.water);
        swap(s.nitrate, out, in);
        if (s.anyUrea) {
            swap(s.urea, out, in);
        }
    }

    /** Water from row to middle [mm of field]; the mean of the two columns sets the pace. */
    private static void wouldGo(
            double[] row, double[] middle, double[] wp, double[] perRange, double rate, double[] net) {
        for (int n = 0; n < net.length; n++) {
            double wet = Lanes.share((0.5 * (row[n] + middle[n]) - wp[n]) * perRange[n]);
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

    /** Moves the water; shares of what is dissolved in a row cell and in a middle cell that go along. */
    private static void takenAlong(
            double[] row,
            double[] middle,
            double[] net,
            double mixed,
            double perRow,
            double perMiddle,
            double[] out,
            double[] in) {
        for (int n = 0; n < net.length; n++) {
            double toMiddle = Lanes.positive(net[n]);
            double perBoth = mixed / (row[n] * middle[n]);
            out[n] = toMiddle * middle[n] * perBoth;
            in[n] = (toMiddle - net[n]) * row[n] * perBoth;
            row[n] -= net[n] * perRow;
            middle[n] += net[n] * perMiddle;
        }
    }

    private void swap(double[] pool, double[] out, double[] in) {
        double[] row = t.layer[0];
        double[] middle = t.layer[1];
        Columns.part(pool, row, middle);
        swap(row, middle, out, in, 1 / site.share[0], 1 / site.share[1]);
        Columns.join(row, middle, pool);
    }

    private static void swap(
            double[] row, double[] middle, double[] out, double[] in, double perRow, double perMiddle) {
        for (int n = 0; n < row.length; n++) {
            double net = row[n] * out[n] - middle[n] * in[n];
            row[n] -= net * perRow;
            middle[n] += net * perMiddle;
        }
    }
}
