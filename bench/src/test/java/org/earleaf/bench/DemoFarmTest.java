// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.SplittableRandom;
import org.earleaf.exchange.FarmFolder;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Rig;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.weather.AnalogYears;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The demo farm reads without a problem and has what the pages need; it is invented, so there is no outside source. */
class DemoFarmTest {
    private static Farm farm;

    @BeforeAll
    static void read() {
        farm = FarmFolder.read(Path.of(System.getProperty("earleaf.root", "..")).resolve("demo-farm"));
    }

    @Test
    void it_reads_without_a_problem_and_with_nothing_to_remark() {
        assertThat(farm.flags())
                .extracting(f -> f.where().toString(), f -> f.what().toString())
                .isEmpty();
        assertThat(farm.weather().flags()).isEmpty();
    }

    @Test
    void it_has_nine_fields_on_seven_textures() {
        assertThat(farm.zones().stream().map(Zone::field).distinct()).hasSize(9);
        assertThat(farm.zones().stream().map(z -> z.soil().texture().word()).distinct())
                .contains("sandy loam", "silt loam", "silty clay loam", "clay loam", "silty clay", "loam");
        assertThat(farm.ground().boundaries()).hasSameSizeAs(farm.zones());
    }

    @Test
    void one_rig_clears_tall_corn_and_another_works_low_between_the_rows() {
        assertThat(farm.rigs())
                .anyMatch(r -> r.clearance_m() > 1.8 && r.placements().contains(Placement.ROW_BASE));
        assertThat(farm.rigs())
                .anyMatch(r -> r.clearance_m() < 1 && r.placements().contains(Placement.MID_INJECT));
        assertThat(farm.rigs()).anyMatch(Rig::isTender).anyMatch(Rig::isHired);
    }

    @Test
    void its_record_holds_twenty_earlier_years_and_a_week_of_forecast() {
        AnalogYears years =
                new AnalogYears(farm.weather().observed(), farm.weather().forecast(), farm.site());
        assertThat(years.futures(
                        DemoWeather.TODAY,
                        DemoWeather.TODAY.withMonth(3).withDayOfMonth(1),
                        DemoWeather.TODAY.withMonth(10).withDayOfMonth(31),
                        new SplittableRandom(1)))
                .hasSize(20)
                .noneMatch(f -> f.label().startsWith("generated"));
        assertThat(farm.weather().forecast()).hasSize(7);
        assertThat(farm.weather().forecast().get(0).date()).isEqualTo(DemoWeather.TODAY.plusDays(1));
    }
}
