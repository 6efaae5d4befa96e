// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.List;
import java.util.Set;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.junit.jupiter.api.Test;

class YearLikenessTest {
    private static final LocalDate FIRST = LocalDate.of(2001, 5, 1);

    /** The density of the normal distribution, from Hipparchus, over its top is the kernel. */
    @Test
    void a_year_weighs_by_the_normal_density_of_its_distance_and_half_of_all_weight_is_shared_alike() {
        double[][] years = {{100, 500}, {200, 500}, {300, 500}};
        double[] w = YearLikeness.weights(years, new double[] {200, 500});
        NormalDistribution normal = new NormalDistribution(0, 1);
        double beside = normal.density(1) / normal.density(0);
        double sum = 1 + 2 * beside;
        assertThat(w[0]).isCloseTo(0.5 * beside / sum + 0.5 / 3, within(1e-12));
        assertThat(w[1]).isCloseTo(0.5 / sum + 0.5 / 3, within(1e-12));
        assertThat(w[2]).isEqualTo(w[0]);
    }

    @Test
    void rain_and_warmth_count_together() {
        double[][] years = {{100, 400}, {100, 600}, {300, 400}, {300, 600}, {200, 500}};
        double[] w = YearLikeness.weights(years, new double[] {300, 600});
        assertThat(w[3]).isGreaterThan(w[4]);
        assertThat(w[4]).isGreaterThan(w[1]);
        assertThat(w[1]).isCloseTo(w[2], within(1e-12)).isGreaterThan(w[0]);
    }

    @Test
    void no_year_ever_weighs_less_than_half_of_an_equal_share() {
        double[][] years = {{100, 400}, {110, 410}, {120, 420}, {130, 380}};
        double[] far = YearLikeness.weights(years, new double[] {5000, 9000});
        assertThat(far).containsExactly(new double[] {.25, .25, .25, .25}, within(1e-12));
        for (double w : YearLikeness.weights(years, new double[] {100, 400})) {
            assertThat(w).isGreaterThanOrEqualTo(.125);
        }
    }

    @Test
    void without_sixty_days_of_this_season_or_of_a_year_it_counts_as_the_mean() {
        double nan = Double.NaN;
        double[] now = YearLikeness.weights(new double[][] {{1, 2}, {3, 4}}, new double[] {nan, nan});
        assertThat(now).containsExactly(new double[] {.5, .5}, within(1e-12));
        double[] one =
                YearLikeness.weights(new double[][] {{100, 500}, {nan, nan}, {300, 500}}, new double[] {200, 500});
        assertThat(one[1]).isCloseTo(1.0 / 3, within(1e-12));
        assertThat(YearLikeness.weights(new double[0][], new double[] {1, 1})).isEmpty();
    }

    private static WeatherSeries wetOn(Set<Integer> days) {
        return new WeatherSeries(FIRST.datesUntil(FIRST.plusDays(60))
                .map(d -> WeatherDay.of(d, 25, 15, days.contains((int) (d.toEpochDay() - FIRST.toEpochDay())) ? 5 : 0))
                .toList());
    }

    private static int shift(Integer... wet) {
        return YearLikeness.shift_d(wetOn(Set.copyOf(List.of(wet))), FIRST.plusDays(20), FIRST.plusDays(50));
    }

    @Test
    void a_wet_spell_of_more_than_two_days_is_not_cut() {
        assertThat(shift(19, 20)).as("two days may be cut").isEqualTo(0);
        assertThat(shift(20, 21, 22)).as("the whole spell lies ahead").isEqualTo(0);
        assertThat(shift(17, 18, 19)).as("the whole spell is over").isEqualTo(0);
        assertThat(shift(19, 20, 21)).as("back to its first day").isEqualTo(-1);
        assertThat(shift(17, 18, 19, 20)).as("on to the first dry day").isEqualTo(1);
    }

    @Test
    void where_it_rains_without_end_the_years_stay_as_they_are() {
        WeatherSeries wet = new WeatherSeries(FIRST.datesUntil(FIRST.plusDays(60))
                .map(d -> WeatherDay.of(d, 25, 15, 5))
                .toList());
        assertThat(YearLikeness.shift_d(wet, FIRST.plusDays(20), FIRST.plusDays(50)))
                .isEqualTo(0);
    }

    @Test
    void rain_and_warmth_are_those_of_the_last_sixty_days() {
        double[] sums = YearLikeness.before(wetOn(Set.of(0, 59)), FIRST.plusDays(59));
        assertThat(sums).containsExactly(new double[] {10, 600}, within(1e-9));
        assertThat(YearLikeness.before(wetOn(Set.of()), FIRST.plusDays(58))).containsExactly(Double.NaN, Double.NaN);
    }
}
