// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import java.util.stream.DoubleStream;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.stat.descriptive.DescriptiveStatistics;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Cross-check: moments and shares against the closed forms of the distributions (Hipparchus for the gamma tail). */
class DrawsTest {
    private static final int N = 200_000;

    private static DescriptiveStatistics of(DoubleStream draws) {
        return new DescriptiveStatistics(draws.toArray());
    }

    @Test
    void normal_draws_have_the_moments_and_tails_of_the_normal_distribution() {
        SplittableRandom random = new SplittableRandom(1);
        DescriptiveStatistics draws =
                of(DoubleStream.generate(() -> Draws.normal(random)).limit(N));
        assertThat(draws.getMean()).isCloseTo(0, within(0.01));
        assertThat(draws.getStandardDeviation()).isCloseTo(1, within(0.01));
        assertThat(draws.getSkewness()).isCloseTo(0, within(0.03));
        assertThat(draws.getPercentile(97.5)).isCloseTo(1.960, within(0.02));
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.4, 0.74, 1, 3.5})
    void gamma_draws_have_the_moments_and_quantiles_of_the_gamma_distribution(double shape) {
        SplittableRandom random = new SplittableRandom(2);
        DescriptiveStatistics draws =
                of(DoubleStream.generate(() -> Draws.gamma(shape, random)).limit(N));
        GammaDistribution gamma = new GammaDistribution(shape, 1);
        assertThat(draws.getMean()).isCloseTo(shape, within(0.02 * shape));
        assertThat(draws.getVariance()).isCloseTo(shape, within(0.03 * shape));
        for (double p : new double[] {0.25, 0.5, 0.9, 0.99}) {
            assertThat(draws.getPercentile(100 * p) / gamma.inverseCumulativeProbability(p))
                    .isCloseTo(1, within(0.04));
        }
    }

    @Test
    void factors_have_mean_one() {
        SplittableRandom random = new SplittableRandom(3);
        DescriptiveStatistics draws =
                of(DoubleStream.generate(() -> Draws.factor(0.15, random)).limit(N));
        assertThat(draws.getMean()).isCloseTo(1, within(0.002));
        assertThat(draws.getStandardDeviation()).isCloseTo(0.15, within(0.002));
    }
}
