// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.brief.Brief;
import org.earleaf.brief.Briefs;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** When the alarm is raised and when not; the usual 10 ppm is common practice without a source. */
class LowNitrateTest {
    private static final LocalDate LATE = TestFarm.ON.minusDays(2);

    private static Optional<LowNitrate> alarm(TestFarm farm) {
        return LowNitrate.find(farm.farm(), Outlooks.of(farm.farm(), farm.zone(), TestFarm.ON, false));
    }

    @Test
    void a_test_below_the_threshold_late_in_the_vegetative_stages_raises_it() {
        assertThat(alarm(new TestFarm().nitrate(LATE, 9.4))).hasValueSatisfying(a -> {
            assertThat(a.nitrate_mgKg()).isEqualTo(9.4);
            assertThat(a.collars()).isBetween(8, 20);
            assertThat(a.said().code()).isEqualTo("alarm.low-nitrate");
            assertThat(a.said().values())
                    .containsEntry("nitrate", Measure.CONCENTRATION.of(9.4))
                    .containsEntry("threshold", Measure.CONCENTRATION.of(10))
                    .containsEntry("day", LATE);
        });
        assertThat(alarm(new TestFarm().nitrate(LATE, 10))).isEmpty();
        assertThat(alarm(new TestFarm())).isEmpty();
    }

    @Test
    void the_threshold_is_the_farms() {
        assertThat(alarm(new TestFarm().setting(Setting.LOW_NITRATE, 14).nitrate(LATE, 12)))
                .isPresent();
        assertThat(alarm(new TestFarm().setting(Setting.LOW_NITRATE, 5).nitrate(LATE, 8)))
                .isEmpty();
    }

    @Test
    void an_early_test_an_old_one_and_one_that_a_newer_one_overrules_raise_none() {
        assertThat(alarm(new TestFarm().nitrate(LocalDate.of(2024, 5, 30), 6))).isEmpty();
        assertThat(alarm(new TestFarm().nitrate(TestFarm.ON.minusDays(8), 6).nitrate(LATE, 15)))
                .isEmpty();
    }

    @Test
    void it_stands_on_the_brief_before_the_caution() {
        Farm farm = new TestFarm().nitrate(LATE, 5).farm();
        Brief brief = Briefs.of(farm, TestFarm.ON);
        assertThat(brief.cautions())
                .extracting(Said::code)
                .containsExactly("brief.weather-to", "alarm.short-now", "alarm.low-nitrate", "caution.label");
        assertThat(brief.cautions().get(2).values())
                .containsEntry("zone", "Home")
                .containsEntry("nitrate", Measure.CONCENTRATION.of(5));
    }
}
