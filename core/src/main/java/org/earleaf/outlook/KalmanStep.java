// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import org.earleaf.field.Reading;
import org.earleaf.season.Correcting;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.units.Ranks;
import org.earleaf.weather.Draws;

/**
 * Another way to learn from a nitrate test: every member's nitrate is shifted towards it, instead of keeping the members
 * that foresaw it. Off unless the farm asks for it.
 *
 * <pre>
 * K = w cov(x, h)/(var h + s^2);   x += K (y + e - h)
 *
 * x      logarithm of the nitrate of a cell, of the mineralisation rate and of the drainage rate, by member
 * h      logarithm of what the test would show in the member; y of what it showed
 * e      drawn normal with sd s and mean 0 over the members
 * w      1 where cores were taken, 0.5 in the layer below, 0 elsewhere; 1 for the rates
 * Range  two members or more
 * Source ensemble Kalman filter with perturbed observations: Evensen 1994, J. Geophys. Res. 99:10143; Burgers, van
 *        Leeuwen & Evensen 1998, Mon. Weather Rev. 126:1719 (from memory); weights by distance: own construct
 * Check  KalmanStepTest
 * </pre>
 *
 * What is added or taken is booked, so that every member's nitrogen still closes.
 */
final class KalmanStep {
    private static final double LEAST = 1e-3;
    private static final List<Parameter> RATES = List.of(Parameter.MINERALISATION, Parameter.DRAIN_RATE);

    private final double[] miss;
    private final double[] h;
    private final double s;

    /**
     * @param h what would be shown, by member
     * @param y what was shown
     * @param s its standard deviation
     */
    KalmanStep(double[] h, double y, double s, long seed) {
        this.h = h;
        this.s = s;
        miss = new double[h.length];
        SplittableRandom random = new SplittableRandom(seed);
        Arrays.setAll(miss, m -> s * Draws.normal(random));
        double mean = Ranks.mean(miss);
        Arrays.setAll(miss, m -> y + miss[m] - mean - h[m]);
    }

    double gain(double[] x) {
        return covariance(x, h) / (covariance(h, h) + s * s);
    }

    /** By how much each member's x moves. */
    double[] moves(double[] x, double weight) {
        double k = weight * gain(x);
        return Arrays.stream(miss).map(d -> k * d).toArray();
    }

    private static double covariance(double[] a, double[] b) {
        double meanA = Ranks.mean(a);
        double meanB = Ranks.mean(b);
        double sum = 0;
        for (int m = 0; m < a.length; m++) {
            sum += (a[m] - meanA) * (b[m] - meanB);
        }
        return sum / (a.length - 1);
    }

    /** The run shifted by a nitrate test; {@code s} is the error of its logarithm. */
    static SeasonRun shifted(SeasonRun run, Reading test, double s, long seed) {
        double[] h = new double[run.members()];
        Arrays.setAll(h, m -> log(Observing.of(run, m, test)));
        KalmanStep step = new KalmanStep(h, Math.log(Math.max(.1, test.value())), s, seed);
        SeasonRun moved = withRates(run, step);
        for (int cell = 0; cell < Correcting.cells(); cell++) {
            double weight = Correcting.weight(run, test, cell);
            if (weight > 0) {
                scale(moved, step, cell, weight);
            }
        }
        return moved;
    }

    private static void scale(SeasonRun run, KalmanStep step, int cell, double weight) {
        double[] x = new double[run.members()];
        Arrays.setAll(x, m -> log(Correcting.nitrate(run, m, cell)));
        double[] moves = step.moves(x, weight);
        for (int m = 0; m < moves.length; m++) {
            Correcting.scale(run, m, cell, Math.exp(moves[m]));
        }
    }

    private static SeasonRun withRates(SeasonRun run, KalmanStep step) {
        List<ParameterSet> sets = new ArrayList<>();
        for (int m = 0; m < run.members(); m++) {
            sets.add(run.parameters(m));
        }
        for (Parameter p : RATES) {
            double[] x = sets.stream().mapToDouble(set -> Math.log(set.of(p))).toArray();
            double[] moves = step.moves(x, 1);
            for (int m = 0; m < moves.length; m++) {
                sets.set(m, sets.get(m).clamped(p, Math.exp(x[m] + moves[m])));
            }
        }
        int[] same = IntStream.range(0, run.members()).toArray();
        return run.branch(same, sets, run.weather(), ZoneEnsemble.weatherOf(IntStream.of(same), run.weather()));
    }

    private static double log(double value) {
        return Math.log(Math.max(LEAST, value));
    }
}
