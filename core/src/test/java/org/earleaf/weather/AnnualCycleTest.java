// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Cross-check: a curve made of the same harmonics comes back. */
class AnnualCycleTest {
    private static double known(double day) {
        double angle = 2 * Math.PI * day / 365.25;
        return 11 - 13 * Math.cos(angle) - 5 * Math.sin(angle) + 1.5 * Math.cos(2 * angle) - 0.5 * Math.sin(3 * angle);
    }

    @Test
    void a_curve_of_three_harmonics_comes_back_from_its_days() {
        double[] days = IntStream.rangeClosed(1, 365).asDoubleStream().toArray();
        double[] values = IntStream.rangeClosed(1, 365)
                .mapToDouble(AnnualCycleTest::known)
                .toArray();
        AnnualCycle cycle = AnnualCycle.fit(days, values, 3);
        assertThat(cycle.at(1)).isCloseTo(known(1), within(1e-9));
        assertThat(cycle.at(200)).isCloseTo(known(200), within(1e-9));
    }

    @Test
    void twelve_monthly_values_stand_in_the_middle_of_their_months() {
        double[] months = new double[12];
        for (int k = 0; k < 12; k++) {
            months[k] = known((k + 0.5) * 365.25 / 12 + 0.5);
        }
        AnnualCycle cycle = AnnualCycle.ofMonths(months);
        assertThat(cycle.at(16)).isCloseTo(months[0], within(0.1));
        assertThat(cycle.at(197)).isCloseTo(months[6], within(0.1));
    }
}
