// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.math.BigDecimal;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class NumberTextTest {
    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "12 | 12",
                "-3.5 | -3.5",
                "+.5 | 0.5",
                "7. | 7",
                "−4 | -4",
                "1e3 | 1000",
                "2.5E-2 | 0.025",
                "18,5 | 18.5",
                "3,07 | 3.07",
                "0,125 | 0.125",
                ",5 | 0.5",
                "1234,567 | 1234.567",
                "1,2345 | 1.2345",
                "1.234,5 | 1234.5",
                "1,234.5 | 1234.5",
                "1,234. | 1234",
                "1,234,567 | 1234567",
                "1,234,567.25 | 1234567.25"
            })
    void a_comma_is_read_where_it_can_mean_one_thing_only(String text, double value) {
        assertThat(NumberText.read(text, "x")).isEqualTo(value);
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "1,234 | number.comma-unclear",
                "-32,000 | number.comma-unclear",
                "1,234e2 | number.comma-unclear",
                "'' | number.unreadable",
                "NaN | number.unreadable",
                "Infinity | number.unreadable",
                "0x10 | number.unreadable",
                "1d | number.unreadable",
                "1 234 | number.unreadable",
                "1,2,3 | number.unreadable",
                "1,,2 | number.unreadable",
                "5, | number.unreadable",
                "1.2.3 | number.unreadable",
                "1,234,56 | number.unreadable",
                "- | number.unreadable",
                ". | number.unreadable",
                "1e | number.unreadable",
                "٣ | number.unreadable",
                "1e31 | number.too-large",
                "1e99999999 | number.too-large",
                "1e-999999999 | number.too-large",
                "1e999999999999999999999 | number.too-large",
                "12345678901234567890123456789012345678901 | number.too-long"
            })
    void what_is_no_number_or_could_be_two_is_refused_by_its_code(String text, String code) {
        assertThatThrownBy(() -> NumberText.read(text, "x"))
                .isInstanceOfSatisfying(
                        EarleafException.class,
                        e -> assertThat(e.problems()).extracting(Problem::code).containsExactly(code));
    }

    @Test
    void an_unclear_comma_is_asked_about_with_both_meanings() {
        assertThatThrownBy(() -> NumberText.read("32,000", "population"))
                .isInstanceOfSatisfying(EarleafException.class, e -> assertThat(e.problems())
                        .containsExactly(Problem.of(
                                "number.comma-unclear",
                                Said.text("population"),
                                Said.of("found.quoted", "text", "32,000"),
                                "whole",
                                "32000",
                                "decimal",
                                "32.000")));
    }

    @Test
    void every_digit_is_kept_for_records() {
        assertThat(NumberText.plain("812,50", "x")).isEqualTo("812.50");
        assertThat(NumberText.plain(" 0.10 ", "x")).isEqualTo("0.10");
    }

    /** Whatever is typed is a finite number or a refusal, and safe for the readers that would else work for hours. */
    @Test
    void no_text_is_slow_endless_or_not_a_number() {
        Random random = new Random(7);
        String signs = "0123456789.,-+eE x";
        int numbers = 0;
        for (int k = 0; k < 20_000; k++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(14); n >= 0; n--) {
                text.append(signs.charAt(random.nextInt(signs.length())));
            }
            try {
                String plain = NumberText.plain(text.toString(), "x");
                assertThat(new BigDecimal(plain).toPlainString().length()).isLessThan(80);
                assertThat(Double.isFinite(NumberText.read(text.toString(), "x")))
                        .isTrue();
                numbers++;
            } catch (EarleafException refused) {
                assertThat(refused.problems())
                        .allSatisfy(p -> assertThat(p.code()).startsWith("number."));
            }
        }
        assertThat(numbers).isGreaterThan(500);
    }
}
