// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

/**
 * Published: Richardson 1981, Water Resour. Res. 17:182: correlations of the departures on the same day and a day apart
 * (from memory; they agree with A = M1 M0^-1 to the third digit), from which the matrices were derived.
 */
@DisplayName("Departures from the mean against Richardson 1981")
class ResidualsTest {
    private static final double[][] SAME_DAY = {{1, .633, .186}, {.633, 1, -.193}, {.186, -.193, 1}};
    private static final double[][] DAY_APART = {{.621, .445, .087}, {.563, .674, -.100}, {.015, -.091, .251}};
    private static final int STEPS = 400_000;

    @Test
    void one_step_worked_by_hand() {
        double[] x = Residuals.next(new double[] {1, .5, -1}, new double[] {.2, -.3, .5});
        assertThat(x).containsExactly(new double[] {.7682, .4295, .3169}, within(0.0001));
    }

    @Test
    void many_steps_have_the_published_correlations_and_the_matrix_a() {
        SplittableRandom random = new SplittableRandom(11);
        double[][] m0 = new double[3][3];
        double[][] m1 = new double[3][3];
        double[] x = new double[3];
        for (int step = 0; step < STEPS; step++) {
            double[] e = {Draws.normal(random), Draws.normal(random), Draws.normal(random)};
            double[] y = Residuals.next(x, e);
            for (int row = 0; row < 3; row++) {
                for (int k = 0; k < 3; k++) {
                    m0[row][k] += y[row] * y[k] / STEPS;
                    m1[row][k] += y[row] * x[k] / STEPS;
                }
            }
            x = y;
        }
        for (int row = 0; row < 3; row++) {
            assertThat(m0[row]).as("same day, row " + row).containsExactly(SAME_DAY[row], within(0.02));
            assertThat(m1[row]).as("a day apart, row " + row).containsExactly(DAY_APART[row], within(0.02));
        }
    }
}
