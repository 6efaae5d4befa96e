// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.Optional;
import org.earleaf.field.Disease;
import org.earleaf.field.PreviousCrop;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.ProtectionAssumption;
import org.earleaf.pressure.ProtectionCase;
import org.earleaf.pressure.ProtectionOption;
import org.earleaf.pressure.SiteFacts;
import org.earleaf.pressure.WeatherRisk;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Disease that was found does not make a pass worth less than not knowing; no figure of the model is held. */
class TrialFieldsTest {
    /**
     * A field above its threshold is one of the trials' fields with disease: whatever the weather of two weeks lets the
     * disease model think, a pass there is worth no less than in those, and no less than on the same field unscouted.
     */
    @ParameterizedTest
    @CsvSource({"62, LOW", "62, MODERATE", "62, HIGH", "62, ", "95, LOW", "95, HIGH", "95, "})
    void above_its_threshold_a_pass_is_worth_no_less_than_in_trials_with_disease(int shows, WeatherRisk weather) {
        for (int day : new int[] {3, 15, 23}) {
            ProtectionOption o = Cases.fungicide(Cases.VT.plusDays(day), FungicideKind.DMI_QOI, false, 22, 10);
            SiteFacts site = Cases.site(3, PreviousCrop.CORN, Optional.ofNullable(weather));
            double trials = mean(ProtectionWorth.gained_kgHa(plain(1).site(site).build(), o));
            double unseen = mean(ProtectionWorth.gained_kgHa(plain().site(site).build(), o));
            double above = mean(ProtectionWorth.gained_kgHa(
                    plain().site(site)
                            .lesions(Cases.counted(Disease.GRAY_LEAF_SPOT, shows))
                            .build(),
                    o));
            assertThat(above).isGreaterThanOrEqualTo(trials - 1e-6).isGreaterThan(unseen);
        }
    }

    /** An intermediate hybrid asks for more than plants: what is there still cannot make a pass worth less than not knowing. */
    @ParameterizedTest
    @CsvSource({"GRAY_LEAF_SPOT, 80", "NORTHERN_LEAF_BLIGHT, 80", "TAR_SPOT, 1", "TAR_SPOT, 30"})
    void disease_found_as_its_rule_counts_it_is_worth_no_less_than_not_looking(Disease disease, int shows) {
        SiteFacts site = Cases.site(5, PreviousCrop.SOYBEAN, Optional.empty());
        ProtectionOption o = Cases.fungicide(22, 10);
        double unseen = mean(ProtectionWorth.gained_kgHa(plain().site(site).build(), o));
        double found = mean(ProtectionWorth.gained_kgHa(
                plain().site(site).lesions(Cases.counted(disease, shows)).build(), o));
        assertThat(found).isGreaterThanOrEqualTo(unseen - 1e-6);
    }

    @Test
    void more_tar_spot_is_worth_more() {
        double before = 0;
        for (int shows : new int[] {1, 10, 40, 90}) {
            ProtectionCase c =
                    plain().lesions(Cases.counted(Disease.TAR_SPOT, shows)).build();
            double now = mean(ProtectionWorth.gained_kgHa(c, Cases.fungicide(22, 10)));
            assertThat(now).as("%d of 100", shows).isGreaterThanOrEqualTo(before);
            before = now;
        }
        assertThat(before).isGreaterThan(mean(ProtectionWorth.gained_kgHa(plain().build(), Cases.fungicide(22, 10))));
    }

    private static Cases plain(double chanceSevere) {
        return plain().with(ProtectionAssumption.SEVERE_LOW, chanceSevere)
                .with(ProtectionAssumption.SEVERE_MODERATE, chanceSevere)
                .with(ProtectionAssumption.SEVERE_HIGH, chanceSevere);
    }

    private static Cases plain() {
        return Cases.zoneOnItsOwn().with(ProtectionAssumption.APHIDS_UNSEEN, 0);
    }

    private static double mean(double[] values) {
        return Arrays.stream(values).average().orElseThrow();
    }
}
