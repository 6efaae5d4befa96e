// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season.parameter;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Moments of the draws against the spreads they are drawn from. */
class ParameterDrawsTest {
    private static final List<ParameterSet> MANY = ParameterDraws.members(ParameterSet.usual(), 4000, 11);

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

    @Test
    void more_members_never_change_the_first_ones() {
        List<ParameterSet> few = ParameterDraws.members(ParameterSet.usual(), 3, 11);
        for (Parameter p : Parameter.values()) {
            assertThat(few.get(2).of(p)).isEqualTo(MANY.get(2).of(p));
        }
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
