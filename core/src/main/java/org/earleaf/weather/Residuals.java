// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

/**
 * How today's departures of highest temperature, lowest temperature and radiation from their means follow from
 * yesterday's.
 *
 * <pre>
 * x = A x' + B e
 *
 * x, x'  departures of today and yesterday in standard deviations: highest, lowest temperature, radiation
 * e      three independent normal draws
 * Range  the matrices are means over 31 United States stations; every x then has variance 1
 * Source Richardson 1981, Water Resour. Res. 17:182; Richardson & Wright 1984, USDA ARS-8. Public copies carry typing
 *        errors: .718 for .781, -.314 for -.341, and the sign of -.039.
 * Check  ResidualsTest: a hand-worked step, and the published lag 0 and lag 1 correlations.
 * </pre>
 */
final class Residuals {
    private static final double[][] A = {{.567, .086, -.002}, {.253, .504, -.050}, {-.006, -.039, .244}};
    private static final double[][] B = {{.781, 0, 0}, {.328, .637, 0}, {.238, -.341, .873}};

    private Residuals() {}

    static double[] next(double[] x, double[] e) {
        double[] y = new double[3];
        for (int row = 0; row < 3; row++) {
            for (int k = 0; k < 3; k++) {
                y[row] += A[row][k] * x[k] + B[row][k] * e[k];
            }
        }
        return y;
    }
}
