// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** Published: Saxton & Rawls 2006, table 3, and the examples of a public library that carries their equations. */
@DisplayName("Soil water of texture against Saxton & Rawls 2006")
class SoilWaterTest {
    @ParameterizedTest
    @CsvFileSource(resources = "/published/saxton-rawls-2006-table-3.csv")
    void the_twelve_textures_hold_what_the_paper_prints(
            String texture, double sand, double clay, double wp, double fc, double sat, double ksat, double bd) {
        SoilWater w = SoilWater.ofTexture(sand, clay, 2.5);
        assertThat(w.wp()).as(texture).isCloseTo(wp, within(0.002));
        assertThat(w.fc()).as(texture).isCloseTo(fc, within(0.002));
        assertThat(w.sat()).as(texture).isCloseTo(sat, within(0.002));
        assertThat(w.ksat_mmh()).as(texture).isCloseTo(ksat, within(tolerance(ksat)));
        assertThat(w.bulkDensity_gcm3()).as(texture).isCloseTo(bd, within(0.0055));
        assertThat(w.isOrdered()).isTrue();
    }

    /** One percent, or half of the last printed digit where that is more. */
    private static double tolerance(double ksat) {
        return Math.max(0.01 * ksat, 0.05);
    }

    // Documentation of the R package HydroTools, function SPAW: 20 % sand, 20 % clay, 2.5 % organic matter.
    @ParameterizedTest
    @CsvSource("20, 20, 2.5, 0.1365448, 0.3208775, 0.482125")
    void another_implementation_prints_the_same(double sand, double clay, double om, double wp, double fc, double sat) {
        SoilWater w = SoilWater.ofTexture(sand, clay, om);
        assertThat(w.wp()).isCloseTo(wp, within(5e-8));
        assertThat(w.fc()).isCloseTo(fc, within(5e-8));
        assertThat(w.sat()).isCloseTo(sat, within(5e-7));
    }
}
