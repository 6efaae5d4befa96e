// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import org.earleaf.field.Placement;
import org.earleaf.units.Measure;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

/** What a remark says outlives the file as it was said. */
class SaidTextTest {
    private static void outlives(Said said) {
        assertThat(SaidText.read(SaidText.of(said))).isEqualTo(said);
    }

    @Test
    void every_kind_of_value_comes_back_as_it_was() {
        LocalDate day = LocalDate.of(2026, 6, 30);
        outlives(Said.of(
                "fill.no-rain",
                "n",
                12L,
                "share",
                .25,
                "day",
                day,
                "time",
                LocalDateTime.of(2026, 6, 30, 6, 30),
                "rain",
                Measure.RAIN.of(12.7),
                "field",
                "Home \"Eighty\"",
                "days",
                List.of(day, day.plusDays(1)),
                "more",
                Said.of("fill.day", "day", day)));
    }

    @Test
    void text_as_entered_stands_as_it_is_even_where_it_looks_like_a_code() {
        assertThat(SaidText.of(Said.text("forecast.csv, row 2"))).isEqualTo("forecast.csv, row 2");
        outlives(Said.text("forecast.csv, row 2"));
        outlives(Said.text("said:{}"));
    }

    @Test
    void what_this_version_does_not_know_is_shown_and_never_keeps_a_farm_closed() {
        assertThat(SaidText.read("said:{\"code\":\"x\",\"values\":{\"a\":{\"FURLONGS\":1}}}"))
                .isEqualTo(Said.text("said:{\"code\":\"x\",\"values\":{\"a\":{\"FURLONGS\":1}}}"));
        assertThat(SaidText.read("said:not json")).isEqualTo(Said.text("said:not json"));
    }

    @Test
    void a_kind_that_cannot_be_kept_is_told_when_it_is_written() {
        assertThatThrownBy(() -> SaidText.of(Said.of("x", "placement", Placement.ROW_BASE)))
                .isInstanceOf(IllegalArgumentException.class);
    }
}
