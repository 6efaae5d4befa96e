// SPDX-License-Identifier: Apache-2.0
package org.earleaf.protection;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.earleaf.field.Disease;
import org.earleaf.pressure.FungicideKind;
import org.earleaf.pressure.Insecticide;
import org.earleaf.pressure.ProtectionSettings;
import org.earleaf.pressure.WeatherRisk;
import org.earleaf.pressure.WeatherRisks;
import org.earleaf.weather.WeatherHour;
import org.junit.jupiter.api.Test;

/** FRAC 11 is the QoI and 3 the DMI group, by the code list of the Fungicide Resistance Action Committee. */
class LabelGroupsTest {
    private static final LocalDateTime UNTIL = LocalDate.of(2026, 7, 2).atStartOfDay();

    @Test
    void groups_of_the_label_tell_the_kind_and_an_unknown_set_has_no_figure_of_its_own() {
        assertThat(FungicideKind.ofGroups(Set.of("11"))).isEqualTo(FungicideKind.QOI);
        assertThat(FungicideKind.ofGroups(Set.of("3", "11"))).isEqualTo(FungicideKind.DMI_QOI);
        assertThat(FungicideKind.ofGroups(Set.of("3", "7", "11"))).isEqualTo(FungicideKind.OTHER);
        assertThat(FungicideKind.ofGroups(Set.of())).isEqualTo(FungicideKind.OTHER);
    }

    @Test
    void an_insecticide_counts_as_broad_unless_every_group_spares_enemies() {
        assertThat(Insecticide.Reach.ofGroups(Set.of("4A"))).isEqualTo(Insecticide.Reach.SELECTIVE);
        assertThat(Insecticide.Reach.ofGroups(Set.of("4A", "3A"))).isEqualTo(Insecticide.Reach.BROAD);
        assertThat(Insecticide.Reach.ofGroups(Set.of())).isEqualTo(Insecticide.Reach.BROAD);
    }

    private static List<WeatherHour> hours(int count, double air_C, double rh_pct) {
        List<WeatherHour> all = new ArrayList<>();
        for (int k = count; k > 0; k--) {
            all.add(new WeatherHour(UNTIL.minusHours(k), air_C, rh_pct, 2, 3, 180, 0, 0, .5));
        }
        return all;
    }

    @Test
    void wet_hours_of_two_weeks_tell_how_the_weather_suited_a_disease() {
        Map<Disease, WeatherRisk> wet = WeatherRisks.of(hours(336, 20, 96), UNTIL, false, ProtectionSettings.USUAL);
        assertThat(wet).containsEntry(Disease.NORTHERN_LEAF_BLIGHT, WeatherRisk.HIGH);
        Map<Disease, WeatherRisk> dry = WeatherRisks.of(hours(336, 20, 50), UNTIL, false, ProtectionSettings.USUAL);
        assertThat(dry)
                .containsEntry(Disease.NORTHERN_LEAF_BLIGHT, WeatherRisk.LOW)
                .containsEntry(Disease.GRAY_LEAF_SPOT, WeatherRisk.LOW)
                .doesNotContainKey(Disease.TAR_SPOT);
    }

    @Test
    void fewer_than_three_days_of_hours_or_older_ones_say_nothing() {
        assertThat(WeatherRisks.of(hours(71, 20, 96), UNTIL, false, ProtectionSettings.USUAL))
                .isEmpty();
        assertThat(WeatherRisks.of(hours(336, 20, 96), UNTIL.plusDays(14), false, ProtectionSettings.USUAL))
                .isEmpty();
        assertThat(WeatherRisks.of(hours(336, 20, Double.NaN), UNTIL, false, ProtectionSettings.USUAL))
                .isEmpty();
    }
}
