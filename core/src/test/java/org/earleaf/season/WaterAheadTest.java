// SPDX-License-Identifier: Apache-2.0
package org.earleaf.season;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.decide.Outlooks;
import org.earleaf.decide.TestFarm;
import org.earleaf.farm.FieldWeather;
import org.earleaf.outlook.Outlook;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

/** Irrigation goes on in the weather ahead as it was planned, then as it usually was. */
class WaterAheadTest {
    private static final LocalDate FIRST = LocalDate.of(2024, 6, 1);
    private static final double DEPTH_MM = 20;

    private static Forcing weather(double... rain_mm) {
        List<WeatherDay> days = new ArrayList<>();
        for (int k = 0; k < rain_mm.length; k++) {
            days.add(WeatherDay.of(FIRST.plusDays(k), 30, 16, rain_mm[k]));
        }
        return Forcing.of(new WeatherSeries(days), new Site(41.5, -92, 280));
    }

    private static List<Integer> due(Event.Usual usual, Forcing weather) {
        List<Integer> all = new ArrayList<>();
        for (int day = 0; day < weather.days(); day++) {
            if (usual.isOn(FIRST.plusDays(day)) && usual.isDue(weather, day)) {
                all.add(day);
            }
        }
        return all;
    }

    @Test
    void falls_every_so_many_days_after_the_last() {
        Event.Usual usual = new Event.Usual(FIRST, FIRST.plusDays(1), DEPTH_MM, 4);
        assertThat(due(usual, weather(new double[14]))).containsExactly(4, 8, 12);
    }

    @Test
    void rain_of_as_much_stands_for_a_pass_and_less_does_not() {
        Event.Usual usual = new Event.Usual(FIRST, FIRST.plusDays(1), DEPTH_MM, 4);
        double[] rain = new double[14];
        rain[2] = DEPTH_MM;
        assertThat(due(usual, weather(rain))).containsExactly(8, 12);
        rain[2] = DEPTH_MM / 2;
        assertThat(due(usual, weather(rain))).containsExactly(4, 8, 12);
    }

    @Test
    void what_is_past_was_as_entered() {
        Event.Usual usual = new Event.Usual(FIRST, FIRST.plusDays(6), DEPTH_MM, 4);
        assertThat(due(usual, weather(new double[14]))).containsExactly(6, 10);
    }

    private static final LocalDate ON = TestFarm.ON;

    private static List<Event> water(TestFarm farm) {
        WeatherSeries observed = FieldWeather.of(farm.farm(), farm.zone());
        return ZoneSeason.of(farm.farm(), farm.zone(), observed, ON).events().stream()
                .filter(e -> e instanceof Event.Water || e instanceof Event.Usual)
                .toList();
    }

    @Test
    void the_last_passes_say_what_is_usual_and_planned_ones_go_before_it() {
        assertThat(water(new TestFarm())).isEmpty();
        assertThat(water(new TestFarm().irrigated(ON.plusDays(3), 25))).hasSize(1);
        TestFarm farm = new TestFarm()
                .irrigated(ON.minusDays(12), 15)
                .irrigated(ON.minusDays(6), 25)
                .irrigated(ON.plusDays(3), 26);
        List<Event> all = water(farm);
        assertThat(all).hasSize(4);
        Event.Usual usual = (Event.Usual) all.get(3);
        assertThat(usual.date()).isEqualTo(ON.plusDays(3));
        assertThat(usual.depth_mm()).isCloseTo(22, within(1e-9));
        assertThat(usual.every_d()).isEqualTo(8);
    }

    @Test
    void a_dry_season_ahead_makes_more_where_a_field_is_watered() {
        TestFarm dry = new TestFarm().starter(220).rainAfter(0);
        TestFarm watered = new TestFarm().starter(220).rainAfter(0);
        for (int back = 8; back >= 1; back -= 7) {
            watered.irrigated(ON.minusDays(back), 30);
        }
        Outlook without = Outlooks.of(dry.farm(), dry.zone(), ON, true);
        Outlook with = Outlooks.of(watered.farm(), watered.zone(), ON, true);
        assertThat(with.yield_kgHa().p50()).isGreaterThan(without.yield_kgHa().p50());
        int ahead = with.trace().day(ON.plusDays(6));
        assertThat(with.trace().at(ahead, SeasonTrace.Daily.RAIN)).isCloseTo(30, within(1e-6));
        assertThat(without.trace().at(ahead, SeasonTrace.Daily.RAIN)).isLessThan(30);
    }
}
