// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Optional;
import org.earleaf.field.NotProposed;
import org.junit.jupiter.api.Test;

/** What nobody looked at is not judged, whatever it may be worth; what is below its threshold has nothing to do. */
class NotProposedTest {
    private static final LocalDate DAY = LocalDate.of(2026, 7, 10);

    @Test
    void nobody_scouted_or_counted_is_not_judged() {
        assertThat(ProtectionRules.answer(new ProtectionRules.NotScouted())).isEqualTo(NotProposed.NOT_JUDGED);
        assertThat(ProtectionRules.answer(new ProtectionRules.NotNamed())).isEqualTo(NotProposed.NOT_JUDGED);
        assertThat(ProtectionRules.answer(new ProtectionRules.InsecticideWithoutReason(Optional.empty())))
                .isEqualTo(NotProposed.NOT_JUDGED);
    }

    @Test
    void too_late_too_early_or_a_pass_made_already_leaves_nothing_to_do() {
        assertThat(ProtectionRules.answer(new ProtectionRules.TooLate(DAY))).isEqualTo(NotProposed.NOTHING_TO_DO);
        assertThat(ProtectionRules.answer(new ProtectionRules.TooEarly(DAY, .8)))
                .isEqualTo(NotProposed.NOTHING_TO_DO);
        assertThat(ProtectionRules.answer(new ProtectionRules.SecondPass(DAY))).isEqualTo(NotProposed.NOTHING_TO_DO);
    }

    @Test
    void only_what_was_counted_and_weighed_is_said_not_to_pay() {
        var saved = new ProtectionRules.AphidsSaved(10, 2, 12);
        assertThat(ProtectionRules.answer(new ProtectionRules.InsecticideLoses(null, saved)))
                .isEqualTo(NotProposed.DOES_NOT_PAY);
    }
}
