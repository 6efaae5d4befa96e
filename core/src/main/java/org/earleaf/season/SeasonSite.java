// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.List;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.units.EarleafException;

/** Ground and parameters of a run, laid out for the day loop: scalars where members agree, lanes where they may not. */
final class SeasonSite {
    static final int LAYERS = SoilProfile.LAYERS;
    /** Relative rate of organic matter by layer (own construct). */
    static final double[] DEPTH_RATE = {1, 1, .9, .4, .2, .1};
    /** Relative rate of denitrification by layer (own construct). */
    static final double[] CARBON_RATE = {1, 1, 1, .5, .2, .1};

    final SeasonSetup setup;
    final List<ParameterSet> sets;
    final int members;
    final double[] share = new double[2];
    final double[] dz = new double[LAYERS];
    final double[] ppm = new double[LAYERS];
    /** R - 1 of ammonium times water share: bulk density x Kd. */
    final double[] sorbed = new double[LAYERS];

    final double[] phMineralise = new double[LAYERS];
    final double[] phNitrify = new double[LAYERS];
    // lanes by layer, water in mm
    final double[][] wp;
    final double[][] fc;
    final double[][] sat;
    final double[][] drainShare;
    // lanes
    final double[] drainMax;
    final double[] silk;
    final double[] black;
    final double[] tassel;
    private final double[][] lanes = new double[Parameter.values().length][];

    SeasonSite(SeasonSetup setup, List<ParameterSet> sets) {
        this.setup = setup;
        this.sets = List.copyOf(sets);
        refuseDisagreement();
        this.members = sets.size();
        share[0] = setup.rowShare();
        share[1] = 1 - share[0];
        SoilProfile soil = setup.soil();
        for (int i = 0; i < LAYERS; i++) {
            dz[i] = SoilProfile.thickness_mm(i);
            double bd = soil.bulkDensity_gcm3().get(i);
            ppm[i] = bd * dz[i] / 100;
            sorbed[i] = bd * 0.2 * soil.cec_cmolKg().get(i);
            phMineralise[i] = SoilNitrogen.acidity(soil.ph().get(i));
            phNitrify[i] = SoilNitrogen.nitrifierAcidity(soil.ph().get(i));
        }
        for (Parameter p : Parameter.values()) {
            if (p.isPerMember()) {
                lanes[p.ordinal()] = sets.stream().mapToDouble(s -> s.of(p)).toArray();
            }
        }
        wp = new double[LAYERS][members];
        fc = new double[LAYERS][members];
        sat = new double[LAYERS][members];
        drainShare = new double[LAYERS][members];
        drainMax = new double[members];
        silk = new double[members];
        black = new double[members];
        tassel = new double[members];
        for (int m = 0; m < members; m++) {
            layOut(m, sets.get(m));
        }
    }

    /** A parameter without a spread is read once for all members; members that differ in it would be run wrongly. */
    private void refuseDisagreement() {
        for (Parameter p : Parameter.values()) {
            for (ParameterSet set : sets) {
                if (!p.isPerMember() && set.of(p) != of(p)) {
                    throw EarleafException.of(
                            "parameter " + p.name(),
                            set.of(p) + " for one member, " + of(p) + " for another",
                            "one value for all members of a run",
                            "Run those members apart.");
                }
            }
        }
    }

    private void layOut(int m, ParameterSet set) {
        for (int i = 0; i < LAYERS; i++) {
            SoilWater w = setup.soil().water().get(i);
            double available = set.of(Parameter.AVAILABLE_WATER) * (w.fc() - w.wp());
            wp[i][m] = w.wp() * dz[i];
            fc[i][m] = Math.min(w.wp() + available, w.sat() - 0.01) * dz[i];
            sat[i][m] = w.sat() * dz[i];
            drainShare[i][m] = SoilWaterFlow.drainShare(w.ksat_mmh() * set.of(Parameter.CONDUCTIVITY));
        }
        drainMax[m] = setup.drainMax_mm() * set.of(Parameter.DRAIN_RATE);
        SeasonSetup.Calendar marks = setup.calendar(set);
        silk[m] = marks.silk() + set.of(Parameter.SILK_SHIFT);
        black[m] = marks.blackLayer() + set.of(Parameter.SILK_SHIFT);
        tassel[m] = Phenology.collarsAt(
                silk[m], set.of(Parameter.EMERGENCE), earlyLeaf(set), lateLeaf(set), Double.POSITIVE_INFINITY);
    }

    private double earlyLeaf(ParameterSet set) {
        return setup.calendar().farNorth() ? Phenology.FAR_NORTH_LEAF : set.of(Parameter.LEAF_EARLY);
    }

    private double lateLeaf(ParameterSet set) {
        return setup.calendar().farNorth() ? Phenology.FAR_NORTH_LEAF : set.of(Parameter.LEAF_LATE);
    }

    double earlyLeaf() {
        return earlyLeaf(sets.get(0));
    }

    double lateLeaf() {
        return lateLeaf(sets.get(0));
    }

    /** A parameter on which all members agree. */
    double of(Parameter p) {
        return sets.get(0).of(p);
    }

    /** A parameter by member. */
    double[] lane(Parameter p) {
        return lanes[p.ordinal()];
    }
}
