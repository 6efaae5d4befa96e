// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import org.earleaf.brief.Brief;
import org.earleaf.brief.Briefs;
import org.earleaf.brief.Morning;
import org.earleaf.decide.NitrogenOptions;
import org.earleaf.decide.Outlooks;
import org.earleaf.decide.TestFarm;
import org.earleaf.field.Reading;
import org.earleaf.units.SideBySide;
import org.junit.jupiter.api.Test;

/** Whether plants are asked to be counted after water stood on them. */
class StandDueTest {
    private static final LocalDate STORM = LocalDate.of(2024, 5, 28);
    private static final LocalDate ON = LocalDate.of(2024, 6, 4);

    private static TestFarm drowned() {
        return new TestFarm()
                .poorlyDrained()
                .storm(STORM, 90)
                .storm(STORM.plusDays(1), 60)
                .storm(STORM.plusDays(2), 30);
    }

    private static boolean asks(TestFarm farm, LocalDate on) {
        return StandDue.find(farm.farm(), Outlooks.of(farm.farm(), farm.zone(), on, false))
                .isPresent();
    }

    @Test
    void water_that_stood_on_poor_drainage_asks_for_a_count() {
        assertThat(asks(drowned(), ON)).isTrue();
        assertThat(asks(drowned(), STORM.minusDays(2))).isFalse();
        assertThat(asks(drowned(), ON.plusDays(30))).isFalse();
    }

    @Test
    void a_tiled_field_is_not_asked_for() {
        TestFarm tiled = new TestFarm().storm(STORM, 90).storm(STORM.plusDays(1), 60);
        assertThat(asks(tiled, ON)).isFalse();
    }

    @Test
    void a_count_taken_since_answers_it() {
        assertThat(asks(drowned().stand(ON, 6), ON)).isFalse();
        assertThat(asks(drowned().stand(STORM.minusDays(1), 6), ON)).isTrue();
    }

    @Test
    void the_morning_asks_for_it() {
        TestFarm farm = drowned();
        List<NitrogenOptions.Answer> answers = Morning.answers(farm.farm(), ON, false, SideBySide.IN_TURN);
        Brief brief = Briefs.of(farm.farm(), ON, answers);
        assertThat(brief.readings())
                .filteredOn(r -> r.kind() == Reading.Kind.STAND)
                .singleElement()
                .satisfies(r -> assertThat(r.because().code()).isEqualTo("stand.water-stood"));
    }
}
