// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.soil.SoilProfile;
import org.earleaf.soil.SoilWater;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Problem;
import org.earleaf.units.Said;
import org.jspecify.annotations.Nullable;

/** Ground and parameters of a run, laid out for the day loop: scalars where members agree, lanes where they may not. */
final class SeasonSite extends Columns.LaidOut {
    /** Relative rate of organic matter by layer (own construct). */
    static final double[] DEPTH_RATE = {1, 1, .9, .4, .2, .1};
    /** Relative rate of denitrification by layer (own construct). */
    static final double[] CARBON_RATE = {1, 1, 1, .5, .2, .1};

    private final SoilProfile soil = setup.soil();
    private final double[] agreed = agreed();
    private final double[][] lanes = lanes();
    final double[] share = {setup.rowShare(), 1 - setup.rowShare()};
    final double[] dz = perLayer(SoilProfile::thickness_mm);
    final double[] ppm = perLayer(i -> soil.bulkDensity_gcm3().get(i) * dz[i] / 100);
    /** Day of the run on which the crop is planted. */
    final int plantedDay =
            (int) (setup.crop().planted().toEpochDay() - setup.first().toEpochDay());

    private final boolean north = setup.calendar().farNorth();
    final double earlyLeaf = north ? Phenology.FAR_NORTH_LEAF : of(Parameter.LEAF_EARLY);
    final double lateLeaf = north ? Phenology.FAR_NORTH_LEAF : of(Parameter.LEAF_LATE);
    // by layer and member; water in mm
    final double[] layerWp = byLayer((i, set) -> soil.water().get(i).wp() * dz[i]);
    final double[] layerSat = byLayer((i, set) -> soil.water().get(i).sat() * dz[i]);
    private final double[] layerFc =
            byLayer((i, set) -> fieldCapacity(soil.water().get(i), set) * dz[i]);
    final double[] layerPerRange = perDifference(layerFc, layerWp, 1);
    // by cell and member, as in SeasonState; water in mm
    final double[] wp = cells(layerWp);
    final double[] fc = cells(layerFc);
    final double[] sat = cells(layerSat);
    /** Reciprocals of the wilting point, of the available range, of saturation, and of half the way below wilting. */
    final double[] perWp = reciprocals(wp);

    final double[] perRange = cells(layerPerRange);
    final double[] perSat = reciprocals(sat);
    final double[] perUreaRange = cells(perDifference(layerFc, layerWp, .5));
    final double[] drainShare = cells(byLayer(
            (i, set) -> SoilWaterFlow.drainShare(soil.water().get(i).ksat_mmh() * set.of(Parameter.CONDUCTIVITY))));
    /** (R - 1) of ammonium times water [mm]. */
    final double[] sorbed = cells(byLayer((i, set) -> dz[i]
            * SoilWaterFlow.sorbed(
                    soil.bulkDensity_gcm3().get(i), soil.cec_cmolKg().get(i))));

    final double[] ammoniumFloor = cells(byLayer((i, set) -> set.of(Parameter.AMMONIUM_FLOOR) * ppm[i]));
    final double[] nitrateFloor = cells(byLayer((i, set) -> set.of(Parameter.NITRATE_FLOOR) * ppm[i]));
    // rates with the parts of them that never change
    final double[] mineralising = cells(byLayer((i, set) -> set.of(Parameter.MINERALISATION)
            * DEPTH_RATE[i]
            * SoilNitrogen.acidity(soil.ph().get(i))));
    final double[] nitrifying = cells(byLayer((i, set) -> set.of(Parameter.NITRIFICATION)
            * SoilNitrogen.nitrifierAcidity(soil.ph().get(i))));
    final double[] takingBack = cells(byLayer((i, set) -> set.of(Parameter.TAKE_BACK)
            * DEPTH_RATE[i]
            * SoilNitrogen.acidity(soil.ph().get(i))));
    final double[] denitrifying = cells(byLayer((i, set) -> set.of(Parameter.DENITRIFICATION) * CARBON_RATE[i]));
    /** Share of the mineral nitrogen of top cells within reach of residue, by column. */
    final double[] residueReach = inBothColumns(lane(Parameter.RESIDUE_REACH));
    // by member
    /** Water of the top foot: at the wilting point, the reciprocal of the range available, at saturation [mm]. */
    final double[] footWp = topFoot(layerWp);

    final double[] perFootRange = perDifference(topFoot(layerFc), footWp, 1);
    final double[] footSat = topFoot(layerSat);
    final double[] drainMax = byMember(set -> setup.ground().drainMax_mm() * set.of(Parameter.DRAIN_RATE));
    final double[] silk = byMember(set -> setup.calendar(set).silk() + set.of(Parameter.SILK_SHIFT));
    final double[] black = byMember(set -> setup.calendar(set).blackLayer() + set.of(Parameter.SILK_SHIFT));
    final double[] tassel = byMember(set -> Phenology.collarsAt(
            setup.calendar(set).silk() + set.of(Parameter.SILK_SHIFT),
            set.of(Parameter.EMERGENCE),
            earlyLeaf,
            lateLeaf,
            Double.POSITIVE_INFINITY));

    SeasonSite(SeasonSetup setup, List<ParameterSet> sets) {
        this(setup, sets, null, new int[0]);
        refuseDisagreement();
    }

    /** The site of members of another run: nothing is computed anew. */
    SeasonSite(SeasonSite trunk, int[] from) {
        this(trunk.setup, Arrays.stream(from).mapToObj(trunk.sets::get).toList(), trunk, from);
    }

    private SeasonSite(SeasonSetup setup, List<ParameterSet> sets, @Nullable SeasonSite trunk, int[] from) {
        super(setup, sets, trunk, from);
        end();
    }

    private double[] agreed() {
        return Arrays.stream(Parameter.values()).mapToDouble(sets.get(0)::of).toArray();
    }

    private double[][] lanes() {
        double[][] lanes = new double[Parameter.values().length][];
        for (Parameter p : Parameter.values()) {
            if (p.isPerMember()) {
                lanes[p.ordinal()] = byMember(set -> set.of(p));
            }
        }
        return lanes;
    }

    private static double[] perLayer(IntToDoubleFunction value) {
        return IntStream.range(0, LAYERS).mapToDouble(value).toArray();
    }

    private static double[] inBothColumns(double[] member) {
        double[] columns = new double[2 * member.length];
        Columns.spread(member, columns);
        return columns;
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

    /** A parameter on which all members agree. */
    double of(Parameter p) {
        return agreed[p.ordinal()];
    }

    /** A parameter by member. */
    double[] lane(Parameter p) {
        return lanes[p.ordinal()];
    }
}
