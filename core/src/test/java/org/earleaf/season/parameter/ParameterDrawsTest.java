// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.earleaf.units.BundledTable;
import org.junit.jupiter.api.Test;

/** Moments of the draws against the spreads they are drawn from. */
class ParameterDrawsTest {
    private static final List<ParameterSet> MANY = ParameterDraws.members(ParameterSet.usual(), 4000, 11);
    private static final List<BundledTable.Row> TRIALS = BundledTable.rows("trial-effects.csv");

    private static double mean(List<ParameterSet> sets, Parameter p) {
        return sets.stream().mapToDouble(s -> s.of(p)).average().orElseThrow();
    }

    private static double sd(List<ParameterSet> sets, Parameter p) {
        double mean = mean(sets, p);
        return Math.sqrt(sets.stream()
                .mapToDouble(s -> (s.of(p) - mean) * (s.of(p) - mean))
                .average()
                .orElseThrow());
    }

    @Test
    void draws_have_the_mean_and_the_spread_of_the_registry() {
        for (Parameter p :
                List.of(Parameter.RUE, Parameter.LAI_MAX, Parameter.ROOT_NITROGEN, Parameter.NITRIFICATION)) {
            assertThat(mean(MANY, p) / p.usual()).as(p.name()).isCloseTo(1, within(.02));
            assertThat(sd(MANY, p) / p.usual() / p.cv()).as(p.name()).isCloseTo(1, within(.12));
        }
        assertThat(mean(MANY, Parameter.EMERGENCE)).isCloseTo(115, within(.6));
        assertThat(sd(MANY, Parameter.SILK_SHIFT)).isCloseTo(25, within(1.0));
    }

    @Test
    void every_draw_stays_in_its_range_and_what_has_no_spread_stays() {
        for (ParameterSet set : MANY) {
            for (Parameter p : Parameter.values()) {
                assertThat(set.of(p)).as(p.name()).isBetween(p.low(), p.high());
                if (!p.isPerMember()) {
                    assertThat(set.of(p)).isEqualTo(p.usual());
                }
            }
        }
    }

    private static double[] logs(List<ParameterSet> sets, Parameter p) {
        return sets.stream().mapToDouble(s -> Math.log(s.of(p) / p.usual())).toArray();
    }

    private static double covariance(double[] x, double[] y) {
        double meanX = Arrays.stream(x).average().orElseThrow();
        double meanY = Arrays.stream(y).average().orElseThrow();
        double sum = 0;
        for (int m = 0; m < x.length; m++) {
            sum += (x[m] - meanX) * (y[m] - meanY);
        }
        return sum / x.length;
    }

    private static double correlation(List<ParameterSet> sets, Parameter p, Parameter q) {
        double[] x = logs(sets, p);
        double[] y = logs(sets, q);
        return covariance(x, y) / Math.sqrt(covariance(x, x) * covariance(y, y));
    }

    private static double logSd(List<ParameterSet> sets, Parameter p) {
        double[] x = logs(sets, p);
        return Math.sqrt(covariance(x, x));
    }

    /** The square root of the squares of farms, years and the rest. */
    private static double tableSd(BundledTable.Row row) {
        return Math.hypot(Math.hypot(row.number("farm_sd"), row.number("year_sd")), row.number("rest_sd"));
    }

    private static Parameter parameter(BundledTable.Row row) {
        return Parameter.valueOf(row.text("parameter"));
    }

    @Test
    void what_trials_left_unexplained_is_drawn_together_as_the_table_has_it() {
        assertThat(TRIALS)
                .extracting(ParameterDrawsTest::parameter)
                .containsExactlyInAnyOrder(Parameter.RUE, Parameter.MINERALISATION, Parameter.CRITICAL);
        for (BundledTable.Row row : TRIALS) {
            Parameter p = parameter(row);
            assertThat(logSd(MANY, p) / tableSd(row)).as(p.name()).isCloseTo(1, within(.05));
            for (Parameter q :
                    TRIALS.stream().map(ParameterDrawsTest::parameter).toList()) {
                double told = row.number("r_" + q.name().toLowerCase(Locale.ROOT));
                assertThat(correlation(MANY, p, q)).as("%s with %s", p, q).isCloseTo(told, within(.05));
            }
        }
    }

    @Test
    void the_spread_of_the_registry_is_that_of_the_trials() {
        for (BundledTable.Row row : TRIALS) {
            Parameter p = parameter(row);
            assertThat(p.cv()).as(p.name()).isCloseTo(tableSd(row), within(.01));
            assertThat(TrialEffects.sd(p)).as(p.name()).isCloseTo(tableSd(row), within(1e-12));
        }
    }

    /** Widened by half; a little less where the range cuts the wide draws. The other numbers are as they were. */
    @Test
    void far_from_the_trials_draws_are_wider_and_the_rest_is_as_it_was() {
        List<ParameterSet> far = ParameterDraws.members(ParameterSet.usual(), FieldLevel.UNKNOWN, 4000, 11, 1.5);
        for (BundledTable.Row row : TRIALS) {
            Parameter p = parameter(row);
            assertThat(logSd(far, p) / logSd(MANY, p)).as(p.name()).isBetween(1.35, 1.5 + 1e-9);
        }
        for (Parameter p : List.of(Parameter.LAI_MAX, Parameter.NITRIFICATION, Parameter.SILK_SHIFT)) {
            assertThat(far.get(7).of(p)).isEqualTo(MANY.get(7).of(p));
        }
    }

    @Test
    void another_hundred_members_never_change_the_first() {
        List<ParameterSet> few = ParameterDraws.members(ParameterSet.usual(), 100, 11);
        for (Parameter p : Parameter.values()) {
            assertThat(few.get(2).of(p)).isEqualTo(MANY.get(2).of(p));
        }
    }

    /** By chance a hundred draws would miss the mean by a tenth of their spread, and correlations by .1. */
    @Test
    void a_hundred_draws_have_the_moments_of_all() {
        double[][] z = EvenDraws.of(200, 20, 3, 7);
        for (int block = 0; block < 2; block++) {
            double[][] of = Arrays.copyOfRange(z, 100 * block, 100 * block + 100);
            for (int k = 0; k < 20; k++) {
                double[] x = number(of, k);
                assertThat(Arrays.stream(x).average().orElseThrow()).isCloseTo(0, within(1e-12));
                assertThat(covariance(x, x)).isCloseTo(1, within(1e-12));
            }
            assertThat(covariance(number(of, 0), number(of, 1))).isCloseTo(0, within(1e-12));
            assertThat(covariance(number(of, 1), number(of, 2))).isCloseTo(0, within(1e-12));
        }
        // Spread evenly: each tenth of the scale has about a tenth of the members.
        long lowest = Arrays.stream(number(Arrays.copyOf(z, 100), 0))
                .filter(x -> x < -1.2816)
                .count();
        assertThat(lowest).isBetween(8L, 12L);
    }

    private static double[] number(double[][] z, int k) {
        return Arrays.stream(z).mapToDouble(of -> of[k]).toArray();
    }

    /** Shrinkage keeps mean and spread: Liu & West 2001. */
    @Test
    void jitter_keeps_mean_and_spread() {
        List<ParameterSet> moved = ParameterDraws.jittered(MANY, 5);
        for (Parameter p : List.of(Parameter.RUE, Parameter.SILK_SHIFT, Parameter.MINERALISATION)) {
            assertThat(mean(moved, p)).isCloseTo(mean(MANY, p), within(.02 * sd(MANY, p) + 1e-12));
            assertThat(sd(moved, p) / sd(MANY, p)).isCloseTo(1, within(.03));
        }
        List<ParameterSet> same = ParameterDraws.jittered(Collections.nCopies(10, ParameterSet.usual()), 5);
        assertThat(same.get(3).of(Parameter.RUE)).isCloseTo(Parameter.RUE.usual(), within(1e-9));
    }
}
