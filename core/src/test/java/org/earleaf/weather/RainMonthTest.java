// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.hipparchus.distribution.continuous.GammaDistribution;
import org.hipparchus.special.Gamma;
import org.junit.jupiter.api.Test;

/** Cross-check: the stationary share of the chain by hand, and Thom's shape against the exact likelihood equation. */
class RainMonthTest {
    @Test
    void a_quarter_after_dry_and_45_in_100_after_wet_make_31_wet_days_in_100() {
        assertThat(new RainMonth(.25, .45, 1, 1).wetShare()).isCloseTo(.3125, within(1e-12));
    }

    @Test
    void thoms_shape_solves_the_likelihood_equation_of_the_gamma_distribution() {
        for (double shape : new double[] {0.6, 0.74, 1, 2}) {
            double s = StrictMath.log(shape) - Gamma.digamma(shape);
            assertThat(RainMonth.thom(s) / shape).isCloseTo(1, within(0.03));
        }
    }

    @Test
    void shape_and_scale_come_back_from_draws() {
        SplittableRandom random = new SplittableRandom(5);
        GammaDistribution gamma = new GammaDistribution(2, 4);
        List<WeatherDay> days = new ArrayList<>();
        List<Boolean> before = new ArrayList<>();
        for (int k = 0; k < 20_000; k++) {
            double mm = gamma.inverseCumulativeProbability(random.nextDouble());
            days.add(WeatherDay.of(LocalDate.of(2020, 6, 1), 25, 15, Math.max(mm, 0.3)));
            before.add(k % 2 == 0);
        }
        RainMonth month = RainMonth.fit(days, before);
        assertThat(month.shape()).isCloseTo(2, within(0.06));
        assertThat(month.scale_mm()).isCloseTo(4, within(0.15));
        assertThat(month.wetAfterDry()).isEqualTo(1);
    }

    @Test
    void monthly_means_keep_their_wet_days_and_their_rain() {
        RainMonth june = RainMonth.of(new MonthlyClimate(Month.JUNE, 27.6, 16, 116.9, 11.2));
        assertThat(june.wetShare() * 30).isCloseTo(11.2, within(1e-9));
        assertThat(june.shape() * june.scale_mm() * 11.2).isCloseTo(116.9, within(1e-9));
    }
}
