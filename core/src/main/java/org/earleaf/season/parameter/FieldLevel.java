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
 * doubtful: |x - w' m'| > 3 sqrt((1 - w') F + Y), w' and m' weight and median of the other years
 *
 * x      logarithm of measured over modelled of a year, in terms of growth for light
 * p_k    growth for light, and what goes along with it: mineralisation, critical nitrogen
 * n      years
 * F, Y   variance of the trials between farms, and between years of a farm with the rest; r, correlation (TrialEffects)
 * Source normal mean with known variances and a normal prior, common statistics; 3: own construct
 * Check  FieldLevelTest, bench/trials
 * </pre>
 *
 * Far from the trials F and Y widen alike, which leaves w as it is. A good field makes more, gives more and asks for less
 * by the ton: with the level alone its best rate would rise as its yield does, and on the trials the advice got worse.
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

    private static final double BEYOND_SD = 3;
    private static final double FARMS = TrialEffects.ofFarms(OF);
    private static final double YEARS = TrialEffects.ofYears(OF);

    /** @param logs one a year, none of them in doubt */
    public static FieldLevel of(List<Double> logs) {
        int n = logs.size();
        if (n == 0) {
            return UNKNOWN;
        }
        double mean = logs.stream().mapToDouble(x -> x).sum() / n;
        return new FieldLevel(n, weight(n) * mean, weight(n));
    }

    /**
     * Whether each of some years is so far from what the others say that something else must have been at work.
     *
     * @param widened how much farther the model may be off than on the fields of the trials, from 1
     */
    public static List<Boolean> inDoubt(List<Double> logs, double widened) {
        List<Boolean> doubt = new ArrayList<>();
        for (int k = 0; k < logs.size(); k++) {
            List<Double> others = new ArrayList<>(logs);
            double x = others.remove(k);
            double about = weight(others.size()) * median(others);
            doubt.add(Math.abs(x - about) > BEYOND_SD * widened * Math.sqrt(variance(others.size())));
        }
        return doubt;
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
