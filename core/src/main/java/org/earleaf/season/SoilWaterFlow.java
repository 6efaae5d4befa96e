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
        double[] entered = t.entered;
        if (!t.anyWater) {
            Arrays.fill(entered, 0);
            return;
        }
        double[] space = t.cell[0];
        double[] room = t.column[0];
        double[] spilled = t.column[1];
        double[] reaching = t.reaching;
        space(space);
        room(0, space, room);
        room(1, space, room);
        for (int j = 0; j < entered.length; j++) {
            entered[j] = Math.min(reaching[j], room[j]);
        }
        for (int j = 0; j < entered.length; j++) {
            spilled[j] = reaching[j] - entered[j];
        }
        Columns.book(spilled, site.share, s.ledger[Ledger.RUNOFF.ordinal()]);
    }

    /** Pores that are free. */
    private void space(double[] space) {
        double[] sat = site.sat;
        double[] water = s.water;
        for (int n = 0; n < space.length; n++) {
            space[n] = Lanes.positive(sat[n] - water[n]);
        }
    }

    /** What a column can hold and drain today. */
    private void room(int c, double[] space, double[] room) {
        int top = s.at(c, 0);
        System.arraycopy(site.drainMax, 0, room, top, s.members);
        for (int i = 0; i < SeasonState.LAYERS; i++) {
            int at = s.at(c, i);
            for (int m = 0; m < s.members; m++) {
                room[top + m] += space[at + m];
            }
        }
    }

    void step() {
        if (t.anyWater) {
            fill();
        } else {
            Arrays.fill(t.flux, 0);
        }
        System.arraycopy(s.water, 0, t.peak, 0, s.water.length);
        boolean moves = drain() | t.anyWater;
        if (moves) {
            carry();
        }
        sideways();
    }

    /** Each layer takes what it has room for, the rest goes on. */
    private void fill() {
        double[] space = t.cell[0];
        double[] flux = t.flux;
        for (int c = 0; c < 2; c++) {
            passOn(t.entered, s.at(c, 0), space, flux, s.at(c, 0));
            for (int i = 1; i < SeasonState.LAYERS; i++) {
                passOn(flux, s.at(c, i - 1), space, flux, s.at(c, i));
            }
        }
        double[] from = t.cell[1];
        Columns.fromAbove(flux, t.entered, from);
        double[] water = s.water;
        for (int n = 0; n < flux.length; n++) {
            water[n] += from[n] - flux[n];
        }
    }

    private void passOn(double[] from, int above, double[] space, double[] flux, int at) {
        for (int m = 0; m < s.members; m++) {
            flux[at + m] = Lanes.positive(from[above + m] - space[at + m]);
        }
    }

    /** Layers above field capacity drain, from the bottom up; false when none is. */
    private boolean drain() {
        double[] over = t.cell[0];
        double[] space = t.cell[1];
        double[] water = s.water;
        double[] fc = site.fc;
        double[] kd = site.drainShare;
        for (int n = 0; n < over.length; n++) {
            over[n] = Lanes.positive(water[n] - fc[n]) * kd[n];
        }
        if (!Columns.anyPositive(over)) {
            return false;
        }
        space(space);
        double[] out = t.cell[2];
        for (int c = 0; c < 2; c++) {
            int last = s.at(c, SeasonState.LAYERS - 1);
            for (int m = 0; m < s.members; m++) {
                out[last + m] = Math.min(over[last + m], Lanes.positive(site.drainMax[m] - t.flux[last + m]));
            }
            for (int i = SeasonState.LAYERS - 2; i >= 0; i--) {
                release(over, space, out, s.at(c, i), s.at(c, i + 1));
            }
        }
        settle(out);
        return true;
    }

    /** Into the layer below goes what fits there after that one has drained. */
    private void release(double[] over, double[] space, double[] out, int at, int below) {
        for (int m = 0; m < s.members; m++) {
            out[at + m] = Math.min(over[at + m], space[below + m] + out[below + m]);
        }
    }

    private void settle(double[] out) {
        double[] nothing = t.column[0];
        Arrays.fill(nothing, 0);
        double[] in = t.cell[0];
        Columns.fromAbove(out, nothing, in);
        double[] water = s.water;
        double[] flux = t.flux;
        for (int n = 0; n < out.length; n++) {
            water[n] += in[n] - out[n];
        }
        for (int n = 0; n < out.length; n++) {
            flux[n] += out[n];
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
        carry(s.ammonium, slow, leaving);
        if (s.anyUrea) {
            carry(s.urea, free, leaving);
        }
        double[] drained = t.column[0];
        for (int c = 0; c < 2; c++) {
            System.arraycopy(flux, s.at(c, SeasonState.LAYERS - 1), drained, s.at(c, 0), s.members);
        }
        Columns.book(drained, site.share, s.ledger[Ledger.DRAINAGE.ordinal()]);
    }

    private void carry(double[] pool, double[] share, double[] leaving) {
        Arrays.fill(leaving, 0);
        for (int c = 0; c < 2; c++) {
            for (int i = 0; i < SeasonState.LAYERS; i++) {
                carry(pool, share, s.at(c, i), leaving, s.at(c, 0));
            }
        }
        Columns.book(leaving, site.share, s.ledger[Ledger.LEACHED.ordinal()]);
    }

    private void carry(double[] pool, double[] share, int at, double[] leaving, int top) {
        for (int m = 0; m < s.members; m++) {
            double held = pool[at + m] + leaving[top + m];
            double gone = held * share[at + m];
            pool[at + m] = held - gone;
            leaving[top + m] = gone;
        }
    }

    /** Water between the two cells of each layer, and the nitrogen in it. */
    private void sideways() {
        double fR = site.share[0];
        double fM = site.share[1];
        double[] row = s.water;
        double[] middle = t.layer[0];
        int half = middle.length;
        System.arraycopy(row, half, middle, 0, half);
        double[] net = t.layer[1];
        double[] out = t.layer[2];
        double[] in = t.layer[3];
        exchanged(row, middle, net);
        double mixed = site.of(Parameter.SOLUTE_MIXED);
        for (int n = 0; n < half; n++) {
            out[n] = mixed * Lanes.positive(net[n]) / row[n];
        }
        for (int n = 0; n < half; n++) {
            in[n] = mixed * Lanes.positive(-net[n]) / middle[n];
        }
        for (int n = 0; n < half; n++) {
            row[n] -= net[n] / fR;
        }
        for (int n = 0; n < half; n++) {
            middle[n] += net[n] / fM;
        }
        System.arraycopy(middle, 0, s.water, half, half);
        swap(s.nitrate, out, in);
        if (s.anyUrea) {
            swap(s.urea, out, in);
        }
    }

    /** Water that goes from row to middle [mm of field], at most what there is room for on either side. */
    private void exchanged(double[] row, double[] middle, double[] net) {
        double fR = site.share[0];
        double fM = site.share[1];
        double rate = site.of(Parameter.LATERAL) * fR * fM / (fR + fM);
        double[] wp = site.wp;
        double[] sat = site.sat;
        double[] perRange = site.perRange;
        // The mean of the two columns sets the pace.
        for (int n = 0; n < net.length; n++) {
            double wet = Lanes.clamp((0.5 * (row[n] + middle[n]) - wp[n]) * perRange[n], 0, 1);
            net[n] = rate * wet * wet * wet * (row[n] - middle[n]);
        }
        for (int n = 0; n < net.length; n++) {
            double most = Math.min(net[n], (sat[n] - middle[n]) * fM);
            net[n] = Math.max(most, (row[n] - sat[n]) * fR);
        }
    }

    /** Takes along what is dissolved, each way; amounts are per area of column, flows per area of field. */
    private void swap(double[] row, double[] out, double[] in) {
        double perRow = 1 / site.share[0];
        double perMiddle = 1 / site.share[1];
        double[] middle = t.layer[4];
        double[] net = t.layer[5];
        int half = middle.length;
        System.arraycopy(row, half, middle, 0, half);
        for (int n = 0; n < half; n++) {
            net[n] = row[n] * out[n] - middle[n] * in[n];
        }
        for (int n = 0; n < half; n++) {
            row[n] -= net[n] * perRow;
        }
        for (int n = 0; n < half; n++) {
            middle[n] += net[n] * perMiddle;
        }
        System.arraycopy(middle, 0, row, half, half);
    }
}
