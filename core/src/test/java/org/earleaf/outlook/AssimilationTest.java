// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import org.earleaf.decide.Outlooks;
import org.earleaf.decide.TestFarm;
import org.earleaf.field.Reading;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.junit.jupiter.api.Test;

/** Resampling against hand-worked weights, and what a soil test does to an ensemble. */
class AssimilationTest {
    private static final LocalDate TESTED = TestFarm.ON.minusDays(12);

    /** Particles 50, 70, 90 and a reading of 80 with sd 10: weights .0091, .4955, .4955, mean 79.7. */
    @Test
    void copies_come_in_proportion_to_likelihood() {
        double[] particles = {50, 70, 90};
        double[] log = Arrays.stream(particles)
                .map(x -> -.5 * (80 - x) * (80 - x) / 100)
                .toArray();
        int[] from = Assimilation.systematic(log, 100_000, .37);
        double[] share = new double[3];
        double mean = 0;
        for (int f : from) {
            share[f] += 1e-5;
            mean += particles[f] * 1e-5;
        }
        assertThat(share[0]).isCloseTo(.0091, within(.0005));
        assertThat(share[1]).isCloseTo(.4955, within(.0005));
        assertThat(share[2]).isCloseTo(.4955, within(.0005));
        assertThat(mean).isCloseTo(79.7, within(.1));
    }

    @Test
    void equal_weights_copy_every_member_once() {
        assertThat(Assimilation.systematic(new double[7], 7, .9)).containsExactly(0, 1, 2, 3, 4, 5, 6);
    }

    /** Of every member on the morning after the test. */
    private static double[] nitrate(TestFarm farm) {
        LocalDate morning = TESTED.plusDays(1);
        SeasonRun run =
                ZoneEnsemble.of(farm.farm(), farm.zone(), morning, false).members();
        Reading foot = TestFarm.nitrateReading(morning, 0);
        double[] ppm = new double[run.members()];
        Arrays.setAll(ppm, m -> Observing.of(run, m, foot));
        return ppm;
    }

    /** From p10 to p90 of a test's own error, on the logarithm. */
    private static final double TEST_ALONE = 2 * 1.2816 * ReadingError.NITRATE;

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }

    private static double spread(double[] values) {
        Spread s = Spread.of(values);
        return Math.log(s.p90() / s.p10());
    }

    @Test
    void a_soil_test_pulls_the_ensemble_to_itself_and_with_it_is_surer_than_alone() {
        double[] before = nitrate(new TestFarm());
        double[] high = nitrate(new TestFarm().nitrate(TESTED, 2 * mean(before)));
        double[] low = nitrate(new TestFarm().nitrate(TESTED, .5 * mean(before)));
        assertThat(mean(high)).isBetween(mean(before), 2 * mean(before));
        assertThat(mean(low)).isBetween(.5 * mean(before), mean(before));
        assertThat(spread(high)).isLessThan(TEST_ALONE);
    }

    /** A test is entered on the day it was taken, and asked on that day what to do. */
    @Test
    void a_soil_test_of_the_day_itself_counts_on_that_day_and_one_of_the_day_after_does_not() {
        double[] before = nitrate(new TestFarm());
        double[] today = nitrate(new TestFarm().nitrate(TESTED.plusDays(1), 2 * mean(before)));
        double[] tomorrow = nitrate(new TestFarm().nitrate(TESTED.plusDays(2), 2 * mean(before)));
        assertThat(mean(today)).isBetween(1.1 * mean(before), 2 * mean(before));
        assertThat(spread(today)).isLessThan(TEST_ALONE);
        assertThat(tomorrow).isEqualTo(before);
    }

    @Test
    void members_still_close_after_a_correction() {
        TestFarm farm = new TestFarm().nitrate(TESTED, 25).height(120);
        SeasonRun run =
                ZoneEnsemble.of(farm.farm(), farm.zone(), TestFarm.ON, false).members();
        for (int m = 0; m < run.members(); m++) {
            assertThat(run.waterRemainder_mm(m)).isCloseTo(0, within(1e-6));
            assertThat(run.nitrogenRemainder_kgHa(m)).isCloseTo(0, within(1e-6));
        }
    }

    @Test
    void a_reading_that_no_member_explains_is_flagged_and_not_swallowed() {
        TestFarm farm = new TestFarm().height(240);
        Outlook outlook = Outlooks.of(farm.farm(), farm.zone(), TestFarm.ON, false);
        assertThat(outlook.flags())
                .anySatisfy(f -> assertThat(f.what().toString()).contains("flag.reading-conflicts"));
        TestFarm usual = new TestFarm().height(115);
        assertThat(Outlooks.of(usual.farm(), usual.zone(), TestFarm.ON, false).flags())
                .noneSatisfy(f -> assertThat(f.what().toString()).contains("flag.reading-conflicts"));
    }
}
