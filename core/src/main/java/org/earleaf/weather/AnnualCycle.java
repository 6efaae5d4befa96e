// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import org.hipparchus.stat.regression.OLSMultipleLinearRegression;

/**
 * A value that comes and goes with the year.
 *
 * <pre>
 * y = c0 + sum over k of (c(2k-1) cos(2 pi k J / 365.25) + c(2k) sin(2 pi k J / 365.25))
 *
 * y      the value, in its own unit
 * J      day of the year, 1 to 366
 * Range  five harmonics at most are used here
 * Source Fourier series of daily statistics: Richardson 1981, Water Resour. Res. 17:182.
 * Check  AnnualCycleTest
 * </pre>
 */
final class AnnualCycle {
    private final double[] c;

    private AnnualCycle(double[] c) {
        this.c = c;
    }

    /** Least squares through values of days; there must be more days than twice the harmonics plus one. */
    static AnnualCycle fit(double[] daysOfYear, double[] values, int harmonics) {
        double[][] terms = new double[daysOfYear.length][];
        for (int k = 0; k < terms.length; k++) {
            terms[k] = terms(daysOfYear[k], harmonics);
        }
        OLSMultipleLinearRegression regression = new OLSMultipleLinearRegression();
        regression.newSampleData(values, terms);
        return new AnnualCycle(regression.estimateRegressionParameters());
    }

    /** Through twelve monthly values, January first, each standing in the middle of its month. */
    static AnnualCycle ofMonths(double[] values) {
        double[] middle = new double[12];
        for (int k = 0; k < 12; k++) {
            middle[k] = (k + 0.5) * 365.25 / 12 + 0.5;
        }
        return fit(middle, values, 5);
    }

    double at(int dayOfYear) {
        double[] terms = terms(dayOfYear, (c.length - 1) / 2);
        double sum = c[0];
        for (int k = 0; k < terms.length; k++) {
            sum += c[k + 1] * terms[k];
        }
        return sum;
    }

    private static double[] terms(double dayOfYear, int harmonics) {
        double[] terms = new double[2 * harmonics];
        for (int k = 0; k < harmonics; k++) {
            double angle = 2 * Math.PI * (k + 1) * dayOfYear / 365.25;
            terms[2 * k] = StrictMath.cos(angle);
            terms[2 * k + 1] = StrictMath.sin(angle);
        }
        return terms;
    }
}
