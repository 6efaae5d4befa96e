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
 * z      standard normal, spread evenly over the members (EvenDraws)
 * Range  any number of members
 * Source Liu & West 2001, kernel smoothing with shrinkage, from memory; spreads: see each Parameter
 * Check  ParameterDrawsTest
 * </pre>
 *
 * Asking for another hundred members never changes the first.
 */
public final class ParameterDraws {
    private static final double STEP = 0.1;
    private static final double SHRINK = Math.sqrt(1 - STEP * STEP);
    private static final long MEMBER_STRIDE = 0x9E3779B97F4A7C15L;

    /** Drawn by itself, in this order. */
    private static final List<Parameter> DRAWN = Arrays.stream(Parameter.values())
            .filter(p -> p.isPerMember() && !TrialEffects.PARAMETERS.contains(p))
            .toList();

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
        int shown = TrialEffects.PARAMETERS.size();
        return Arrays.stream(EvenDraws.of(members, shown + DRAWN.size(), shown, seed))
                .map(normal -> draw(centre, effects, widened, normal))
                .toList();
    }

    private static ParameterSet draw(ParameterSet centre, TrialEffects effects, double widened, double[] normal) {
        // What the trials have shown takes the first numbers, which are spread most evenly.
        int k = TrialEffects.PARAMETERS.size();
        ParameterSet set = effects.drawn(centre, centre, widened, normal);
        for (Parameter p : DRAWN) {
            double z = normal[k++];
            set = set.clamped(p, p.cv() > 0 ? centre.of(p) * Draws.factor(p.cv(), z) : centre.of(p) + p.sd() * z);
        }
        return set;
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
