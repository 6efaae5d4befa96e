// SPDX-License-Identifier: Apache-2.0
package org.earleaf.units;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Properties: what was written comes back in every unit of every dimension; no outside source needed. */
class QuantityTest {
    @ParameterizedTest
    @EnumSource
    void a_thousand_random_amounts_come_back_from_every_unit(Dimension dimension) {
        SplittableRandom random = new SplittableRandom(dimension.ordinal());
        String[] units = dimension.words().split(", ");
        for (int k = 0; k < 1000; k++) {
            double value = Math.round((random.nextDouble() - 0.2) * 1e6) / 1e3;
            String unit = units[random.nextInt(units.length)];
            Quantity q = Quantity.parse(value + " " + unit, dimension, "test");
            assertThat(q.entered()).isEqualTo(value);
            assertThat(q.unit()).isEqualTo(unit);
            assertThat(dimension.outside(q.inside(), unit))
                    .as(value + " " + unit)
                    .isCloseTo(value, within(1e-12 * Math.abs(value) + 1e-12));
        }
    }

    @ParameterizedTest
    @EnumSource
    void the_inside_unit_is_understood_as_itself(Dimension dimension) {
        String inside = dimension.inside().equals("1") ? "share" : dimension.inside();
        assertThat(Quantity.parse("3.5 " + inside, dimension, "test").inside()).isEqualTo(3.5);
    }

    @ParameterizedTest
    @CsvSource({
        "15 gal/ac, VOLUME_RATE, 15, gal/ac",
        "15Gal / ac, VOLUME_RATE, 15, Gal / ac",
        "' 12 fl oz/ac ', VOLUME_RATE, 12, fl oz/ac",
        "40 lb N/ac, MASS_RATE, 40, lb N/ac",
        "-3.5 °C, TEMPERATURE, -3.5, °C",
        ".25 in, WATER_DEPTH, .25, in",
        "1e3 m², AREA, 1000, m²",
        "30 liter, VOLUME, 30, liter"
    })
    void amounts_are_read_as_people_write_them(String text, Dimension dimension, double value, String unit) {
        Quantity q = Quantity.parse(text, dimension, "test");
        assertThat(q.entered()).isEqualTo(value);
        assertThat(q.unit()).isEqualTo(unit);
    }

    @ParameterizedTest
    @ValueSource(strings = {"15", "gal/ac", "", "fifteen gal/ac", "1.2.3"})
    void a_number_without_unit_or_a_unit_without_number_is_refused(String text) {
        assertThatThrownBy(() -> Quantity.parse(text, Dimension.VOLUME_RATE, "--rate"))
                .isInstanceOf(EarleafException.class)
                .hasMessageContaining("--rate");
    }

    @Test
    void a_unit_of_another_dimension_is_refused_with_the_units_that_would_do() {
        assertThatThrownBy(() -> Quantity.parse("15 psi", Dimension.VOLUME_RATE, "passes.csv, row 3, rate_unit"))
                .isInstanceOfSatisfying(EarleafException.class, e -> assertThat(e.problems())
                        .containsExactly(Problem.of(
                                "unit.unknown",
                                Said.text("passes.csv, row 3, rate_unit"),
                                Said.of("found.quoted", "text", "psi"),
                                "units",
                                Dimension.VOLUME_RATE.words())));
        assertThat(Dimension.VOLUME_RATE.words()).contains("gal/ac");
        assertThatThrownBy(() -> Dimension.LENGTH.outside(1, "psi")).isInstanceOf(EarleafException.class);
    }

    @Test
    void fahrenheit_is_shifted_and_not_only_scaled() {
        assertThat(Quantity.parse("212 F", Dimension.TEMPERATURE, "test").inside())
                .isCloseTo(100, within(1e-12));
        assertThat(Dimension.TEMPERATURE.outside(30, "°F")).isCloseTo(86, within(1e-12));
    }

    @Test
    void an_exception_tells_every_problem_it_carries() {
        Problem first = Problem.of("number.unreadable", Said.text("a.csv, row 2"), Said.text("x"));
        Problem second = Problem.of("date.unreadable", Said.text("a.csv, row 3"), Said.text("y"));
        EarleafException e = new EarleafException(java.util.List.of(first, second));
        assertThat(e.problems()).containsExactly(first, second);
        assertThat(e).hasMessage(first.sentence() + "\n" + second.sentence());
        assertThat(first.sentence()).isEqualTo("number.unreadable at a.csv, row 2: found x");
    }
}
