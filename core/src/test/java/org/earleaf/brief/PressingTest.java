// SPDX-License-Identifier: Apache-2.0
package org.earleaf.brief;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.Farm;
import org.junit.jupiter.api.Test;

/** A rig's day, and fields that cannot wait. */
class PressingTest {
    @Test
    void a_rigs_day_holds_its_passes_in_their_order_with_their_ground() {
        Farm farm = new TestFarm().farm();
        Brief brief = Briefs.of(farm, TestFarm.ON);
        List<RigDay> days = new java.util.ArrayList<>(brief.today());
        days.addAll(brief.tomorrow());
        assertThat(days.stream().mapToInt(d -> d.jobs().size()).sum()
                        + brief.afterTomorrow().size())
                .isEqualTo(brief.proposed().size());
        assertThat(days).isNotEmpty();
        for (RigDay day : days) {
            assertThat(day.leaves()).isPresent();
            assertThat(day.ends().orElseThrow()).isAfter(day.leaves().orElseThrow());
            assertThat(day.area_ha())
                    .isEqualTo(day.jobs().stream()
                            .mapToDouble(j -> j.turn().orElseThrow().pass().area_ha())
                            .sum());
        }
    }

    @Test
    void corn_that_is_short_already_is_named_once() {
        Brief brief =
                Briefs.of(new TestFarm().nitrate(TestFarm.ON.minusDays(8), 5).farm(), TestFarm.ON);
        assertThat(brief.alarms())
                .filteredOn(s -> s.code().equals("alarm.short-now"))
                .singleElement()
                .satisfies(s -> assertThat(s.values()).containsEntry("fields", List.of("Home")));
    }
}
