// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import org.earleaf.decide.Outlooks;
import org.earleaf.decide.TestFarm;
import org.junit.jupiter.api.Test;

/** Corn that frost may catch is told of. */
class NotRipeTest {
    private static Outlook planted(LocalDate day) {
        TestFarm farm = new TestFarm().planted(day);
        return Outlooks.of(farm.farm(), farm.zone(), TestFarm.ON, false);
    }

    @Test
    void a_field_planted_in_time_is_not_said_to_freeze() {
        assertThat(planted(LocalDate.of(2024, 5, 1)).notRipe()).isEmpty();
    }

    @Test
    void the_later_it_is_planted_the_more_years_freeze_it() {
        Outlook late = planted(LocalDate.of(2024, 6, 12));
        Outlook later = planted(LocalDate.of(2024, 6, 26));
        assertThat(later.unripe()).isGreaterThan(.3).isGreaterThanOrEqualTo(late.unripe());
        assertThat(later.notRipe().orElseThrow().code()).isEqualTo("outlook.not-ripe");
        assertThat(later.unripe() + later.calendar().maturity().probability()).isEqualTo(1);
    }
}
