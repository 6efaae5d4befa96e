// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.assertj.core.data.Offset;
import org.earleaf.season.parameter.Parameter;
import org.earleaf.season.parameter.ParameterSet;
import org.junit.jupiter.api.Test;

class FitTest {
    private static final double[] RATES_KGHA = {0, 70, 140, 210, 280};
    private static final Offset<Double> EXACT = within(1e-9);

    /** 6 t/ha without nitrogen, 10.9 from 140 kg/ha on. */
    private static final Measured MEASURED = new Measured(6000, 70, -.25, 140, 10_900);

    private static FitCase with(double more_kgHa, double factor) {
        double[] grain = IntStream.range(0, RATES_KGHA.length)
                .mapToDouble(k -> more_kgHa + factor * MEASURED.at(RATES_KGHA[k]))
                .toArray();
        return FitCase.of(ScatterTest.siteYear(MEASURED), RATES_KGHA, grain);
    }

    @Test
    void a_level_that_is_off_costs_its_square_and_leaves_the_gain_alone() {
        assertThat(with(2000, 1).yieldError()).isCloseTo(4, EXACT);
        assertThat(with(2000, 1).gainError()).isCloseTo(0, EXACT);
    }

    /** Half the gain: 4.9 - 2.45 t/ha are missing without nitrogen, nothing is where it is plenty. */
    @Test
    void a_gain_that_is_off_costs_though_the_level_is_right() {
        double missing = (10.9 - 6) / 2;
        double missingAt70 = (10.9 - (6 + 4.9 - 1.225)) / 2;
        assertThat(with(5450, .5).gainError()).isCloseTo((missing * missing + missingAt70 * missingAt70) / 5, EXACT);
    }

    @Test
    void a_model_that_asks_for_nothing_leaves_what_nitrogen_would_have_paid() {
        FitCase flat = FitCase.of(ScatterTest.siteYear(MEASURED), RATES_KGHA, new double[] {9e3, 9e3, 9e3, 9e3, 9e3});
        assertThat(flat.best_kgHa()).isZero();
        assertThat(flat.regret()).isGreaterThan(100);
        assertThat(with(0, 1).regret()).isLessThan(3);
    }

    @Test
    void plants_twice_as_heavy_or_half_cost_alike() {
        assertThat(plants(20).loss()).isCloseTo(plants(5).loss(), EXACT);
        assertThat(plants(20).loss() - plants(10).loss()).isCloseTo(.8 * Math.pow(Math.log(2), 2), EXACT);
    }

    private static Fitted plants(double weight) {
        LocalDate day = LocalDate.of(2013, 7, 4);
        return new Fitted(
                List.of(with(0, 1)),
                List.of(
                        new Marsden.Pair(new Marsden.Seen(Trait.SHOOT, day, 10), weight),
                        new Marsden.Pair(new Marsden.Seen(Trait.SHOOT_NITROGEN, day, 10), 10),
                        new Marsden.Pair(new Marsden.Seen(Trait.NITRATE, day, 10), 10)));
    }

    @Test
    void numbers_start_at_their_centres_and_stay_in_their_ranges() {
        List<FitNumber> numbers = FitNumber.all();
        double[] off = new double[numbers.size()];
        for (FitNumber number : numbers) {
            assertThat(FitNumber.at(numbers, off).of(number.parameter())).isEqualTo(number.centre());
        }
        Arrays.fill(off, 1000);
        ParameterSet far = FitNumber.at(numbers, off);
        assertThat(far.of(Parameter.RUE)).isEqualTo(Parameter.RUE.high());
    }

    @Test
    void the_search_finds_a_known_bottom_and_the_same_one_again() {
        FitOptions options = FitOptions.of(new String[] {"folder", "--rounds", "80", "--seed", "7"});
        double[] found = Fit.search(options, 2, x -> Math.pow(x[0] - 1, 2) + 10 * Math.pow(x[1] + x[0], 2));
        assertThat(found[0]).isCloseTo(1, within(1e-2));
        assertThat(found[1]).isCloseTo(-1, within(1e-2));
        assertThat(Fit.search(options, 2, x -> Math.pow(x[0] - 1, 2) + 10 * Math.pow(x[1] + x[0], 2)))
                .containsExactly(found);
    }

    @Test
    void an_option_that_is_none_is_refused_with_those_there_are() {
        assertThatThrownBy(() -> FitOptions.of(new String[] {"folder", "--seeds", "7"}))
                .hasMessageContaining("--seeds")
                .hasMessageContaining("--seed NUMBER");
        assertThatThrownBy(() -> FitOptions.of(new String[] {"folder", "--seed"}))
                .hasMessageContaining("no value behind --seed");
        assertThatThrownBy(() -> FitOptions.of(new String[] {"folder", "--given", "fall"}))
                .hasMessageContaining("--given fall")
                .hasMessageContaining("planting, june or either");
    }

    @Test
    void when_the_nitrogen_was_given_is_at_planting_unless_told() {
        assertThat(FitOptions.of(new String[] {"folder"}).given()).containsExactly(Situation.PLANTING);
        assertThat(FitOptions.of(new String[] {"folder", "--given", "either"}).given())
                .containsExactly(Situation.PLANTING, Situation.JUNE);
    }
}
