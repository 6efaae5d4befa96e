// SPDX-License-Identifier: Apache-2.0
package org.earleaf.soil;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** The six layers: hand-made sums, and the textures of Saxton & Rawls 2006, table 3, for the names. */
class SoilProfileTest {
    private static final double NAN = Double.NaN;
    private List<Flag> flags;

    @BeforeEach
    void noFlags() {
        flags = new ArrayList<>();
    }

    private static Horizon loam(double top_cm, double bottom_cm, double om) {
        return horizon(top_cm, bottom_cm, 40, 20, om);
    }

    private static Horizon horizon(double top_cm, double bottom_cm, double sand, double clay, double om) {
        return new Horizon(top_cm * 10, bottom_cm * 10, sand, clay, om, 6.5, NAN, new Horizon.Measured(NAN, NAN, NAN));
    }

    private static Horizon surveyed(double wp, double fc) {
        return new Horizon(0, 1524, 40, 20, 2.5, 6.5, NAN, new Horizon.Measured(NAN, wp, fc));
    }

    private SoilProfile profile(Horizon... horizons) {
        return SoilProfile.of(List.of(horizons), "soil.csv, Test", flags);
    }

    @Test
    void layers_end_at_the_depths_of_soil_tests() {
        double[] bottom_in = {2, 6, 12, 24, 36, 60};
        double sum = 0;
        for (int k = 0; k < SoilProfile.LAYERS; k++) {
            assertThat(SoilProfile.bottom_mm(k)).isCloseTo(bottom_in[k] * 25.4, within(1e-9));
            sum += SoilProfile.thickness_mm(k);
        }
        assertThat(sum).isCloseTo(1524, within(1e-9));
        assertThat(SoilProfile.top_mm(0)).isZero();
    }

    @Test
    void a_layer_across_two_horizons_takes_their_mean_by_overlap() {
        // 6 to 12 in = 15.24 to 30.48 cm: (2.76 cm x 4 % + 12.48 cm x 2 %) / 15.24 cm = 2.36 %
        SoilProfile p = profile(loam(0, 18, 4), loam(18, 46, 2));
        assertThat(p.om_pct().get(2)).isCloseTo(2.36, within(0.005));
        assertThat(p.om_pct().get(0)).isEqualTo(4);
        assertThat(flags).isEmpty();
    }

    @Test
    void the_lowest_horizon_reaches_on_downwards() {
        SoilProfile p = profile(loam(0, 18, 4), loam(18, 46, 2));
        assertThat(p.om_pct().get(4)).isEqualTo(2);
        assertThat(p.om_pct().get(5)).isEqualTo(2);
    }

    @Test
    void values_outside_the_range_of_the_model_are_clamped_and_flagged() {
        Horizon odd = new Horizon(0, 1524, 97, 2, 9, 3.9, 70, new Horizon.Measured(2.4, NAN, NAN));
        SoilProfile p = profile(odd);
        assertThat(p.om_pct()).containsOnly(8.0);
        assertThat(p.ph()).containsOnly(4.5);
        assertThat(p.cec_cmolKg()).containsOnly(50.0);
        assertThat(p.bulkDensity_gcm3()).containsOnly(1.9);
        assertThat(p.water().get(0)).isEqualTo(SoilWater.ofTexture(95, 3, 8));
        assertThat(flags).hasSize(6 * SoilProfile.LAYERS);
        assertThat(flags.get(0))
                .isEqualTo(new Flag(
                        Said.of("where.soil-layer", "where", "soil.csv, Test", "layer", "1"),
                        Said.of(
                                "flag.soil-clamped",
                                "what",
                                Said.of("soil.sand"),
                                "value",
                                97.0,
                                "low",
                                0.0,
                                "high",
                                95.0,
                                "taken",
                                95.0)));
    }

    @Test
    void missing_exchange_capacity_and_density_follow_from_texture() {
        SoilProfile p = profile(loam(0, 152.4, 3));
        assertThat(p.cec_cmolKg().get(0)).isEqualTo(0.5 * 20 + 2 * 3);
        SoilWater w = SoilWater.ofTexture(40, 20, 3);
        assertThat(p.bulkDensity_gcm3().get(0)).isCloseTo(2.65 * (1 - w.sat()), within(1e-12));
    }

    @Test
    void surveyed_water_contents_stand_before_texture() {
        SoilProfile p = profile(surveyed(0.12, 0.30));
        assertThat(p.water().get(0).wp()).isEqualTo(0.12);
        assertThat(p.water().get(0).fc()).isEqualTo(0.30);
        assertThat(p.water().get(0).sat())
                .isEqualTo(SoilWater.ofTexture(40, 20, 2.5).sat());
        assertThat(flags).isEmpty();
    }

    @Test
    void surveyed_water_contents_out_of_order_are_left_aside_with_a_flag() {
        SoilProfile p = profile(surveyed(0.31, 0.30));
        assertThat(p.water().get(0)).isEqualTo(SoilWater.ofTexture(40, 20, 2.5));
        assertThat(flags).hasSize(SoilProfile.LAYERS);
        assertThat(flags.get(0).what().toString()).startsWith("flag.soil-out-of-order");
    }

    @Test
    void every_texture_in_range_can_drain() {
        for (int sand = 0; sand <= 95; sand += 5) {
            for (int clay = 3; clay <= Math.min(60, 100 - sand); clay += 3) {
                for (double om : new double[] {0.1, 1, 2.5, 5, 8}) {
                    SoilWater w =
                            profile(horizon(0, 152.4, sand, clay, om)).water().get(0);
                    assertThat(w.isOrdered()).as("%s %s %s", sand, clay, om).isTrue();
                    assertThat(w.ksat_mmh()).isGreaterThan(0);
                }
            }
        }
    }

    @Test
    void a_soil_that_the_equations_leave_no_room_to_drain_says_so() {
        SoilProfile p = profile(horizon(0, 152.4, 40, 60, 8));
        assertThat(p.water().get(0).sat()).isGreaterThan(p.water().get(0).fc());
        assertThat(flags).isNotEmpty().allSatisfy(f -> assertThat(f.what().toString())
                .startsWith("flag.soil-no-room"));
    }

    @ParameterizedTest
    @CsvFileSource(resources = "/published/saxton-rawls-2006-table-3.csv")
    void the_texture_is_called_by_its_name(String texture, double sand, double clay) {
        assertThat(profile(horizon(0, 152.4, sand, clay, 2.5)).texture().word()).isEqualTo(texture);
    }
}
