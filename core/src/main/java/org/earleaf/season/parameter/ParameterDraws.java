// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.weather.Draws;

/**
 * Members of an ensemble: parameter sets drawn around a centre, and the small steps that keep them apart after readings
 * have thinned them out.
 *
 * <pre>
 * draw    value x exp(s z - s^2/2), s^2 = ln(1 + cv^2), or value + sd z; kept inside the parameter's range;
 *         what the trials have shown together: TrialEffects
 * jitter  x' = a x + (1 - a) mean + h sd z on the logarithm (or the value), h = 0.1, a = sqrt(1 - h^2)
 *
 * z      standard normal
 * Range  any number of members
 * Source Liu & West 2001, kernel smoothing with shrinkage, from memory; spreads: see each Parameter
 * Check  ParameterDrawsTest
 * </pre>
 *
 * Each member has its own generator, so that asking for more members never changes the first ones.
 */
public final class ParameterDraws {
    private static final double STEP = 0.1;
    private static final double SHRINK = Math.sqrt(1 - STEP * STEP);
    private static final long MEMBER_STRIDE = 0x9E3779B97F4A7C15L;

    private ParameterDraws() {}

    /** So many members around a centre, on a field like those of the trials. */
    public static List<ParameterSet> members(ParameterSet centre, int members, long seed) {
        return members(centre, FieldLevel.UNKNOWN, members, seed, 1);
    }

    /**
     * @param level as far as the field's past years tell it
     * @param widened how much farther the model may be off than on the fields of the trials, from 1
     */
    public static List<ParameterSet> members(
            ParameterSet usual, FieldLevel level, int members, long seed, double widened) {
        ParameterSet centre = level.applied(usual);
        TrialEffects effects = new TrialEffects(level);
        List<ParameterSet> all = new ArrayList<>();
        for (int m = 0; m < members; m++) {
            all.add(draw(centre, effects, widened, new SplittableRandom(seed + MEMBER_STRIDE * (m + 1))));
        }
        return all;
    }

    private static ParameterSet draw(
            ParameterSet centre, TrialEffects effects, double widened, SplittableRandom random) {
        ParameterSet set = centre;
        for (Parameter p : Parameter.values()) {
            if (TrialEffects.PARAMETERS.contains(p)) {
                continue;
            }
            if (p.cv() > 0) {
                set = set.clamped(p, centre.of(p) * Draws.factor(p.cv(), random));
            } else if (p.sd() > 0) {
                set = set.clamped(p, centre.of(p) + p.sd() * Draws.normal(random));
            }
        }
        return effects.drawn(set, centre, widened, random);
    }

    /** Members after resampling, moved a little, with the mean and spread of all of them kept. */
    public static List<ParameterSet> jittered(List<ParameterSet> members, long seed) {
        List<ParameterSet> moved = new ArrayList<>(members);
        for (Parameter p : Parameter.values()) {
            if (p.isPerMember()) {
                jitter(p, moved, seed);
            }
        }
        return moved;
    }

    private static void jitter(Parameter p, List<ParameterSet> members, long seed) {
        boolean log = p.cv() > 0;
        double[] x = members.stream()
                .mapToDouble(set -> log ? Math.log(set.of(p)) : set.of(p))
                .toArray();
        double mean = Arrays.stream(x).sum() / x.length;
        // From the deviations: the mean square less the square of the mean is not 0 where all are alike.
        double sd = Math.sqrt(Arrays.stream(x).map(v -> (v - mean) * (v - mean)).sum() / x.length);
        for (int m = 0; m < x.length; m++) {
            SplittableRandom random = new SplittableRandom(seed + MEMBER_STRIDE * (m + 1) + p.ordinal());
            double y = SHRINK * x[m] + (1 - SHRINK) * mean + STEP * sd * Draws.normal(random);
            members.set(m, members.get(m).clamped(p, log ? Math.exp(y) : y));
        }
    }
}
