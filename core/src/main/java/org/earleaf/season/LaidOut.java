// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.earleaf.season.parameter.ParameterSet;
import org.jspecify.annotations.Nullable;

/**
 * Values laid out by layer or member, in the order in which they are asked for. A run that goes on from another takes
 * over what the trunk laid out at the same place. Stands first so that fields can be made of it.
 */
abstract class LaidOut {
    static final int LAYERS = SeasonState.LAYERS;

    final SeasonSetup setup;
    final List<ParameterSet> sets;
    final int members;
    private final List<double[]> laid = new ArrayList<>();

    // only while laying out: a site must not keep its trunk alive
    private @Nullable LaidOut trunk;
    private int[] from;

    LaidOut(SeasonSetup setup, List<ParameterSet> sets, @Nullable LaidOut trunk, int[] from) {
        this.setup = setup;
        this.sets = List.copyOf(sets);
        this.members = sets.size();
        this.trunk = trunk;
        this.from = from;
    }

    /** Nothing more is laid out. */
    final void end() {
        trunk = null;
        from = new int[0];
    }

    interface OfLayer {
        double of(int layer, ParameterSet set);
    }

    final double[] byLayer(OfLayer value) {
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

    final double[] byMember(ToDoubleFunction<ParameterSet> value) {
        if (trunk != null) {
            return gathered(trunk, 1);
        }
        double[] all = sets.stream().mapToDouble(value).toArray();
        laid.add(all);
        return all;
    }

    /** What the trunk laid out at this place, of the members that are taken over. */
    private double[] gathered(LaidOut trunk, int blocks) {
        double[] there = trunk.laid.get(laid.size());
        double[] here = new double[blocks * members];
        for (int block = 0; block < blocks; block++) {
            Columns.gather(there, block * trunk.members, from, here, block * members);
        }
        laid.add(here);
        return here;
    }

    /** Both columns of a layer stand in the same soil. */
    final double[] cells(double[] layers) {
        double[] cells = new double[2 * layers.length];
        Columns.join(layers, layers, cells);
        return cells;
    }

    final double[] topFoot(double[] layers) {
        double[] foot = new double[members];
        for (int n = 0; n < 3 * members; n++) {
            foot[n % members] += layers[n];
        }
        return foot;
    }

    static double[] perDifference(double[] high, double[] low, double factor) {
        double[] per = new double[high.length];
        Arrays.setAll(per, n -> 1 / (high[n] - factor * low[n]));
        return per;
    }

    static double[] reciprocals(double[] values) {
        return Arrays.stream(values).map(v -> 1 / v).toArray();
    }
}
