// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import static org.assertj.core.api.Assertions.assertThat;

import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.earleaf.field.DiseaseFacts;
import org.earleaf.field.Drainage;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Hybrid;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.field.Scouted;
import org.earleaf.field.Tillage;
import org.earleaf.field.Zone;
import org.earleaf.field.ZoneName;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;
import org.junit.jupiter.api.Test;

class FieldWeatherTest {
    private static final LocalDate FIRST = LocalDate.of(2026, 6, 1);

    private static Reading rain(String field, String zone, int day, double mm) {
        return new Reading(
                "r" + day + zone,
                new FieldPart(field, zone),
                FIRST.plusDays(day),
                Reading.Kind.RAIN,
                mm,
                mm + " mm",
                Reading.Sampled.NO_SOIL,
                "",
                Scouted.NOTHING);
    }

    private static Zone zone(String field, String zone) {
        double unknown = Double.NaN;
        SoilProfile soil = SoilProfile.of(
                List.of(new Horizon(0, 1524, 20, 25, 3, 6.5, unknown, Horizon.Measured.NOT_GIVEN)),
                "test",
                new java.util.ArrayList<>());
        return new Zone(
                ZoneName.of(field, zone),
                10,
                new Zone.Planting("corn", LocalDate.of(2026, 5, 1), Hybrid.ofMaturity(108), 8, .76, unknown),
                new Zone.Land(soil, Drainage.TILED, unknown),
                new Zone.Seedbed(PreviousCrop.SOYBEAN, Tillage.REDUCED, unknown),
                DiseaseFacts.NOT_GIVEN);
    }

    private static Farm farm(List<Reading> readings) {
        List<WeatherDay> days = IntStream.range(0, 10)
                .mapToObj(k -> WeatherDay.of(FIRST.plusDays(k), 28, 15, 4))
                .toList();
        WeatherBook book = new WeatherBook(
                new WeatherSeries(days.subList(0, 7)), days.subList(7, 10), List.of(), List.of(), List.of(), List.of());
        return new Farm(
                "Test",
                new Site(40, -88, 220),
                ZoneId.of("America/Chicago"),
                new Farm.Ground(List.of(), List.of()),
                new Farm.Work(List.of(), readings, List.of(), List.of()),
                Farm.Shelf.EMPTY,
                book,
                Farm.Rules.usual(new Prices(4, .5, 1, Map.of())),
                List.of());
    }

    private static double rain(Farm farm, Zone zone, int day) {
        return FieldWeather.of(farm, zone).at(FIRST.plusDays(day)).rain_mm();
    }

    @Test
    void without_a_gauge_it_is_the_stations() {
        Farm farm = farm(List.of());
        assertThat(FieldWeather.of(farm, zone("A", "")))
                .isEqualTo(farm.weather().observed());
    }

    @Test
    void the_gauge_replaces_the_station_on_its_field_and_day_only() {
        Farm farm = farm(List.of(rain("A", "", 2, 11)));
        assertThat(rain(farm, zone("A", ""), 2)).isEqualTo(11);
        assertThat(rain(farm, zone("A", ""), 3)).isEqualTo(4);
        assertThat(rain(farm, zone("B", ""), 2)).isEqualTo(4);
    }

    @Test
    void a_zones_gauge_goes_before_the_fields_and_the_later_entry_before_the_earlier() {
        Farm farm = farm(List.of(rain("A", "low", 2, 20), rain("A", "", 2, 11), rain("A", "", 2, 12)));
        assertThat(rain(farm, zone("A", "low"), 2)).isEqualTo(20);
        assertThat(rain(farm, zone("A", "high"), 2)).isEqualTo(12);
    }

    @Test
    void a_forecast_day_takes_the_gauge_once_it_is_past() {
        Farm farm = farm(List.of(rain("A", "", 7, 0), rain("A", "", 9, 30)));
        List<WeatherDay> ahead = FieldWeather.forecast(farm, zone("A", ""), FIRST.plusDays(8));
        assertThat(ahead).extracting(WeatherDay::rain_mm).containsExactly(0.0, 4.0, 4.0);
    }
}
