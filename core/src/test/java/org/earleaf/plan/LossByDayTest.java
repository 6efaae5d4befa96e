// SPDX-License-Identifier: Apache-2.0
package org.earleaf.plan;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.Map;
import org.junit.jupiter.api.Test;

class LossByDayTest {
    @Test
    void lies_on_the_line_between_two_days_and_stays_level_outside() {
        LossByDay loss = new LossByDay(Map.of(1, 0.0, 3, 480.0, 4, 720.0));
        assertThat(loss.on(3)).isEqualTo(480);
        assertThat(loss.on(2)).isEqualTo(240);
        assertThat(loss.on(0)).isZero();
        assertThat(loss.on(9)).isEqualTo(720);
    }

    @Test
    void needs_a_day() {
        assertThatThrownBy(() -> new LossByDay(Map.of())).isInstanceOf(IllegalArgumentException.class);
    }
}
