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
    // by cell and member, as in SeasonState; water in mm
    final double[] wp;
    final double[] fc;
    final double[] sat;
    /** Reciprocals of the wilting point, of the available range and of saturation. */
    final double[] perWp;

    final double[] perRange;
    final double[] perSat;
    final double[] drainShare;
    /** (R - 1) of ammonium times water [mm]. */
    final double[] sorbed;

    final double[] ammoniumFloor;
    final double[] nitrateFloor;
    // rates with the parts of them that never change
    final double[] mineralising;
    final double[] nitrifying;
    final double[] takingBack;
    final double[] denitrifying;
    /** Share of the mineral nitrogen of top cells within reach of residue, by column. */
    final double[] residueReach;
    // by member
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
        for (int i = 0; i < LAYERS; i++) {
            dz[i] = SoilProfile.thickness_mm(i);
            ppm[i] = setup.soil().bulkDensity_gcm3().get(i) * dz[i] / 100;
        }
        for (Parameter p : Parameter.values()) {
            if (p.isPerMember()) {
                lanes[p.ordinal()] = sets.stream().mapToDouble(s -> s.of(p)).toArray();
            }
        }
        wp = new double[2 * LAYERS * members];
        fc = new double[2 * LAYERS * members];
        sat = new double[2 * LAYERS * members];
        perWp = new double[2 * LAYERS * members];
        perRange = new double[2 * LAYERS * members];
        perSat = new double[2 * LAYERS * members];
        drainShare = new double[2 * LAYERS * members];
        sorbed = new double[2 * LAYERS * members];
        ammoniumFloor = new double[2 * LAYERS * members];
        nitrateFloor = new double[2 * LAYERS * members];
        mineralising = new double[2 * LAYERS * members];
        nitrifying = new double[2 * LAYERS * members];
        takingBack = new double[2 * LAYERS * members];
        denitrifying = new double[2 * LAYERS * members];
        residueReach = new double[SeasonState.COLUMNS * members];
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
            for (int c = 0; c < 2; c++) {
                water(i, (c * LAYERS + i) * members + m, set);
                nitrogen(i, (c * LAYERS + i) * members + m, set);
            }
        }
        residueReach[m] = set.of(Parameter.RESIDUE_REACH);
        residueReach[LAYERS * members + m] = residueReach[m];
        drainMax[m] = setup.drainMax_mm() * set.of(Parameter.DRAIN_RATE);
        SeasonSetup.Calendar marks = setup.calendar(set);
        silk[m] = marks.silk() + set.of(Parameter.SILK_SHIFT);
        black[m] = marks.blackLayer() + set.of(Parameter.SILK_SHIFT);
        tassel[m] = Phenology.collarsAt(
                silk[m], set.of(Parameter.EMERGENCE), earlyLeaf(set), lateLeaf(set), Double.POSITIVE_INFINITY);
    }

    private void water(int i, int at, ParameterSet set) {
        SoilWater w = setup.soil().water().get(i);
        double available = set.of(Parameter.AVAILABLE_WATER) * (w.fc() - w.wp());
        wp[at] = w.wp() * dz[i];
        fc[at] = Math.min(w.wp() + available, w.sat() - 0.01) * dz[i];
        sat[at] = w.sat() * dz[i];
        perWp[at] = 1 / wp[at];
        perRange[at] = 1 / (fc[at] - wp[at]);
        perSat[at] = 1 / sat[at];
        drainShare[at] = SoilWaterFlow.drainShare(w.ksat_mmh() * set.of(Parameter.CONDUCTIVITY));
    }

    private void nitrogen(int i, int at, ParameterSet set) {
        SoilProfile soil = setup.soil();
        double ph = soil.ph().get(i);
        sorbed[at] = SoilWaterFlow.sorbed(
                        soil.bulkDensity_gcm3().get(i), soil.cec_cmolKg().get(i))
                * dz[i];
        ammoniumFloor[at] = set.of(Parameter.AMMONIUM_FLOOR) * ppm[i];
        nitrateFloor[at] = set.of(Parameter.NITRATE_FLOOR) * ppm[i];
        mineralising[at] = set.of(Parameter.MINERALISATION) * DEPTH_RATE[i] * SoilNitrogen.acidity(ph);
        takingBack[at] = set.of(Parameter.TAKE_BACK) * DEPTH_RATE[i] * SoilNitrogen.acidity(ph);
        nitrifying[at] = set.of(Parameter.NITRIFICATION) * SoilNitrogen.nitrifierAcidity(ph);
        denitrifying[at] = set.of(Parameter.DENITRIFICATION) * CARBON_RATE[i];
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
