// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.earleaf.field.Disease;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Incidence;
import org.earleaf.field.Incidence.Verdict;
import org.earleaf.field.PreviousCrop;
import org.earleaf.pressure.HybridClass;
import org.earleaf.pressure.LesionSighting;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.units.Said;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Rules of extension services: Illinois 2015 for gray leaf spot and northern leaf blight (third leaf below the ear, half of
 * the plants), Iowa for southern rust, the network of state services 2024 for tar spot.
 */
class ThresholdRuleTest {
    private static final SiteFacts PLAIN = Cases.site(3, PreviousCrop.SOYBEAN, Optional.of(WeatherRisk.MODERATE));

    @ParameterizedTest
    @CsvSource({
        "GRAY_LEAF_SPOT, 62, -3, ABOVE",
        "GRAY_LEAF_SPOT, 58, -3, UNDECIDED",
        "GRAY_LEAF_SPOT, 30, -3, BELOW",
        "GRAY_LEAF_SPOT, 80, -4, BELOW",
        "GRAY_LEAF_SPOT, 80, 0, ABOVE",
        "NORTHERN_LEAF_BLIGHT, 62, -3, ABOVE",
        "SOUTHERN_RUST, 20, -2, ABOVE",
        "SOUTHERN_RUST, 20, -3, BELOW",
        "COMMON_RUST, 90, 1, BELOW",
        "TAR_SPOT, 1, -3, ABOVE"
    })
    void on_a_susceptible_hybrid_leaf_and_share_of_plants_decide(
            Disease disease, int shows, int leaf, Verdict verdict) {
        assertThat(judge(disease, shows, OptionalInt.of(leaf), PLAIN).verdict()).isEqualTo(verdict);
    }

    @Test
    void an_intermediate_hybrid_asks_for_history_residue_and_weather_as_well() {
        SiteFacts all = Cases.facts(
                5, PreviousCrop.CORN, 0.4, false, false, true, Double.NaN, Optional.of(WeatherRisk.MODERATE), false);
        assertThat(judge(Disease.GRAY_LEAF_SPOT, 70, OptionalInt.of(-3), all).verdict())
                .isEqualTo(Verdict.ABOVE);
        ThresholdRule.Finding without = judge(
                Disease.GRAY_LEAF_SPOT, 70, OptionalInt.of(-3), Cases.site(5, PreviousCrop.SOYBEAN, Optional.empty()));
        assertThat(without.verdict()).isEqualTo(Verdict.BELOW);
        assertThat(without.because().code()).isEqualTo("threshold.also-asks");
        assertThat(without.because().toString()).contains("HISTORY", "RESIDUE", "asks-unknown{asked=HUMID_WEATHER}");
    }

    @Test
    void where_only_the_weather_is_not_known_it_stays_open() {
        SiteFacts all = Cases.facts(5, PreviousCrop.CORN, 0.4, false, false, true, Double.NaN, Optional.empty(), false);
        ThresholdRule.Finding open = judge(Disease.GRAY_LEAF_SPOT, 70, OptionalInt.of(-3), all);
        assertThat(open.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(open.because().code()).isEqualTo("threshold.weather-not-known");
    }

    /** The multi-state network: one pass from tassel to milk once it is confirmed in the field; no model says when it is not. */
    @Test
    void tar_spot_in_the_field_does_not_wait_for_a_weather_model_that_is_off() {
        SiteFacts site = Cases.site(5, PreviousCrop.SOYBEAN, Optional.empty());
        ThresholdRule.Finding found = judge(Disease.TAR_SPOT, 3, OptionalInt.of(0), site);
        assertThat(found.verdict()).isEqualTo(Verdict.ABOVE);
        assertThat(found.because().code()).isEqualTo("threshold.found");
        assertThat(judge(Disease.TAR_SPOT, 0, OptionalInt.of(0), site).verdict())
                .isEqualTo(Verdict.BELOW);
    }

    @Test
    void the_rating_and_the_history_of_the_disease_itself_decide() {
        SiteFacts site = new SiteFacts(
                new DiseaseFacts(5, Map.of(Disease.GRAY_LEAF_SPOT, 8.0), Set.of(Disease.NORTHERN_LEAF_BLIGHT), false),
                PreviousCrop.CORN,
                .4,
                false,
                Double.NaN,
                Map.of(
                        Disease.GRAY_LEAF_SPOT, WeatherRisk.HIGH,
                        Disease.NORTHERN_LEAF_BLIGHT, WeatherRisk.HIGH),
                false);
        assertThat(site.hybrid(Disease.GRAY_LEAF_SPOT)).isEqualTo(HybridClass.RESISTANT);
        assertThat(site.hybrid(Disease.NORTHERN_LEAF_BLIGHT)).isEqualTo(HybridClass.INTERMEDIATE);
        assertThat(judge(Disease.GRAY_LEAF_SPOT, 90, OptionalInt.of(0), site).verdict())
                .isEqualTo(Verdict.BELOW);
        assertThat(judge(Disease.NORTHERN_LEAF_BLIGHT, 90, OptionalInt.of(0), site)
                        .verdict())
                .isEqualTo(Verdict.ABOVE);
    }

    @Test
    void a_resistant_hybrid_is_watched_only() {
        SiteFacts resistant = Cases.site(8, PreviousCrop.CORN, Optional.of(WeatherRisk.HIGH));
        assertThat(judge(Disease.GRAY_LEAF_SPOT, 90, OptionalInt.of(0), resistant)
                        .verdict())
                .isEqualTo(Verdict.BELOW);
    }

    @Test
    void tar_spot_asks_for_weather_too() {
        SiteFacts dry = Cases.site(3, PreviousCrop.CORN, Optional.of(WeatherRisk.LOW));
        assertThat(judge(Disease.TAR_SPOT, 10, OptionalInt.of(0), dry).verdict())
                .isEqualTo(Verdict.BELOW);
        assertThat(judge(Disease.TAR_SPOT, 0, OptionalInt.empty(), PLAIN).verdict())
                .isEqualTo(Verdict.BELOW);
    }

    @Test
    void a_leaf_not_noted_leaves_it_open_and_says_so() {
        ThresholdRule.Finding finding = judge(Disease.GRAY_LEAF_SPOT, 80, OptionalInt.empty(), PLAIN);
        assertThat(finding.verdict()).isEqualTo(Verdict.UNDECIDED);
        assertThat(finding.said().code()).isEqualTo("threshold.not-clear");
        assertThat(finding.said().values())
                .containsEntry(
                        "seen",
                        Said.of("seen.on-plants", "disease", Disease.GRAY_LEAF_SPOT, "shows", 80, "plants", 100));
        assertThat(finding.because().code()).isEqualTo("threshold.note-leaf");
    }

    @Test
    void every_disease_has_a_rule_for_every_hybrid() {
        assertThat(ThresholdRule.listAll()).hasSize(Disease.values().length * HybridClass.values().length);
        for (Disease d : Disease.values()) {
            for (HybridClass h : HybridClass.values()) {
                assertThat(ThresholdRule.of(d, h).wording()).isNotNull();
            }
        }
    }

    private static ThresholdRule.Finding judge(Disease disease, int shows, OptionalInt leaf, SiteFacts site) {
        LesionSighting seen = new LesionSighting(
                LocalDate.parse("2023-07-10"),
                Optional.of(disease),
                leaf,
                Optional.of(new Incidence(shows, 100)),
                Double.NaN);
        return ThresholdRule.of(disease, site.hybrid(disease)).judge(seen, site);
    }
}
