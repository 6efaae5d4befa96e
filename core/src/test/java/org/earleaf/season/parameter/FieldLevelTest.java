// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.earleaf.units.BundledTable;
import org.hipparchus.stat.StatUtils;
import org.junit.jupiter.api.Test;

/** What a field's own years make of the level the trials leave open. */
class FieldLevelTest {
    private static final double ABOVE = Math.log(1.10);

    private static double number(String column) {
        return BundledTable.rows("trial-effects.csv").stream()
                .filter(row -> row.text("parameter").equals("RUE"))
                .findFirst()
                .orElseThrow()
                .number(column);
    }

    /** By hand: two normals with known variances, precisions added up. */
    @Test
    void the_level_is_the_mean_of_prior_and_years_weighed_by_their_precision() {
        double farms = number("farm_sd") * number("farm_sd");
        double years = number("year_sd") * number("year_sd") + number("rest_sd") * number("rest_sd");
        List<Double> logs = List.of(.10, .30, -.04, .08);
        double precision = 1 / farms + logs.size() / years;
        FieldLevel level = FieldLevel.of(logs);
        assertThat(level.years()).isEqualTo(4);
        assertThat(level.shift()).isCloseTo((.10 + .30 - .04 + .08) / years / precision, within(1e-12));
        assertThat(level.weight()).isCloseTo(1 - 1 / precision / farms, within(1e-12));
    }

    @Test
    void more_years_that_say_the_same_move_it_farther_and_narrow_it_more_but_never_past_what_they_say() {
        FieldLevel before = FieldLevel.UNKNOWN;
        for (int n = 1; n <= 40; n++) {
            FieldLevel level = FieldLevel.of(Collections.nCopies(n, ABOVE));
            assertThat(level.shift()).isGreaterThan(before.shift()).isLessThan(ABOVE);
            assertThat(level.weight()).isGreaterThan(before.weight()).isLessThan(1);
            before = level;
        }
    }

    @Test
    void better_years_mean_a_higher_level() {
        assertThat(FieldLevel.of(List.of(.1, .2)).shift())
                .isGreaterThan(FieldLevel.of(List.of(.1, .15)).shift());
        assertThat(FieldLevel.of(List.of(-.1, -.1)).shift()).isNegative();
    }

    @Test
    void a_year_out_of_all_reason_does_not_count_and_a_field_that_is_poor_every_year_does() {
        assertThat(FieldLevel.believed(List.of(.1, .05, -2.3, .12), 1)).containsExactly(.1, .05, Double.NaN, .12);
        assertThat(FieldLevel.believed(List.of(-.55, -.5, -.6, -.5, -.55), 1))
                .containsExactly(-.55, -.5, -.6, -.5, -.55);
        assertThat(FieldLevel.believed(List.of(-1.5), 1)).containsExactly(Double.NaN);
    }

    /** As deep as the droughts of the trials. By hand: beside three years of .1, .1 and .06, w' = .36, s = .195. */
    @Test
    void a_drought_counts_as_one_three_standard_deviations_deep() {
        List<Double> believed = FieldLevel.believed(List.of(.1, .1, -.75, .06), 1);
        double farms = number("farm_sd") * number("farm_sd");
        double years = number("year_sd") * number("year_sd") + number("rest_sd") * number("rest_sd");
        double weight = 3 * farms / (3 * farms + years);
        double deep = weight * .1 - 3 * Math.sqrt((1 - weight) * farms + years);
        assertThat(deep).isBetween(-.56, -.54);
        assertThat(believed.get(2)).isCloseTo(deep, within(1e-12));
        assertThat(believed).element(0).isEqualTo(.1);
        assertThat(FieldLevel.of(believed).shift())
                .isLessThan(FieldLevel.of(List.of(.1, .1, .06)).shift());
    }

    @Test
    void where_the_model_may_be_farther_off_more_is_believed() {
        double off = -3.5 * Parameter.RUE.cv();
        assertThat(FieldLevel.believed(List.of(off), 1).get(0)).isStrictlyBetween(off, 0.);
        assertThat(FieldLevel.believed(List.of(off), 2)).containsExactly(off);
    }

    /** A good field makes more, its soil gives more, and a ton asks for less. */
    @Test
    void what_goes_along_with_the_level_on_the_trials_goes_along_with_it_here() {
        FieldLevel level = FieldLevel.of(Collections.nCopies(8, ABOVE));
        ParameterSet good = level.applied(ParameterSet.usual());
        assertThat(good.of(Parameter.RUE) / Parameter.RUE.usual()).isCloseTo(Math.exp(level.shift()), within(1e-12));
        assertThat(good.of(Parameter.MINERALISATION)).isGreaterThan(Parameter.MINERALISATION.usual());
        assertThat(good.of(Parameter.CRITICAL)).isLessThan(Parameter.CRITICAL.usual());
        assertThat(FieldLevel.UNKNOWN.applied(ParameterSet.usual())).isSameAs(ParameterSet.usual());
    }

    @Test
    void members_are_drawn_around_the_level_and_closer_together() {
        FieldLevel level = FieldLevel.of(Collections.nCopies(8, ABOVE));
        double[] any = logs(ParameterDraws.members(ParameterSet.usual(), 4000, 3));
        double[] known = logs(ParameterDraws.members(ParameterSet.usual(), level, 4000, 3, 1));
        double years = Math.hypot(number("year_sd"), number("rest_sd"));
        double left = Math.hypot(years, number("farm_sd") * Math.sqrt(1 - level.weight()));
        assertThat(StatUtils.mean(known) - StatUtils.mean(any)).isCloseTo(level.shift(), within(.01));
        assertThat(Math.sqrt(StatUtils.variance(known))).isCloseTo(left, within(.03 * left));
    }

    private static double[] logs(List<ParameterSet> members) {
        return members.stream()
                .mapToDouble(set -> Math.log(set.of(Parameter.RUE)))
                .toArray();
    }
}
