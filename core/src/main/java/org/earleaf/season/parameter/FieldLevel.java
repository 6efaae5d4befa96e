// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.stat.descriptive.rank.Median;

/**
 * How far a field's growth lies from that of its soil, as its own past years show it.
 *
 * <pre>
 * shift = w mean(x),  w = F/(F + Y/n)        ln p_k = ln p_k + a_k shift,  a_k = r_k sqrt(F_k/F)
 * what the trials left: covariance less w F a a'
 * doubtful: |x - w' m'| > 3 s, s = sqrt((1 - w') F + Y), w' and m' weight and median of the other years
 *           counts as if it lay 3 s off; beyond 6 s not at all
 *
 * x      logarithm of measured over modelled of a year, in terms of growth for light
 * p_k    growth for light, and what goes along with it: mineralisation, critical nitrogen
 * n      years
 * F, Y   variance of the trials between farms, and between years of a farm with the rest; r, correlation (TrialEffects)
 * Source normal mean with known variances and a normal prior, common statistics; 3 and 6: own construct
 * Check  FieldLevelTest, bench/trials
 * </pre>
 *
 * Far from the trials F and Y widen alike, which leaves w as it is. A good field makes more, gives more and asks for less
 * by the ton: with the level alone its best rate would rise as its yield does, and on the trials the advice got worse.
 * A real drought may lie 4 s below; left out, it would leave only the good years to speak. Beyond 6 s less than a third or
 * more than three times is told of what was to be expected: hail, or a slip of the pen.
 *
 * @param years behind it
 * @param shift logarithm of the factor on growth for light
 * @param weight share of the variance between farms that is known by them, 0 to 1
 */
public record FieldLevel(int years, double shift, double weight) {
    /** The number of the model that carries the level of yields. */
    public static final Parameter OF = Parameter.RUE;

    /** Nothing is known of the years before. */
    public static final FieldLevel UNKNOWN = new FieldLevel(0, 0, 0);

    private static final double MOST_BELIEVED_SD = 3;
    private static final double ABSURD_SD = 6;
    private static final double FARMS = TrialEffects.ofFarms(OF);
    private static final double YEARS = TrialEffects.ofYears(OF);

    /** @param logs one a year, as far as they are believed */
    public static FieldLevel of(List<Double> logs) {
        int n = logs.size();
        if (n == 0) {
            return UNKNOWN;
        }
        double mean = logs.stream().mapToDouble(x -> x).sum() / n;
        return new FieldLevel(n, weight(n) * mean, weight(n));
    }

    /**
     * Some years as far as each is believed beside what the others say: one far off counts as if it lay less far, one out
     * of all reason is NaN.
     *
     * @param widened how much farther the model may be off than on the fields of the trials, from 1
     */
    public static List<Double> believed(List<Double> logs, double widened) {
        List<Double> believed = new ArrayList<>();
        for (int k = 0; k < logs.size(); k++) {
            List<Double> others = new ArrayList<>(logs);
            double x = others.remove(k);
            double about = weight(others.size()) * median(others);
            double sd = widened * Math.sqrt(variance(others.size()));
            double most = MOST_BELIEVED_SD * sd;
            double off = Math.abs(x - about);
            believed.add(off <= most ? x : off > ABSURD_SD * sd ? Double.NaN : about + Math.copySign(most, x - about));
        }
        return believed;
    }

    /** The numbers of a field of this level. */
    public ParameterSet applied(ParameterSet set) {
        ParameterSet own = set;
        for (Parameter p : TrialEffects.PARAMETERS) {
            own = years == 0 ? own : own.clamped(p, set.of(p) * StrictMath.exp(TrialEffects.along(p) * shift));
        }
        return own;
    }

    /** What so many years weigh beside the trials, 0 to 1. */
    private static double weight(int n) {
        return n * FARMS / (n * FARMS + YEARS);
    }

    /** Of the level of one more year. */
    private static double variance(int n) {
        return (1 - weight(n)) * FARMS + YEARS;
    }

    private static double median(List<Double> of) {
        double[] x = of.stream().mapToDouble(each -> each).toArray();
        return x.length == 0 ? 0 : new Median().evaluate(x);
    }
}
