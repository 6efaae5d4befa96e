// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.field.Disease;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InfectionTest {
    private static final InfectionConditions GRAY =
            InfectionConditions.find(Disease.GRAY_LEAF_SPOT).orElseThrow();
    private static final InfectionConditions BLIGHT =
            InfectionConditions.find(Disease.NORTHERN_LEAF_BLIGHT).orElseThrow();
    private static final InfectionConditions RUST =
            InfectionConditions.find(Disease.SOUTHERN_RUST).orElseThrow();

    /** The printed form of Magarey et al. 2005 worked out apart from this code for the cardinals of the table. */
    @ParameterizedTest
    @CsvSource({
        "GRAY_LEAF_SPOT, 20, 0.6343",
        "GRAY_LEAF_SPOT, 25, 0.9861",
        "GRAY_LEAF_SPOT, 30, 0.7137",
        "NORTHERN_LEAF_BLIGHT, 18, 0.9687",
        "NORTHERN_LEAF_BLIGHT, 28, 0.5440",
        "SOUTHERN_RUST, 15, 0.1603",
        "SOUTHERN_RUST, 28, 0.9474"
    })
    void temperature_response(Disease disease, double t, double f) {
        assertThat(InfectionConditions.find(disease).orElseThrow().suits(t)).isCloseTo(f, within(0.0005));
    }

    @Test
    void hours_of_wetness_needed_by_temperature() {
        assertThat(GRAY.wetNeeded_h(20).orElseThrow()).isCloseTo(75.68, within(0.05));
        assertThat(BLIGHT.wetNeeded_h(15).orElseThrow()).isCloseTo(6.29, within(0.01));
        assertThat(RUST.wetNeeded_h(16).orElseThrow()).isCloseTo(15.92, within(0.02));
        assertThat(RUST.wetNeeded_h(15)).isEmpty();
        assertThat(RUST.wetNeeded_h(Double.NaN)).isEmpty();
    }

    /** Published: 5 h of dew at 20 °C, the best temperature, and infection at 15 to 30 °C (Levy & Cohen 1983). */
    @Test
    void northern_leaf_blight_needs_five_hours_at_its_best() {
        assertThat(BLIGHT.wetNeeded_h(20).orElseThrow()).isEqualTo(5);
        assertThat(BLIGHT.suits(20)).isEqualTo(1);
        for (int t = 15; t <= 30; t++) {
            assertThat(BLIGHT.wetNeeded_h(t)).as("%d °C", t).isPresent();
        }
    }

    /**
     * Published: with 4, 8, 12 and 16 h of dew southern rust infects at 18-22, 18-28, 16-32 and 16-32 °C, never at 12 and 36
     * °C (Hollier & King 1985, Plant Dis. 69:219, abstract). The form can agree with 61 of the 68 cells from 4 to 36 °C.
     */
    @Test
    void southern_rust_infects_where_the_paper_saw_it() {
        double[][] limits = {{4, 18, 22}, {8, 18, 28}, {12, 16, 32}, {16, 16, 32}};
        int agree = 0;
        int cells = 0;
        for (double[] row : limits) {
            for (double t = 4; t <= 36; t += 2) {
                var needed = RUST.wetNeeded_h(t);
                boolean infects = needed.isPresent() && needed.getAsDouble() <= row[0];
                agree += infects == (t >= row[1] && t <= row[2]) ? 1 : 0;
                cells++;
            }
        }
        assertThat(cells).isEqualTo(68);
        assertThat(agree).isGreaterThanOrEqualTo(61);
        assertThat(RUST.suits(12)).isZero();
        assertThat(RUST.suits(36)).isZero();
    }

    @Test
    void tar_spot_and_common_rust_have_no_figures() {
        assertThat(InfectionConditions.find(Disease.TAR_SPOT)).isEmpty();
        assertThat(InfectionConditions.find(Disease.COMMON_RUST)).isEmpty();
    }

    @Test
    void one_night_of_dew_is_one_infection_and_a_short_break_does_not_spoil_it() {
        List<Infection> whole = infections(BLIGHT, hours(24, h -> h >= 1 && h < 7, 20));
        assertThat(whole).singleElement().satisfies(i -> {
            assertThat(i.begin().getHour()).isEqualTo(1);
            assertThat(i.done().getHour()).isEqualTo(6);
            assertThat(i.needed_h()).isEqualTo(5);
        });
        assertThat(infections(BLIGHT, hours(24, h -> (h >= 1 && h < 4) || (h >= 6 && h < 8), 20)))
                .hasSize(1);
        assertThat(infections(BLIGHT, hours(24, h -> (h >= 1 && h < 4) || (h >= 7 && h < 9), 20)))
                .isEmpty();
    }

    @Test
    void after_a_dry_break_neither_hours_nor_warmth_of_before_count() {
        List<WeatherHour> hours = new ArrayList<>();
        for (int h = 0; h < 20; h++) {
            boolean cold = h < 4;
            hours.add(hour(h, cold ? 12 : 20, cold || h >= 10 && h < 15 ? 95 : 65));
        }
        assertThat(infections(BLIGHT, hours)).singleElement().satisfies(i -> {
            assertThat(i.begin().getHour()).isEqualTo(10);
            assertThat(i.wet_h()).isEqualTo(5);
            assertThat(i.needed_h()).isEqualTo(5);
        });
    }

    @Test
    void gray_leaf_spot_adds_up_humid_nights_over_days_and_dry_days_hold_it_back() {
        // Twelve hours a night at 26 °C: four nights when the days stay damp, twelve when they fall to 50 %.
        assertThat(infections(GRAY, nights(5, 70))).hasSize(1);
        assertThat(infections(GRAY, nights(5, 50))).isEmpty();
        assertThat(infections(GRAY, nights(13, 50))).hasSize(1);
    }

    @Test
    void index_of_the_weather_is_a_share_and_rises_with_wetness() {
        double dry = index(hours(72, h -> false, 20));
        double some = index(hours(72, h -> h % 24 < 2, 20));
        double wet = index(hours(72, h -> h % 24 < 9, 20));
        assertThat(dry).isZero();
        assertThat(some).isCloseTo(0.4, within(1e-9));
        assertThat(wet).isEqualTo(1);
        assertThat(WeatherRisk.ofIndex(dry, ProtectionSettings.USUAL)).isEqualTo(WeatherRisk.LOW);
        assertThat(WeatherRisk.ofIndex(some, ProtectionSettings.USUAL)).isEqualTo(WeatherRisk.MODERATE);
        assertThat(WeatherRisk.ofIndex(wet, ProtectionSettings.USUAL)).isEqualTo(WeatherRisk.HIGH);
    }

    @Test
    void too_cold_or_too_hot_no_wetness_infects() {
        assertThat(infections(BLIGHT, hours(48, h -> true, 9))).isEmpty();
        assertThat(infections(BLIGHT, hours(48, h -> true, 33))).isEmpty();
        assertThat(infections(BLIGHT, List.of())).isEmpty();
    }

    private static List<Infection> infections(InfectionConditions conditions, List<WeatherHour> hours) {
        return Infection.of(conditions, hours, false, ProtectionSettings.USUAL);
    }

    private static double index(List<WeatherHour> hours) {
        return Infection.meanDailyIndex(BLIGHT, hours, false, ProtectionSettings.USUAL);
    }

    private static List<WeatherHour> nights(int count, double dayHumidity) {
        List<WeatherHour> hours = new ArrayList<>();
        for (int h = 0; h < 24 * count; h++) {
            hours.add(hour(h, 26, h % 24 < 12 ? 96 : dayHumidity));
        }
        return hours;
    }

    private static List<WeatherHour> hours(int count, java.util.function.IntPredicate wet, double t) {
        List<WeatherHour> hours = new ArrayList<>();
        for (int h = 0; h < count; h++) {
            hours.add(hour(h, t, wet.test(h) ? 95 : 65));
        }
        return hours;
    }

    private static WeatherHour hour(int h, double t, double rh) {
        double nan = Double.NaN;
        return new WeatherHour(LocalDateTime.parse("2023-07-01T00:00").plusHours(h), t, rh, 2, nan, nan, 0, nan, nan);
    }
}
