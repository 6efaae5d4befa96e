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
 * What a nitrate test teaches: every member's nitrate is shifted towards it. To keep the members that foresaw it would
 * leave those that happen to lie near, and none where all lie elsewhere.
 *
 * <pre>
 * K = w b cov(x, h)/(var h + s^2);   x += K (y + e - h)
 * b = max(1, (1 - 0.2/|d|)(var h + s^2)/var h),   d = y - mean h
 *
 * x      logarithm of the nitrate of a cell, of the mineralisation rate and of the drainage rate, by member
 * h      logarithm of what the test would show in the member; y of what it showed
 * e      drawn normal with sd s and mean 0 over the members
 * w      1 where cores were taken, 0.5 in the layer below, 0 elsewhere; 1 for the rates
 * b      the spread of the members is taken as wide as it must be for the middle to come within 20 % of the test; the
 *        error of the test stays what it is, so they end as wide as the test is sure
 * Range  two members or more
 * Source ensemble Kalman filter with perturbed observations: Evensen 1994, J. Geophys. Res. 99:10143; Burgers, van
 *        Leeuwen & Evensen 1998, Mon. Weather Rev. 126:1719 (from memory); weights by distance: own construct; widening
 *        by what is observed: adaptive inflation, Anderson 2007, Tellus A 59:210 (from memory), the 20 %: own construct
 * Check  KalmanStepTest, SoilTestSweepTest
 * </pre>
 *
 * What is added or taken is booked, so that every member's nitrogen still closes.
 */
final class KalmanStep {
    private static final double LEAST = .1;
    private static final List<Parameter> RATES = List.of(Parameter.MINERALISATION, Parameter.DRAIN_RATE);

    /** The middle of the members comes at least so near to a test, on the logarithm. */
    private static final double NEAR = .2;
    /** A test that lies this many standard deviations from what was expected is one in twenty. */
    private static final double BEYOND = 2;

    private final double[] miss;
    private final double[] h;
    private final double s;
    /** By how much the gain is raised because the members are too sure. */
    private final double raised;

    private final boolean isUnforeseen;

    /**
     * @param h what would be shown, by member
     * @param y what was shown
     * @param s its standard deviation
     * @param near how near the middle comes at least; infinite: as near as the spreads say
     */
    KalmanStep(double[] h, double y, double s, double near, long seed) {
        this.h = h;
        this.s = s;
        double d = Math.abs(y - Ranks.mean(h));
        double spread = covariance(h, h);
        raised = d > near && spread > 0 ? Math.max(1, (1 - near / d) * (spread + s * s) / spread) : 1;
        isUnforeseen = d > BEYOND * Math.sqrt(spread + s * s);
        miss = new double[h.length];
        SplittableRandom random = new SplittableRandom(seed);
        Arrays.setAll(miss, m -> s * Draws.normal(random));
        double mean = Ranks.mean(miss);
        Arrays.setAll(miss, m -> y + miss[m] - mean - h[m]);
    }

    double gain(double[] x) {
        return raised * covariance(x, h) / (covariance(h, h) + s * s);
    }

    /** Whether the reading lies where one in twenty would, for all that the members say. */
    boolean isUnforeseen() {
        return isUnforeseen;
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

    /** Of a nitrate test on a run; {@code s} is the error of its logarithm. */
    static KalmanStep of(SeasonRun run, Reading test, double s, long seed) {
        return new KalmanStep(shown(run, test), log(test.value()), s, NEAR, seed);
    }

    private static double[] shown(SeasonRun run, Reading test) {
        double[] h = new double[run.members()];
        Arrays.setAll(h, m -> log(Observing.of(run, m, test)));
        return h;
    }

    /** The run shifted by the test that this step was made of. */
    SeasonRun shifted(SeasonRun run, Reading test) {
        SeasonRun moved = withRates(run, this);
        List<Integer> sampled = new ArrayList<>();
        for (int cell = 0; cell < Correcting.cells(); cell++) {
            double weight = Correcting.weight(run, test, cell);
            if (weight > 0) {
                scale(moved, this, cell, weight);
            }
            if (weight >= 1) {
                sampled.add(cell);
            }
        }
        settle(moved, test, sampled);
        return moved;
    }

    /** Cells shifted one by one do not add up to what the whole sample is to show: the rest is shared alike. */
    private void settle(SeasonRun run, Reading test, List<Integer> sampled) {
        double[] moves = moves(h, 1);
        double[] now = shown(run, test);
        for (int m = 0; m < moves.length; m++) {
            double rest = Math.exp(h[m] + moves[m] - now[m]);
            for (int cell : sampled) {
                Correcting.scale(run, m, cell, rest);
            }
        }
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
