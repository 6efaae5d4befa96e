// SPDX-License-Identifier: Apache-2.0
package org.earleaf.entry;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import org.earleaf.field.Reading.Kind;
import org.earleaf.units.EarleafException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ObservedTest {
    private static double inside(Kind kind, String value, String unit) {
        return Observed.inside(kind, value, unit, 304.8, 1.33);
    }

    @ParameterizedTest
    @CsvSource({
        "NITRATE, 25, ppm, 25",
        "NITRATE, 25, mg/kg, 25",
        "AMMONIUM, 4.5, PPM, 4.5",
        "HEIGHT, 18, in, 45.72",
        "HEIGHT, 1.5, ft, 45.72",
        "HEIGHT, 45.72, cm, 45.72",
        "STAND, 32000, plants/ac, 7.90737221",
        "STAND, 80000, plants/ha, 8",
        "STAND, 8, plants/m2, 8",
        "RAIN, 0.5, in, 12.7",
        "RAIN, 12.7, mm, 12.7",
        "MOISTURE, 27, %, 0.27",
        "MOISTURE, 0.27, share, 0.27",
        "COVER, 40, %, 0.4",
        "LESIONS, 3, per plant, 3",
        "INSECTS, 120, count, 120",
        "LESIONS, 8, % of leaf, 0.08",
        "LESIONS, 40, % of plants, 0.4",
        "STAGE, V9, '', 9",
        "STAGE, v 9.5, '', 9.5",
        "STAGE, 9, collars, 9",
        "STAGE, VE, '', 0",
        "STAGE, VT, '', 30",
        "STAGE, R1, '', 31",
        "STAGE, R6, '', 36"
    })
    void readings_come_into_their_inside_unit(Kind kind, String value, String unit, double expected) {
        assertThat(inside(kind, value, unit)).isCloseTo(expected, within(1e-8));
    }

    /** Extension rule: ppm times 3.6 is lb/ac in a foot of soil at 1.33 g/cm3. */
    @Test
    void nitrogen_by_area_is_turned_into_ppm_by_depth_and_density() {
        assertThat(inside(Kind.NITRATE, "90", "lb N/ac")).isCloseTo(25, within(0.25));
    }

    @ParameterizedTest
    @CsvSource({
        "STAGE, V25, ''",
        "STAGE, R7, ''",
        "STAGE, RT, ''",
        "STAGE, knee high, ''",
        "NITRATE, low, ppm",
        "NITRATE, -1, ppm",
        "NITRATE, 25, gal/ac",
        "HEIGHT, 18, ''",
        "HEIGHT, 9000, cm",
        "STAND, 32000, plants/m2",
        "STAND, 32, thousand",
        "RAIN, 20, in",
        "MOISTURE, 1.3, share",
        "COVER, NaN, %",
        "LESIONS, 3, %",
        "LESIONS, 300, % of leaf",
        "INSECTS, 3, % of leaf"
    })
    void impossible_readings_are_refused(Kind kind, String value, String unit) {
        assertThatThrownBy(() -> inside(kind, value, unit)).isInstanceOf(EarleafException.class);
    }

    @Test
    void nitrogen_by_area_needs_its_depth() {
        assertThatThrownBy(() -> Observed.inside(Kind.NITRATE, "90", "kg N/ha", Double.NaN, 1.33))
                .hasMessageContaining("reading.depth-missing");
    }
}
