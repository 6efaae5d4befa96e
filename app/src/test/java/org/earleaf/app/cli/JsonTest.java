// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class JsonTest {
    @Test
    void keeps_the_order_of_keys_and_writes_numbers_dates_and_missing_values() {
        Object value = Json.object(
                "on",
                LocalDate.of(2012, 7, 1),
                "b",
                0.1 + 0.2,
                "a",
                1200.0,
                "none",
                Double.NaN,
                "list",
                List.of(1, true),
                "empty",
                Optional.empty());
        assertThat(Json.text(value)).isEqualTo("""
                        {
                          "on" : "2012-07-01",
                          "b" : 0.3,
                          "a" : 1200,
                          "none" : null,
                          "list" : [
                            1,
                            true
                          ],
                          "empty" : null
                        }""");
    }

    @Test
    void writes_small_and_large_numbers_without_an_exponent() {
        assertThat(Json.text(List.of(1.4e-7, 12345678900.0, 0.0)))
                .contains("0.00000014")
                .contains("12345678900")
                .doesNotContain("E");
    }
}
