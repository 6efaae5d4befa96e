// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Incidence.Verdict;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class IncidenceTest {
    /** Reference: SciPy 1.17.1, binomtest(...).proportion_ci(0.9, "wilson"). */
    @ParameterizedTest
    @CsvSource({"58, 100, 0.4978, 0.6580, UNDECIDED", "62, 100, 0.5380, 0.6957, ABOVE", "30, 100, 0.2307, 0.3798, BELOW"
    })
    void wilson_interval_of_ninety_percent_decides(int shows, int plants, double low, double high, Verdict verdict) {
        Incidence seen = new Incidence(shows, plants);
        assertThat(seen.low()).isCloseTo(low, within(0.00006));
        assertThat(seen.high()).isCloseTo(high, within(0.00006));
        assertThat(seen.against(0.5)).isEqualTo(verdict);
    }

    /** The ends solve (p - q)^2 = z^2 q (1 - q)/n, which is how Wilson's interval is defined. */
    @Test
    void the_ends_solve_the_equation_that_defines_them() {
        double z2 = 2.705543454095404;
        for (int shows = 0; shows <= 50; shows += 5) {
            Incidence seen = new Incidence(shows, 50);
            for (double q : new double[] {seen.low(), seen.high()}) {
                double left = (seen.share() - q) * (seen.share() - q);
                assertThat(left).isCloseTo(z2 * q * (1 - q) / 50, within(1e-12));
            }
        }
    }

    @Test
    void more_plants_with_the_same_share_decide_more() {
        assertThat(new Incidence(30, 50).against(0.5)).isEqualTo(Verdict.UNDECIDED);
        assertThat(new Incidence(120, 200).against(0.5)).isEqualTo(Verdict.ABOVE);
    }

    @Test
    void more_than_all_plants_are_refused() {
        assertThatThrownBy(() -> new Incidence(51, 50))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("count.impossible at plants: found found.quoted{text=51/50}");
    }
}
