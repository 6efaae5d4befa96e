// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Placement;
import org.earleaf.field.Purpose;
import org.earleaf.units.Ranks;
import org.earleaf.units.Units;
import org.junit.jupiter.api.Test;

/** Standard error of paired differences worked by hand: differences 1, 2, 3, 4 have sd 1.291, error .6455. */
class TiesTest {
    private static final LocalDate DAY = LocalDate.of(2026, 6, 30);
    private static final double DOLLAR_AN_ACRE = 1 / Units.HA_PER_AC;

    private static DayOptions.Valued of(int day, double lbAc, String rig, double... gains) {
        double mean = Ranks.mean(gains);
        Worth worth = new Worth(mean, mean, mean, 1, mean, 4, lbAc, 0, Double.NaN);
        Option option = new Option(
                new FieldPart("Home", ""),
                Purpose.NITROGEN,
                DAY.plusDays(day),
                new Option.Application("UAN 32", Placement.ROW_BASE, Units.kgHa(lbAc), 100, true, rig),
                worth,
                0,
                List.of(),
                Optional.empty(),
                Optional.empty());
        return new DayOptions.Valued(option, gains);
    }

    private static double[] lower(double[] gains, double... by) {
        double[] less = gains.clone();
        Arrays.setAll(less, m -> gains[m] - by[m]);
        return less;
    }

    @Test
    void two_standard_errors_of_the_difference_are_a_tie_at_most_a_dollar_an_acre() {
        double[] a = {50, 60, 70, 90};
        assertThat(Ties.within_usdHa(a, lower(a, 1, 2, 3, 4))).isCloseTo(2 * .6455, within(1e-4));
        assertThat(Ties.within_usdHa(a, lower(a, 5, 5, 5, 5))).isZero();
        assertThat(Ties.within_usdHa(a, lower(a, -60, 60, -60, 60))).isCloseTo(DOLLAR_AN_ACRE, within(1e-9));
    }

    @Test
    void of_tied_choices_the_smaller_rate_goes_and_a_clear_lead_stays() {
        double[] best = {50, 60, 70, 90};
        DayOptions.Valued eighty = of(0, 80, "highboy", best);
        DayOptions.Valued sixty = of(0, 60, "highboy", lower(best, -3, 4, -2, 3));
        DayOptions.Valued forty = of(0, 40, "highboy", lower(best, 6, 7, 6, 7));
        assertThat(Ties.pick(List.of(eighty, sixty, forty))).hasValue(sixty);
        assertThat(Ties.pick(List.of(eighty, forty))).hasValue(eighty);
        assertThat(Ties.pick(List.of())).isEmpty();
    }

    @Test
    void each_rig_has_its_pick_on_each_day() {
        double[] best = {50, 60, 70, 90};
        List<Option> picks = Ties.picks(List.of(
                of(0, 80, "highboy", best),
                of(1, 70, "highboy", lower(best, 1, 1, 1, 1)),
                of(0, 60, "highboy", lower(best, -3, 4, -2, 3)),
                of(0, 50, "sidedress bar", lower(best, 9, 9, 9, 9))));
        assertThat(picks)
                .extracting(
                        o -> o.date().getDayOfMonth() + " " + o.rig() + " " + Math.round(Units.lbAc(o.nitrogen_kgHa())))
                .containsExactly("30 highboy 60", "30 sidedress bar 50", "1 highboy 70");
    }

    @Test
    void a_later_day_that_wins_by_less_than_chance_is_not_waited_for() {
        double[] today = {50, 60, 70, 90};
        double[] later = lower(today, 1, -3, 2, -4);
        List<DayOptions.Valued> all = List.of(of(3, 60, "highboy", later), of(0, 60, "highboy", today));
        double[] value = {Ranks.mean(today), 0, 0, Ranks.mean(later)};
        double[] works = {1, 1, 1, 1};
        boolean[] among = {true, false, false, true};
        double[] tie = Ties.ofDays(all, DAY, value);
        assertThat(tie[0]).isPositive();
        assertThat(tie[3]).isZero();
        assertThat(new Waiting(value, works).day(among)).isEqualTo(3);
        assertThat(new Waiting(value, works, tie).day(among)).isZero();
    }
}
