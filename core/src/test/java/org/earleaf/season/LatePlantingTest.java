// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.earleaf.season.SyntheticSeason.FIRST;
import static org.earleaf.season.SyntheticSeason.pre;
import static org.earleaf.season.SyntheticSeason.zone;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.earleaf.season.parameter.ParameterSet;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** What a season that begins late or ends early leaves of the grain. */
class LatePlantingTest {
    private static final int OCTOBER_31 = 304;
    private static final Site CHAMPAIGN = new Site(40.08, -88.24, 220);
    /** Mean highs and lows of April to November in Champaign, Illinois [°F], from memory. */
    private static final double[][] NORMALS = {
        {63, 42}, {74, 53}, {83, 63}, {85, 66}, {83, 64}, {78, 56}, {65, 44}, {50, 33}
    };

    private static final Forcing USUAL = normal(j -> Double.NaN);

    private static Forcing normal(IntToDoubleFunction low_C) {
        List<WeatherDay> days = new ArrayList<>();
        for (int j = FIRST; j <= OCTOBER_31; j++) {
            LocalDate day = SyntheticSeason.date(j);
            double rain = SyntheticSeason.usualRain(j);
            double cold = low_C.applyAsDouble(j);
            days.add(WeatherDay.of(day, celsius(day, 0), Double.isNaN(cold) ? celsius(day, 1) : cold, rain));
        }
        return Forcing.of(new WeatherSeries(days), CHAMPAIGN);
    }

    /** Straight from the middle of a month to that of the next. */
    private static double celsius(LocalDate day, int which) {
        LocalDate before = day.minusDays(14).withDayOfMonth(15);
        if (day.getDayOfMonth() >= 15) {
            before = day.withDayOfMonth(15);
        }
        LocalDate after = before.plusMonths(1);
        double gone = (double) (day.toEpochDay() - before.toEpochDay()) / (after.toEpochDay() - before.toEpochDay());
        double from = NORMALS[before.getMonthValue() - 4][which];
        double to = NORMALS[after.getMonthValue() - 4][which];
        return (from + gone * (to - from) - 32) / 1.8;
    }

    private static Forcing frost(int doy, double low_C) {
        return normal(j -> j == doy ? low_C : Double.NaN);
    }

    private static SeasonRun run(Forcing weather, int planted, int untilDoy) {
        SeasonRun run = SeasonRun.start(zone().planted(planted).late().setup(), ParameterSet.usual(), weather);
        run.applyAll(pre(250).pass());
        while (run.day() < untilDoy - FIRST) {
            run.step();
        }
        return run;
    }

    private static double grain(Forcing weather, int planted) {
        return run(weather, planted, OCTOBER_31 + 1).yield(0).grain_kgHa();
    }

    /** The day on which a share of the time from silk to black layer is over. */
    private static int reaches(double rep) {
        int doy = FIRST;
        while (run(USUAL, FIRST, doy + 1).state().rep[0] < rep) {
            doy++;
        }
        return doy;
    }

    /**
     * Illinois: .92 of the most when planted on 20 May, .86 on 30 May (Nafziger 1994, J. Prod. Agric. 7:59, and later
     * trials of the same university, from memory). Iowa: .90 from 26 May to 1 June, .68 from 10 to 16 June (extension
     * table of 2008). Half in the middle of June is a projection beyond trials that end in May. A model of light, warmth
     * and frost alone ends at .83 there: pests, diseases and the hybrids of the time are not in it.
     */
    @Test
    void corn_planted_late_yields_less_and_each_day_of_june_costs_more_than_one_of_early_may() {
        double first = grain(USUAL, 121);
        double may10 = grain(USUAL, 130) / first;
        double may20 = grain(USUAL, 140) / first;
        double may30 = grain(USUAL, 150) / first;
        double june15 = grain(USUAL, 166) / first;
        assertThat(may10).isBetween(.95, .99);
        assertThat(may20).isBetween(.90, .96);
        assertThat(may30).isBetween(.84, .93);
        assertThat(june15).isBetween(.60, .86);
        assertThat((may30 - june15) / 16).isGreaterThan((1 - may10) / 9);
    }

    /** Kept by crops that a frost killed: dough .45, dent .60, half milk line .88. Afuakwa & Crookston 1984. */
    @Test
    void a_killing_frost_in_fill_leaves_what_killed_crops_were_seen_to_keep() {
        double ripe = grain(USUAL, FIRST);
        double[][] published = {{.43, .45}, {.63, .60}, {.80, .88}};
        for (double[] p : published) {
            double kept = grain(frost(reaches(p[0]) + 1, -4), FIRST) / ripe;
            assertThat(kept).as("killed at %s of fill", p[0]).isCloseTo(p[1], within(.10));
        }
        assertThat(grain(frost(reaches(1) + 1, -4), FIRST)).isEqualTo(ripe);
    }

    @Test
    void a_killed_crop_stays_in_its_stage_and_never_ripens_whatever_goes_on_around_it() {
        int struck = reaches(.5) + 1;
        SeasonRun run = SeasonRun.start(
                zone().late().setup(),
                List.of(ParameterSet.usual(), ParameterSet.usual()),
                List.of(frost(struck, -3), USUAL),
                new int[] {0, 1});
        run.applyAll(pre(250).pass());
        while (run.day() <= struck - FIRST) {
            run.step();
        }
        double rep = run.state().rep[0];
        double grain = run.yield(0).grain_kgHa();
        while (run.day() <= OCTOBER_31 - FIRST) {
            run.step();
        }
        assertThat(run.state().rep[0]).isEqualTo(rep).isLessThan(.6);
        assertThat(run.yield(0).grain_kgHa()).isEqualTo(grain);
        assertThat(run.blackLayerDay(0)).isEqualTo(-1);
        assertThat(run.blackLayerDay(1)).isPositive();
    }

    /**
     * Growing point below ground to V6: the crop comes back. All leaf lost at the seven-leaf stage (about V5) costs 9 % in
     * the hail adjusters' chart, from memory.
     */
    @Test
    void a_killing_frost_before_six_collars_costs_little() {
        double spared = grain(USUAL, FIRST);
        for (double collars = 1; collars < 5.9; collars += .8) {
            int doy = FIRST;
            while (run(USUAL, FIRST, doy).collars(0) < collars) {
                doy++;
            }
            assertThat(run(USUAL, FIRST, doy).collars(0)).isLessThan(6);
            assertThat(grain(frost(doy, -4), FIRST) / spared)
                    .as("struck at V%s", collars)
                    .isBetween(.88, 1.01);
        }
    }

    /** Growth for light at 15.8 °C was .72 of that at 20.9 °C: Andrade et al. 1993, Field Crops Res. 32:17. */
    @Test
    void cold_slows_growth_sooner_in_fill() {
        assertThat(Growth.coolness(15.8, .5) / Growth.coolness(20.9, .5)).isCloseTo(.72, within(.08));
        assertThat(Growth.coolness(16, .01)).isLessThan(Growth.coolness(16, 0));
        assertThat(Growth.coolness(21, .5)).isEqualTo(1);
    }
}
