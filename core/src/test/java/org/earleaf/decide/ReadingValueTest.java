// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;

/** Limits that any value of information must keep (Raiffa & Schlaifer 1961), and a case worked by hand. */
class ReadingValueTest {
    private static final double[] SEEN = {3, 5, 8, 13, 20, 30};
    /** One pass that pays 40 in poor members and loses 20 in rich ones. */
    private static final double[][] GAINS = {{40, 40, 40, -20, -20, -20}};

    @Test
    void a_perfect_test_is_worth_what_perfect_information_is() {
        // Mean of acting 10; with knowledge (40 + 40 + 40)/6 = 20: worth 10.
        assertThat(ReadingValue.ofTest(GAINS, SEEN, .02).worth()).isCloseTo(10, within(.05));
    }

    @Test
    void a_hopeless_test_is_worth_nothing_and_a_better_one_is_never_worth_less() {
        double last = 0;
        for (double s : new double[] {20, 1.5, .8, .5, .3, .1}) {
            double worth = ReadingValue.ofTest(GAINS, SEEN, s).worth();
            assertThat(worth).isGreaterThanOrEqualTo(last - .15).isLessThanOrEqualTo(10 + 1e-6);
            last = worth;
        }
        assertThat(ReadingValue.ofTest(GAINS, SEEN, 50).worth()).isCloseTo(0, within(.01));
    }

    @Test
    void a_test_that_cannot_change_the_choice_is_worth_nothing() {
        assertThat(ReadingValue.ofTest(new double[][] {{5, 6, 7, 8, 9, 10}}, SEEN, .3)
                        .worth())
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void the_reading_that_turns_the_choice_lies_between_poor_and_rich() {
        assertThat(ReadingValue.ofTest(GAINS, SEEN, .3).leaveAbove())
                .hasValueSatisfying(ppm -> assertThat(ppm).isBetween(9, 14));
    }
}
