// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import org.earleaf.season.SeasonState.Ledger;
import org.earleaf.season.parameter.Parameter;

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
        System.arraycopy(t.reaching, 0, t.arriving, 0, layer);
        boolean goesOn = true;
        while (goesOn) {
            passOn(t.arriving, site.sat, s.water, t.flux, filled, filled + layer);
            goesOn = anyPositive(t.flux, filled, filled + layer);
            System.arraycopy(t.flux, filled, t.arriving, filled + layer, layer);
            filled += layer;
            if (goesOn && filled == t.flux.length) {
                spill();
                goesOn = false;
            }
        }
    }

    /** A layer takes what it has room for, the rest goes on. */
    private static void passOn(double[] in, double[] sat, double[] water, double[] flux, int at, int end) {
        for (int n = at; n < end; n++) {
            double room = Lanes.positive(sat[n] - water[n]);
            flux[n] = Lanes.positive(in[n] - room);
        }
    }

    private static boolean anyPositive(double[] flux, int at, int end) {
        for (int n = at; n < end; n++) {
            if (flux[n] > 0) {
                return true;
            }
        }
        return false;
    }

    /** What the ground below cannot drain in a day never enters. */
    private void spill() {
        int layer = t.entered.length;
        int ground = t.flux.length;
        double[] spilled = t.column[0];
        double[] most = t.column[1];
        Columns.spread(site.drainMax, most);
        System.arraycopy(t.arriving, ground, spilled, 0, layer);
        tooMuch(most, spilled);
        double[] everywhere = t.cell[0];
        Columns.spread(spilled, everywhere);
        less(everywhere, t.flux);
        less(everywhere, t.arriving);
        less(spilled, t.entered);
        Columns.book(spilled, 0, site.share, t.member[0], s.ledger[Ledger.RUNOFF.ordinal()]);
    }

    private static void tooMuch(double[] most, double[] arriving) {
        for (int j = 0; j < most.length; j++) {
            arriving[j] = Lanes.positive(arriving[j] - most[j]);
        }
    }

    private static void less(double[] by, double[] amounts) {
        for (int n = 0; n < by.length; n++) {
            amounts[n] -= by[n];
        }
    }

    void step() {
        if (t.anyWater) {
            take(t.arriving, t.flux, s.water, filled);
        }
        System.arraycopy(s.water, 0, t.peak, 0, s.water.length);
        if (drain() | filled > t.entered.length) {
            carry();
        }
        sideways();
    }

    private static void take(double[] in, double[] flux, double[] water, int end) {
        for (int n = 0; n < end; n++) {
            water[n] += in[n] - flux[n];
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
        double[] out = t.cell[1];
        release(over, space, out);
        double[] in = t.through;
        int layer = t.entered.length;
        System.arraycopy(out, 0, in, layer, out.length);
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

    /** Into the layer below goes what fits there after that one has drained. */
    private void release(double[] over, double[] space, double[] out) {
        double[] below = t.cell[2];
        int layer = t.entered.length;
        int at = over.length - layer;
        ground(at, below);
        if (s.members == 1) {
            releaseOne(over, below, out, space);
            return;
        }
        release(over, below, out, space, at, over.length);
        while (at > 0) {
            System.arraycopy(space, at, below, at - layer, layer);
            release(over, below, out, space, at - layer, at);
            at -= layer;
        }
    }

    /** The same for one member by itself in one loop. */
    private static void releaseOne(double[] over, double[] below, double[] out, double[] space) {
        for (int n = over.length - 1; n >= 0; n--) {
            double free = n + 2 < over.length ? space[n + 2] : below[n];
            out[n] = Math.min(over[n], free);
            space[n] += out[n];
        }
    }

    /** The ground below takes what it can drain in a day less what it got from the rain. */
    private void ground(int last, double[] below) {
        double[] most = t.column[0];
        double[] got = t.column[1];
        Columns.spread(site.drainMax, most);
        System.arraycopy(t.flux, last, got, 0, got.length);
        stillDrains(got, most);
        System.arraycopy(most, 0, below, last, most.length);
    }

    private static void stillDrains(double[] got, double[] most) {
        for (int j = 0; j < most.length; j++) {
            most[j] = Lanes.positive(most[j] - got[j]);
        }
    }

    private static void release(double[] over, double[] below, double[] out, double[] space, int at, int end) {
        for (int n = at; n < end; n++) {
            out[n] = Math.min(over[n], below[n]);
            // The pores of this layer open by what goes down.
            space[n] += out[n];
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
        Columns.book(t.flux, last, site.share, t.member[0], s.ledger[Ledger.DRAINAGE.ordinal()]);
    }

    private static void movedShares(
            double[] flux, double[] water, double[] sorbed, double mixed, double[] free, double[] slow) {
        for (int n = 0; n < free.length; n++) {
            free[n] = moved(flux[n], water[n], mixed);
            slow[n] = free[n] * retained(water[n], sorbed[n]);
        }
    }

    private void carry(double[] pool, double[] share) {
        double[] in = t.through;
        double[] out = t.cell[2];
        int layer = t.entered.length;
        if (s.members == 1) {
            carryOne(in, share, pool);
        }
        for (int at = 0; s.members > 1 && at < pool.length; at += layer) {
            carry(in, share, pool, out, at, at + layer);
            System.arraycopy(out, at, in, at + layer, layer);
        }
        Columns.book(in, pool.length, site.share, t.member[0], s.ledger[Ledger.LEACHED.ordinal()]);
    }

    /** The same for one member by itself in one loop. */
    private static void carryOne(double[] in, double[] share, double[] pool) {
        for (int n = 0; n < pool.length; n++) {
            double held = pool[n] + in[n];
            double gone = held * share[n];
            pool[n] = held - gone;
            in[n + 2] = gone;
        }
    }

    private static void carry(double[] in, double[] share, double[] pool, double[] out, int at, int end) {
        for (int n = at; n < end; n++) {
            double held = pool[n] + in[n];
            out[n] = held * share[n];
            pool[n] = held - out[n];
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
        takenAlong(row, middle, net, out, in);
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
    private void takenAlong(double[] row, double[] middle, double[] net, double[] out, double[] in) {
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        double perRow = 1 / site.share[0];
        double perMiddle = 1 / site.share[1];
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
