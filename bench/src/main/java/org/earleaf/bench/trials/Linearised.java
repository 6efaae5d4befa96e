// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterDraws;
import org.earleaf.season.parameter.ParameterSet;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.stat.correlation.Covariance;

/**
 * A site-year whose yields by rate are taken as straight in the effects, near where the effects are thought to be. What the
 * ensemble draws besides the effects is taken as known error, so that it is not counted twice.
 *
 * <pre>
 * measured = model(e) + J (x - e) + k + s n
 *
 * x, e   effects, and where they are thought to be: logarithms of so many parameters over the usual value
 * J      change of yield with each, by a step
 * k      what the other parameters stray by, covariance K from members drawn     s, n  error of a point, normal
 * Source own construct
 * Check  EffectsTest
 * </pre>
 */
final class Linearised {
    static final double[] RATES_KGHA = {0, 40, 80, 120, 160, 200, 240, 280};
    private static final int DRAWN = 64;
    private static final long SEED = 20_261_201L;
    private static final double STEP = .05;

    private final Plots plots;
    private final List<Parameter> effects;
    private final RealMatrix others;
    private RealVector at;
    private RealMatrix slope;
    /** Measured less what the model says where all effects are 0, if straight. */
    private RealVector seen;

    Linearised(SiteYear at, List<Parameter> effects) {
        plots = Plots.of(at, RATES_KGHA);
        this.effects = effects;
        others = new Covariance(others()).getCovarianceMatrix();
        this.at = MatrixUtils.createRealVector(new double[effects.size()]);
        seen = this.at;
        slope = others;
        linearise(this.at);
    }

    RealVector at() {
        return at;
    }

    /** Yields by rate of members that differ in all that is drawn but the effects. */
    private double[][] others() {
        List<List<ParameterSet>> drawn = plots.sets().stream()
                .map(centre -> ParameterDraws.members(centre, DRAWN, SEED).stream()
                        .map(member -> usualEffects(member, centre))
                        .toList())
                .toList();
        List<List<ParameterSet>> members = new ArrayList<>();
        for (int m = 0; m < DRAWN; m++) {
            int member = m;
            members.add(drawn.stream().map(of -> of.get(member)).toList());
        }
        return grain_kgHa(members);
    }

    private ParameterSet usualEffects(ParameterSet member, ParameterSet centre) {
        ParameterSet set = member;
        for (Parameter p : effects) {
            set = set.clamped(p, centre.of(p));
        }
        return set;
    }

    /** Takes the yields as straight about other effects. */
    void linearise(RealVector about) {
        List<List<ParameterSet>> members = new ArrayList<>(List.of(with(about)));
        for (int k = 0; k < effects.size(); k++) {
            RealVector step = about.copy();
            step.addToEntry(k, STEP);
            members.add(with(step));
            step.addToEntry(k, -2 * STEP);
            members.add(with(step));
        }
        double[][] grain = grain_kgHa(members);
        at = about;
        slope = MatrixUtils.createRealMatrix(RATES_KGHA.length, effects.size());
        seen = MatrixUtils.createRealVector(new double[RATES_KGHA.length]);
        for (int rate = 0; rate < RATES_KGHA.length; rate++) {
            for (int k = 0; k < effects.size(); k++) {
                slope.setEntry(rate, k, (grain[2 * k + 1][rate] - grain[2 * k + 2][rate]) / (2 * STEP));
            }
            seen.setEntry(rate, plots.at().measured().at(RATES_KGHA[rate]) - grain[0][rate]);
        }
        seen = seen.add(slope.operate(at));
    }

    private List<ParameterSet> with(RealVector effect) {
        return plots.sets().stream()
                .map(set -> {
                    ParameterSet changed = set;
                    for (int k = 0; k < effects.size(); k++) {
                        Parameter p = effects.get(k);
                        changed = changed.clamped(p, set.of(p) * Math.exp(effect.getEntry(k)));
                    }
                    return changed;
                })
                .toList();
    }

    /** All plots of all members side by side. */
    private double[][] grain_kgHa(List<List<ParameterSet>> members) {
        int n = RATES_KGHA.length;
        double[] rates = new double[n * members.size()];
        Arrays.setAll(rates, k -> RATES_KGHA[k % n]);
        List<ParameterSet> sets = members.stream().flatMap(List::stream).toList();
        double[] grain = new Plots(plots.at(), rates, plots.season(), sets, plots.weather()).grain_kgHa();
        double[][] each = new double[members.size()][];
        Arrays.setAll(each, m -> Arrays.copyOfRange(grain, m * n, (m + 1) * n));
        return each;
    }

    private RealMatrix certain(double error_kgHa) {
        RealMatrix own =
                MatrixUtils.createRealIdentityMatrix(RATES_KGHA.length).scalarMultiply(error_kgHa * error_kgHa);
        return MatrixUtils.inverse(others.add(own));
    }

    Evidence evidence(double error_kgHa) {
        RealMatrix back = slope.transpose().multiply(certain(error_kgHa));
        SiteYear of = plots.at();
        return new Evidence(of.farm().name(), of.farm().name() + of.year(), back.multiply(slope), back.operate(seen));
    }

    /** The square of the error of a point that is to be expected, given the last one and the effects [(kg/ha)2]. */
    double error2(double error_kgHa, NestedEffects.Likely effect) {
        double s2 = error_kgHa * error_kgHa;
        RealMatrix certain = certain(error_kgHa);
        RealVector mean =
                certain.operate(seen.subtract(slope.operate(effect.mean()))).mapMultiply(s2);
        RealMatrix through = certain.multiply(slope).scalarMultiply(s2);
        RealMatrix spread = MatrixUtils.createRealIdentityMatrix(RATES_KGHA.length)
                .scalarMultiply(s2)
                .subtract(certain.scalarMultiply(s2 * s2))
                .add(through.multiply(effect.covariance()).multiply(through.transpose()));
        return (mean.dotProduct(mean) + spread.getTrace()) / RATES_KGHA.length;
    }
}
