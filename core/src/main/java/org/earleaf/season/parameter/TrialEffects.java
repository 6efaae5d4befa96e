// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import org.earleaf.units.BundledTable;
import org.earleaf.weather.Draws;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;

/**
 * What the model does not know of a site and year, as real trials have shown it: how far level, supply and demand of
 * nitrogen stray together from what the model says. Drawn with each member, so that a decision over all members leans on
 * the model only as far as it has earned.
 *
 * <pre>
 * x = x exp(w sum_j L_ij z_j),  L L' = covariance of the logarithms
 *
 * x      growth for light, mineralisation, critical nitrogen
 * w      1 where the field is like those of the trials, more far from them
 * z      standard normal
 * Source variance between farms, between years of a farm and of the rest, estimated from the trials that the table names
 *        and then set by how often the members hold the measured (bench/trials); model discrepancy: Kennedy & O'Hagan 2001, J. R. Stat. Soc. B 63:425, from memory
 * Check  ParameterDrawsTest; bench/trials: how often the members hold the measured yields
 * </pre>
 */
final class TrialEffects {
    private static final List<BundledTable.Row> ROWS = BundledTable.rows("trial-effects.csv");
    static final List<Parameter> PARAMETERS =
            ROWS.stream().map(row -> Parameter.valueOf(row.text("parameter"))).toList();
    /** Lower triangle whose product with its mirror is the covariance. */
    private static final double[][] ROOT = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance()))
            .getL()
            .getData();

    private TrialEffects() {}

    /** Variance of an effect: farms, years of a farm, rest. */
    private static double variance(BundledTable.Row row) {
        return Math.pow(row.number("farm_sd"), 2)
                + Math.pow(row.number("year_sd"), 2)
                + Math.pow(row.number("rest_sd"), 2);
    }

    static double sd(Parameter p) {
        return Math.sqrt(variance(ROWS.get(PARAMETERS.indexOf(p))));
    }

    private static double[][] covariance() {
        int n = ROWS.size();
        double[][] all = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double r = ROWS.get(i).number("r_" + PARAMETERS.get(j).name().toLowerCase(Locale.ROOT));
                all[i][j] = r * Math.sqrt(variance(ROWS.get(i)) * variance(ROWS.get(j)));
            }
        }
        return all;
    }

    /** A member's own numbers around a centre. */
    static ParameterSet drawn(ParameterSet set, ParameterSet centre, double widened, RandomGenerator random) {
        double[] z = new double[ROOT.length];
        for (int k = 0; k < z.length; k++) {
            z[k] = Draws.normal(random);
        }
        for (int i = 0; i < z.length; i++) {
            double log = 0;
            for (int j = 0; j <= i; j++) {
                log += ROOT[i][j] * z[j];
            }
            Parameter p = PARAMETERS.get(i);
            set = set.clamped(p, centre.of(p) * StrictMath.exp(widened * log));
        }
        return set;
    }
}
