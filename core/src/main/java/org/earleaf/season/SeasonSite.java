// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;

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
    /** Day of the run on which the crop is planted. */
    final int plantedDay;

    final double earlyLeaf;
    final double lateLeaf;
    // by layer and member; water in mm
    final double[] layerWp;
    final double[] layerSat;
    final double[] layerPerRange;
    // by cell and member, as in SeasonState; water in mm
    final double[] wp;
    final double[] fc;
    final double[] sat;
    /** Reciprocals of the wilting point, of the available range, of saturation, and of half the way below wilting. */
    final double[] perWp;

    final double[] perRange;
    final double[] perSat;
    final double[] perUreaRange;
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
    /** Water of the top foot: at the wilting point, the reciprocal of the range available, at saturation [mm]. */
    final double[] footWp;

    final double[] perFootRange;
    final double[] footSat;
    final double[] drainMax;
    final double[] silk;
    final double[] black;
    final double[] tassel;
    private final double[][] lanes = new double[Parameter.values().length][];
    private final double[] agreed = new double[Parameter.values().length];
    /** Everything above that is laid out by layer or member, in the order of the constructor. */
    private final List<double[]> laid = new ArrayList<>();

    // only while laying out: a site must not keep its trunk alive
    private @Nullable SeasonSite trunk;
    private int[] from;

    SeasonSite(SeasonSetup setup, List<ParameterSet> sets) {
        this(setup, sets, null, new int[0]);
        refuseDisagreement();
    }

    /** The site of members of another run: nothing is computed anew. */
    SeasonSite(SeasonSite trunk, int[] from) {
        this(trunk.setup, Arrays.stream(from).mapToObj(trunk.sets::get).toList(), trunk, from);
    }

    private SeasonSite(SeasonSetup setup, List<ParameterSet> sets, @Nullable SeasonSite trunk, int[] from) {
        this.setup = setup;
        this.sets = List.copyOf(sets);
        this.members = sets.size();
        this.trunk = trunk;
        this.from = from;
        SoilProfile soil = setup.soil();
        share[0] = setup.rowShare();
        share[1] = 1 - share[0];
        for (int i = 0; i < LAYERS; i++) {
            dz[i] = SoilProfile.thickness_mm(i);
            ppm[i] = soil.bulkDensity_gcm3().get(i) * dz[i] / 100;
        }
        for (Parameter p : Parameter.values()) {
            agreed[p.ordinal()] = sets.get(0).of(p);
            if (p.isPerMember()) {
                lanes[p.ordinal()] = byMember(set -> set.of(p));
            }
        }
        plantedDay = (int) (setup.crop().planted().toEpochDay() - setup.first().toEpochDay());
        boolean north = setup.calendar().farNorth();
        earlyLeaf = north ? Phenology.FAR_NORTH_LEAF : of(Parameter.LEAF_EARLY);
        lateLeaf = north ? Phenology.FAR_NORTH_LEAF : of(Parameter.LEAF_LATE);

        List<SoilWater> water = soil.water();
        layerWp = byLayer((i, set) -> water.get(i).wp() * dz[i]);
        layerSat = byLayer((i, set) -> water.get(i).sat() * dz[i]);
        double[] layerFc = byLayer((i, set) -> fieldCapacity(water.get(i), set) * dz[i]);
        layerPerRange = perDifference(layerFc, layerWp, 1);
        wp = cells(layerWp);
        sat = cells(layerSat);
        fc = cells(layerFc);
        perRange = cells(layerPerRange);
        perWp = reciprocals(wp);
        perSat = reciprocals(sat);
        perUreaRange = cells(perDifference(layerFc, layerWp, .5));
        drainShare = cells(byLayer(
                (i, set) -> SoilWaterFlow.drainShare(water.get(i).ksat_mmh() * set.of(Parameter.CONDUCTIVITY))));
        sorbed = cells(byLayer((i, set) -> dz[i]
                * SoilWaterFlow.sorbed(
                        soil.bulkDensity_gcm3().get(i), soil.cec_cmolKg().get(i))));
        ammoniumFloor = cells(byLayer((i, set) -> set.of(Parameter.AMMONIUM_FLOOR) * ppm[i]));
        nitrateFloor = cells(byLayer((i, set) -> set.of(Parameter.NITRATE_FLOOR) * ppm[i]));
        List<Double> ph = soil.ph();
        mineralising = cells(byLayer(
                (i, set) -> set.of(Parameter.MINERALISATION) * DEPTH_RATE[i] * SoilNitrogen.acidity(ph.get(i))));
        takingBack = cells(
                byLayer((i, set) -> set.of(Parameter.TAKE_BACK) * DEPTH_RATE[i] * SoilNitrogen.acidity(ph.get(i))));
        nitrifying =
                cells(byLayer((i, set) -> set.of(Parameter.NITRIFICATION) * SoilNitrogen.nitrifierAcidity(ph.get(i))));
        denitrifying = cells(byLayer((i, set) -> set.of(Parameter.DENITRIFICATION) * CARBON_RATE[i]));
        residueReach = new double[2 * members];
        Columns.spread(lane(Parameter.RESIDUE_REACH), residueReach);
        footWp = topFoot(layerWp);
        footSat = topFoot(layerSat);
        perFootRange = perDifference(topFoot(layerFc), footWp, 1);
        drainMax = byMember(set -> setup.ground().drainMax_mm() * set.of(Parameter.DRAIN_RATE));
        silk = byMember(set -> setup.calendar(set).silk() + set.of(Parameter.SILK_SHIFT));
        black = byMember(set -> setup.calendar(set).blackLayer() + set.of(Parameter.SILK_SHIFT));
        tassel = byMember(set -> Phenology.collarsAt(
                setup.calendar(set).silk() + set.of(Parameter.SILK_SHIFT),
                set.of(Parameter.EMERGENCE),
                earlyLeaf,
                lateLeaf,
                Double.POSITIVE_INFINITY));
        this.trunk = null;
        this.from = new int[0];
    }

    private static double fieldCapacity(SoilWater w, ParameterSet set) {
        return Math.min(w.wp() + set.of(Parameter.AVAILABLE_WATER) * (w.fc() - w.wp()), w.sat() - 0.01);
    }

    /** A parameter without a spread is read once for all members; members that differ in it would be run wrongly. */
    private void refuseDisagreement() {
        for (Parameter p : Parameter.values()) {
            for (ParameterSet set : sets) {
                if (!p.isPerMember() && set.of(p) != of(p)) {
                    throw new EarleafException(Problem.of(
                            "season.parameter-differs",
                            Said.of("where.parameter", "name", p.name()),
                            Said.of("found.one-and-other", "one", set.of(p), "other", of(p))));
                }
            }
        }
    }

    private interface OfLayer {
        double of(int layer, ParameterSet set);
    }

    private double[] byLayer(OfLayer value) {
        if (trunk != null) {
            return gathered(trunk, LAYERS);
        }
        double[] all = new double[LAYERS * members];
        for (int i = 0; i < LAYERS; i++) {
            for (int m = 0; m < members; m++) {
                all[i * members + m] = value.of(i, sets.get(m));
            }
        }
        laid.add(all);
        return all;
    }

    private double[] byMember(ToDoubleFunction<ParameterSet> value) {
        if (trunk != null) {
            return gathered(trunk, 1);
        }
        double[] all = sets.stream().mapToDouble(value).toArray();
        laid.add(all);
        return all;
    }

    /** What the trunk laid out at this place, of the members that are taken over. */
    private double[] gathered(SeasonSite trunk, int blocks) {
        double[] there = trunk.laid.get(laid.size());
        double[] here = new double[blocks * members];
        for (int block = 0; block < blocks; block++) {
            Columns.gather(there, block * trunk.members, from, here, block * members);
        }
        laid.add(here);
        return here;
    }

    /** Both columns of a layer stand in the same soil. */
    private double[] cells(double[] layers) {
        double[] cells = new double[2 * layers.length];
        Columns.join(layers, layers, cells);
        return cells;
    }

    private double[] topFoot(double[] layers) {
        double[] foot = new double[members];
        for (int n = 0; n < 3 * members; n++) {
            foot[n % members] += layers[n];
        }
        return foot;
    }

    private static double[] perDifference(double[] high, double[] low, double factor) {
        double[] per = new double[high.length];
        Arrays.setAll(per, n -> 1 / (high[n] - factor * low[n]));
        return per;
    }

    private static double[] reciprocals(double[] values) {
        return Arrays.stream(values).map(v -> 1 / v).toArray();
    }

    /** A parameter on which all members agree. */
    double of(Parameter p) {
        return agreed[p.ordinal()];
    }

    /** A parameter by member. */
    double[] lane(Parameter p) {
        return lanes[p.ordinal()];
    }
}
