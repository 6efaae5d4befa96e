// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** A count of plants replaces the population from its day. */
class StandCountTest {
    private static final LocalDate COUNTED = LocalDate.of(2024, 6, 10);
    private static final LocalDate LATER = LocalDate.of(2024, 7, 14);
    private static final double FULL_M2 = 8;

    private static SeasonRun run(TestFarm farm, LocalDate next) {
        farm.starter(200);
        WeatherSeries observed = FieldWeather.of(farm.farm(), farm.zone());
        ZoneSeason season = ZoneSeason.of(farm.farm(), farm.zone(), observed, LATER);
        SeasonRun run = season.start(Forcing.of(
                observed.between(season.setup().first(), observed.last()),
                farm.farm().site()));
        season.advance(run, next);
        return run;
    }

    @Test
    void plants_that_are_gone_take_no_light_and_no_nitrogen_from_the_day_of_the_count() {
        LocalDate morning = COUNTED.plusDays(1);
        SeasonRun full = run(new TestFarm(), morning);
        SeasonRun thin = run(new TestFarm().stand(COUNTED, FULL_M2 / 4), morning);
        assertThat(thin.shoot_kgHa(0)).isLessThan(.4 * full.shoot_kgHa(0));
        assertThat(thin.now(0, SeasonTrace.Daily.LAI)).isLessThan(.6 * full.now(0, SeasonTrace.Daily.LAI));
        assertThat(thin.now(0, SeasonTrace.Daily.DEMAND)).isLessThan(full.now(0, SeasonTrace.Daily.DEMAND));
        // The plants left are no hungrier for it.
        assertThat(thin.nni(0)).isCloseTo(full.nni(0), within(.05));
        SeasonRun dayBefore = run(new TestFarm().stand(COUNTED, FULL_M2 / 4), COUNTED);
        assertThat(dayBefore.shoot_kgHa(0))
                .isEqualTo(run(new TestFarm(), COUNTED).shoot_kgHa(0));
    }

    @Test
    void water_and_nitrogen_still_close() {
        SeasonRun thin = run(new TestFarm().stand(COUNTED, 2).stand(LATER.minusDays(3), 1), LATER);
        assertThat(thin.nitrogenRemainder_kgHa(0)).isCloseTo(0, within(1e-6));
        assertThat(thin.waterRemainder_mm(0)).isCloseTo(0, within(1e-6));
    }

    @Test
    void a_count_of_the_full_stand_changes_nothing() {
        double counted = run(new TestFarm().stand(COUNTED, FULL_M2), LATER).shoot_kgHa(0);
        assertThat(counted).isCloseTo(run(new TestFarm(), LATER).shoot_kgHa(0), within(1e-9));
    }

    @Test
    void a_count_of_none_leaves_a_crop_that_can_be_spoken_of() {
        SeasonRun bare = run(new TestFarm().stand(COUNTED, 0), LATER);
        assertThat(bare.shoot_kgHa(0)).isFinite().isNotNegative();
        assertThat(bare.yield(0).grain_kgHa()).isFinite();
    }
}
