// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;

/** Covariances of effects that lie in one another: between farms, between years of a farm, and of the rest. */
record Nested(RealMatrix farm, RealMatrix year, RealMatrix rest) {
    /** No level more likely than another. */
    static Nested alike(double... sd) {
        double[] third = new double[sd.length];
        for (int k = 0; k < third.length; k++) {
            third[k] = sd[k] * sd[k] / 3;
        }
        RealMatrix each = MatrixUtils.createRealDiagonalMatrix(third);
        return new Nested(each, each, each);
    }

    RealMatrix total() {
        return farm.add(year).add(rest);
    }

    static double sd(RealMatrix covariance, int k) {
        return Math.sqrt(covariance.getEntry(k, k));
    }

    static double correlation(RealMatrix covariance, int j, int k) {
        return j == k ? 1 : covariance.getEntry(j, k) / (sd(covariance, j) * sd(covariance, k));
    }

    /** How far from another, beside its own size. */
    double change(Nested before) {
        return total().subtract(before.total()).getFrobeniusNorm() / total().getFrobeniusNorm()
                + farm.subtract(before.farm).getFrobeniusNorm() / total().getFrobeniusNorm()
                + year.subtract(before.year).getFrobeniusNorm() / total().getFrobeniusNorm();
    }
}
