// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import org.earleaf.weather.Draws;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

class NestedEffectsTest {
    /** Strength of a paste: ten deliveries, three casks of each, two analyses of each cask. */
    private static final double[] PASTES = {
        62.8, 62.6, 60.1, 62.3, 62.7, 63.1, 60.0, 61.4, 57.5, 56.9, 61.1, 58.9, 58.7, 57.5, 63.9, 63.1, 65.4, 63.7,
        57.1, 56.4, 56.9, 58.6, 64.7, 64.5, 55.1, 55.1, 54.7, 54.2, 58.8, 57.5, 63.4, 64.9, 59.3, 58.1, 60.5, 60.0,
        62.5, 62.6, 61.0, 58.7, 56.9, 57.7, 59.2, 59.4, 65.2, 66.0, 64.8, 64.1, 54.8, 54.8, 64.0, 64.0, 57.7, 56.8,
        58.3, 59.3, 59.2, 59.2, 58.9, 56.6
    };

    /** Yield of dyestuff: six batches, five trials of each. */
    private static final double[] DYESTUFF = {
        1545, 1440, 1440, 1520, 1580, 1540, 1555, 1490, 1560, 1495, 1595, 1550, 1605, 1510, 1560, 1445, 1440, 1595,
        1465, 1545, 1595, 1630, 1515, 1635, 1625, 1520, 1455, 1450, 1480, 1445
    };

    private static List<Evidence> exact(double[] value, int ofFarm, int ofYear) {
        double sure = 1e6;
        List<Evidence> all = new ArrayList<>();
        for (int k = 0; k < value.length; k++) {
            all.add(new Evidence(
                    "farm " + k / ofFarm,
                    "year " + k / ofYear,
                    MatrixUtils.createRealDiagonalMatrix(new double[] {sure}),
                    MatrixUtils.createRealVector(new double[] {sure * value[k]})));
        }
        return all;
    }

    /**
     * Davies & Goldsmith 1972, Statistical Methods in Research and Production, table 6.5; restricted likelihood by lme4
     * (Pastes): 1.657 between deliveries, 8.434 between casks, .678 between analyses; all from memory, and the same by
     * hand from the mean squares.
     */
    @Test
    void parts_the_strength_of_a_paste_into_delivery_cask_and_analysis_as_published() {
        Nested found = new NestedEffects(exact(PASTES, 6, 2), false, Nested.alike(3)).search(4000);
        assertThat(found.farm().getEntry(0, 0)).isCloseTo(1.657, within(.002));
        assertThat(found.year().getEntry(0, 0)).isCloseTo(8.434, within(.002));
        assertThat(found.rest().getEntry(0, 0)).isCloseTo(.678, within(.001));
    }

    /**
     * The same book, table 6.1; 1764.05 between batches, 2451.25 within, by lme4 (Dyestuff) and from the mean squares.
     * One trial a year: what is of years and what is the rest cannot be told apart, their sum can.
     */
    @Test
    void one_way_of_batches_comes_to_the_published_components() {
        double[] hundreds = Arrays.stream(DYESTUFF).map(yield -> yield / 100).toArray();
        Nested found = new NestedEffects(exact(hundreds, 5, 1), false, Nested.alike(.7)).search(4000);
        assertThat(found.farm().getEntry(0, 0)).isCloseTo(.1764, within(.0003));
        assertThat(found.year().getEntry(0, 0) + found.rest().getEntry(0, 0)).isCloseTo(.2451, within(.0003));
    }

    private static final double[][] FARM = {{.04, .01}, {.01, .09}};
    private static final double[][] YEAR = {{.09, -.06}, {-.06, .16}};
    private static final double[][] REST = {{.02, .01}, {.01, .04}};

    private static RealVector draw(double[][] covariance, SplittableRandom random) {
        RealMatrix root = new CholeskyDecomposition(MatrixUtils.createRealMatrix(covariance)).getL();
        return root.operate(MatrixUtils.createRealVector(new double[] {Draws.normal(random), Draws.normal(random)}));
    }

    /** Sixty farms of twelve years of two rotations, each seen with an error of its own covariance. */
    private static List<Evidence> made(double[][] error) {
        SplittableRandom random = new SplittableRandom(4);
        RealMatrix precision = MatrixUtils.inverse(MatrixUtils.createRealMatrix(error));
        List<Evidence> all = new ArrayList<>();
        for (int f = 0; f < 60; f++) {
            RealVector farm = draw(FARM, random);
            for (int y = 0; y < 12; y++) {
                RealVector year = farm.add(draw(YEAR, random));
                for (int rotation = 0; rotation < 2; rotation++) {
                    RealVector seen = year.add(draw(REST, random)).add(draw(error, random));
                    all.add(new Evidence("f" + f, f + " " + y, precision, precision.operate(seen)));
                }
            }
        }
        return all;
    }

    /** Within some three standard errors of 60 farms, 720 years and 1440 cases: v sqrt(2 / n), a little more with error. */
    @Test
    void finds_made_covariances_again_though_seen_through_error() {
        double[][] error = {{.03, .01}, {.01, .05}};
        Nested found = new NestedEffects(made(error), true, Nested.alike(.3, .3)).search(400);
        assertNear(found.farm(), FARM, .055);
        assertNear(found.year(), YEAR, .03);
        assertNear(found.rest(), REST, .012);
    }

    private static void assertNear(RealMatrix found, double[][] made, double off) {
        for (int j = 0; j < 2; j++) {
            for (int k = 0; k < 2; k++) {
                assertThat(found.getEntry(j, k)).as("%d %d", j, k).isCloseTo(made[j][k], within(off));
            }
        }
    }

    /** A case that says nothing of a direction leaves what lies there to the others. */
    @Test
    void a_case_that_says_nothing_is_thought_to_be_like_its_year() {
        List<Evidence> all = new ArrayList<>(exact(new double[] {1, 1.2, -1, -.8, .5, .3}, 2, 2));
        all.add(new Evidence(
                "farm 0", "year 0", MatrixUtils.createRealMatrix(1, 1), MatrixUtils.createRealVector(new double[] {0
                })));
        NestedEffects search = new NestedEffects(all, true, Nested.alike(1));
        search.search(1);
        double silent = search.totals().get(6).mean().getEntry(0);
        assertThat(silent).isBetween(.5, 1.1);
        assertThat(search.totals().get(6).covariance().getEntry(0, 0))
                .isGreaterThan(100 * search.totals().get(0).covariance().getEntry(0, 0));
    }
}
