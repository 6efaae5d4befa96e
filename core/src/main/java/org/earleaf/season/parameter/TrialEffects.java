// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import java.util.List;
import java.util.Locale;
import org.earleaf.units.BundledTable;
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
    private final double[][] root;

    /** @param level what is known of the field takes its part out of what is drawn */
    TrialEffects(FieldLevel level) {
        root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance(level)))
                .getL()
                .getData();
    }

    /** Variance of an effect: farms, years of a farm, rest. */
    private static double variance(BundledTable.Row row) {
        return square(row, "farm_sd") + square(row, "year_sd") + square(row, "rest_sd");
    }

    /** Variance between farms: what stays with a field from year to year. */
    static double ofFarms(Parameter p) {
        return square(ROWS.get(PARAMETERS.indexOf(p)), "farm_sd");
    }

    /** Variance between the years of one field. */
    static double ofYears(Parameter p) {
        BundledTable.Row row = ROWS.get(PARAMETERS.indexOf(p));
        return square(row, "year_sd") + square(row, "rest_sd");
    }

    /** How far a number goes along with the level from farm to farm, logarithm by logarithm. */
    static double along(Parameter p) {
        BundledTable.Row row = ROWS.get(PARAMETERS.indexOf(p));
        return correlation(row, FieldLevel.OF) * Math.sqrt(ofFarms(p) / ofFarms(FieldLevel.OF));
    }

    private static double correlation(BundledTable.Row row, Parameter with) {
        return row.number("r_" + with.name().toLowerCase(Locale.ROOT));
    }

    private static double square(BundledTable.Row row, String sd) {
        return Math.pow(row.number(sd), 2);
    }

    static double sd(Parameter p) {
        return Math.sqrt(variance(ROWS.get(PARAMETERS.indexOf(p))));
    }

    private static double[][] covariance(FieldLevel level) {
        double known = level.weight() * ofFarms(FieldLevel.OF);
        int n = ROWS.size();
        double[][] all = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double drawn = correlation(ROWS.get(i), PARAMETERS.get(j))
                        * Math.sqrt(variance(ROWS.get(i)) * variance(ROWS.get(j)));
                all[i][j] = drawn - known * along(PARAMETERS.get(i)) * along(PARAMETERS.get(j));
            }
        }
        return all;
    }

    /**
     * A member's own numbers around a centre.
     *
     * @param z standard normal, one an effect; more are not looked at
     */
    ParameterSet drawn(ParameterSet set, ParameterSet centre, double widened, double[] z) {
        for (int i = 0; i < root.length; i++) {
            double log = 0;
            for (int j = 0; j <= i; j++) {
                log += root[i][j] * z[j];
            }
            Parameter p = PARAMETERS.get(i);
            set = set.clamped(p, centre.of(p) * StrictMath.exp(widened * log));
        }
        return set;
    }
}
