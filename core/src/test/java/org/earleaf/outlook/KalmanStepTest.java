// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.SplittableRandom;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.Setting;
import org.earleaf.field.Reading;
import org.earleaf.season.Correcting;
import org.earleaf.season.Observing;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Ranks;
import org.earleaf.weather.Draws;
import org.junit.jupiter.api.Test;

/** The scalar Kalman update in closed form, and what a shift leaves of the books. */
class KalmanStepTest {
    private static final LocalDate TESTED = TestFarm.ON.minusDays(12);

    /** Prior 60 with sd 20, reading 90 with sd 15: K = 400/625 = .64, mean 79.2, sd 20 sqrt(.36) = 12.0. */
    @Test
    void one_number_moves_as_the_closed_form_says() {
        int n = 40_000;
        SplittableRandom random = new SplittableRandom(3);
        double[] x = new double[n];
        Arrays.setAll(x, m -> Draws.normal(random));
        double mean = Ranks.mean(x);
        double sd = sd(x);
        Arrays.setAll(x, m -> 60 + 20 * (x[m] - mean) / sd);
        KalmanStep step = new KalmanStep(x, 90, 15, Double.POSITIVE_INFINITY, 11);
        assertThat(step.gain(x)).isCloseTo(.64, within(1e-9));
        double[] moves = step.moves(x, 1);
        double[] after = new double[n];
        Arrays.setAll(after, m -> x[m] + moves[m]);
        assertThat(Ranks.mean(after)).isCloseTo(79.2, within(1e-9));
        assertThat(sd(after)).isCloseTo(12.0, within(.15));
        assertThat(step.moves(x, .5)[7]).isCloseTo(.5 * moves[7], within(1e-12));
    }

    private static double sd(double[] x) {
        double mean = Ranks.mean(x);
        double sum = 0;
        for (double v : x) {
            sum += (v - mean) * (v - mean);
        }
        return Math.sqrt(sum / (x.length - 1));
    }

    private static SeasonRun morning(TestFarm farm) {
        return ZoneEnsemble.of(farm.farm(), farm.zone(), TESTED.plusDays(1), false)
                .members();
    }

    private static double[] seen(SeasonRun run) {
        Reading foot = TestFarm.nitrateReading(run.date(), 0);
        double[] ppm = new double[run.members()];
        Arrays.setAll(ppm, m -> Observing.of(run, m, foot));
        return ppm;
    }

    private static TestFarm shifting() {
        return new TestFarm();
    }

    @Test
    void a_test_at_twice_the_mean_pulls_the_mean_part_of_the_way() {
        double before = Ranks.mean(seen(morning(shifting())));
        double after = Ranks.mean(seen(morning(shifting().nitrate(TESTED, 2 * before))));
        assertThat(after).isGreaterThan(before * 1.05).isLessThan(2 * before);
    }

    @Test
    void every_member_still_closes_and_holds_nothing_below_nought() {
        for (double ppm : new double[] {3, 40}) {
            TestFarm farm = shifting().nitrate(TESTED, ppm).height(120);
            SeasonRun run = ZoneEnsemble.of(farm.farm(), farm.zone(), TestFarm.ON, false)
                    .members();
            double booked = 0;
            for (int m = 0; m < run.members(); m++) {
                assertThat(run.nitrogenRemainder_kgHa(m)).isCloseTo(0, within(1e-6));
                assertThat(run.waterRemainder_mm(m)).isCloseTo(0, within(1e-6));
                booked += Correcting.assimilated_kgHa(run, m) / run.members();
                for (int cell = 0; cell < Correcting.cells(); cell++) {
                    assertThat(Correcting.nitrate(run, m, cell)).isNotNegative();
                }
            }
            assertThat(Math.signum(booked)).isEqualTo(ppm > 20 ? 1 : -1);
        }
    }

    @Test
    void a_farm_may_have_members_chosen_instead() {
        SeasonRun run =
                morning(new TestFarm().setting(Setting.SOIL_TEST_SHIFTS, 0).nitrate(TESTED, 40));
        for (int m = 0; m < run.members(); m++) {
            assertThat(Correcting.assimilated_kgHa(run, m)).isZero();
        }
    }
}
