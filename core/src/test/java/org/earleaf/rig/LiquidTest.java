// SPDX-License-Identifier: Apache-2.0
package org.earleaf.rig;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.units.Dimension;
import org.earleaf.units.EarleafException;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;

class LiquidTest {
    // Source: university extension density tables: 28 % F 1.13, 30 % 1.14, 32 % 1.1516.
    @Test
    void solutions_are_known_by_their_usual_names() {
        assertThat(Liquid.parse("water", Said.text("liquid")).densityFactor()).isEqualTo(1);
        assertThat(Liquid.parse("uan28", Said.text("liquid")).densityFactor()).isCloseTo(1.130, within(0.0015));
        assertThat(Liquid.parse("UAN 30", Said.text("liquid")).densityFactor()).isCloseTo(1.14, within(0.0015));
        assertThat(Liquid.parse("UAN-32", Said.text("liquid")).densityFactor()).isCloseTo(1.1516, within(0.0001));
    }

    @Test
    void a_density_is_read_in_every_unit_and_a_bare_number_by_the_range_it_lies_in() {
        for (String text :
                new String[] {"10.65 lb/gal", "1.27615 kg/L", "1276.15 kg/m3", "10.65", "1.27615", "1276.15"}) {
            assertThat(Liquid.parse(text, Said.text("liquid")).densityFactor())
                    .as(text)
                    .isCloseTo(1.1300, within(0.0001));
        }
    }

    @Test
    void what_is_no_liquid_is_refused() {
        assertThatThrownBy(() -> Liquid.parse("milk", Said.text("--liquid"))).hasMessageContaining("--liquid");
        assertThatThrownBy(() -> Liquid.parse("", Said.text("--liquid"))).hasMessageContaining("--liquid");
        assertThatThrownBy(() -> Liquid.parse("10.65 lb/ft", Said.text("--liquid")))
                .isInstanceOfSatisfying(EarleafException.class, e -> assertThat(
                                e.problems().get(0).rule())
                        .hasToString(Said.of("unit.unknown", "units", Dimension.DENSITY.words())
                                .toString()));
        assertThatThrownBy(() -> Liquid.parse("50 lb/gal", Said.text("--liquid")))
                .hasMessageContaining("density.implausible");
        assertThatThrownBy(() -> Liquid.parse("urea", Said.text("--liquid"))).hasMessageContaining("liquid.dry");
        assertThatThrownBy(() -> Liquid.parse("anhydrous ammonia", Said.text("--liquid")))
                .hasMessageContaining("liquid.ammonia");
    }
}
