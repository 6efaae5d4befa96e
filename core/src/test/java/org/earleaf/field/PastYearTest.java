// SPDX-License-Identifier: Apache-2.0
package org.earleaf.field;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.junit.jupiter.api.Test;

class PastYearTest {
    private static Zone zone(String field, String zone) {
        double unknown = Double.NaN;
        Horizon one = new Horizon(0, 1524, 20, 25, 3, 6.5, unknown, Horizon.Measured.NOT_GIVEN);
        return new Zone(
                ZoneName.of(field, zone),
                10,
                new Zone.Planting("corn", LocalDate.of(2026, 5, 1), Hybrid.ofMaturity(108), 8, .76, unknown),
                new Zone.Land(SoilProfile.of(List.of(one), "test", new ArrayList<>()), Drainage.TILED, unknown),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
    }

    private static PastYear year(String zone, int year, double yield_kgHa) {
        return new PastYear(new FieldPart("Home", zone), year, PreviousCrop.CORN, yield_kgHa, Double.NaN);
    }

    @Test
    void a_zone_has_its_own_years_and_those_of_its_field_newest_first_and_each_once() {
        List<PastYear> all = List.of(
                year("", 2019, 1),
                year("east", 2021, 2),
                year("", 2021, 3),
                year("west", 2020, 4),
                year("", 2023, 5),
                new PastYear(new FieldPart("Hill", ""), 2022, PreviousCrop.CORN, 6, Double.NaN));
        assertThat(PastYear.of(zone("Home", "east"), all))
                .extracting(PastYear::yield_kgHa)
                .containsExactly(5.0, 2.0, 1.0);
        assertThat(PastYear.of(zone("Home", "west"), all))
                .extracting(PastYear::yield_kgHa)
                .containsExactly(5.0, 3.0, 4.0, 1.0);
        assertThat(PastYear.of(zone("Far", ""), all)).isEmpty();
    }
}
