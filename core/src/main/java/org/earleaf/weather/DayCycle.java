// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

/** Mean and spread of one variable through the year, on dry days and on wet days. */
record DayCycle(AnnualCycle meanDry, AnnualCycle meanWet, AnnualCycle varianceDry, AnnualCycle varianceWet) {
    /** Keeps a spread where the smooth curve dips too low [unit of the variable, squared]; own construct. */
    private static final double LEAST_VARIANCE = 1;

    /** Value of a day from its normal residual. */
    double value(int dayOfYear, boolean wet, double residual) {
        double mean = (wet ? meanWet : meanDry).at(dayOfYear);
        double variance = (wet ? varianceWet : varianceDry).at(dayOfYear);
        return mean + StrictMath.sqrt(Math.max(LEAST_VARIANCE, variance)) * residual;
    }
}
