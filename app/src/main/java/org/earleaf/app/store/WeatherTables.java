// SPDX-License-Identifier: Apache-2.0
package org.earleaf.app.store;

import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.earleaf.farm.WeatherBook;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherHour;

/** Weather observed, forecast and by the hour. */
final class WeatherTables {
    static final Table<WeatherDay> OBSERVED = day(
                    Table.named("weather_day", (WeatherDay d) -> "weather " + d.date(), WeatherDay::date), d -> d)
            .inOrderOf(d -> d.date().toEpochDay())
            .read(WeatherTables::day);

    static final Table<Ahead> FORECAST = day(
                    Table.named(
                            "forecast_day", (Ahead a) -> "forecast " + a.day().date(), a -> a.day()
                                    .date()),
                    Ahead::day)
            .number("rain_chance", "chance of rain", Ahead::rainChance, Shown.SHARE)
            .inOrderOf(a -> a.day().date().toEpochDay())
            .read(r -> new Ahead(day(r), r.number("rain_chance")));

    /** By the order given: in the farm's own time an hour comes twice when clocks go back. */
    static final Table<WeatherHour> HOURS = Table.named(
                    "weather_hour", (WeatherHour h) -> "weather " + h.at(), h -> h.at().toEpochSecond(ZoneOffset.UTC))
            .key("at", WeatherHour::at)
            .number("air_c", "air", WeatherHour::air_C, Shown.TEMPERATURE)
            .number("rh_pct", "humidity", WeatherHour::rh_pct, Shown.PERCENT)
            .number("wind_m_s", "wind", WeatherHour::wind_ms, Shown.WIND)
            .number("gust_m_s", "gust", WeatherHour::gust_ms, Shown.WIND)
            .number("wind_from_deg", "wind from", WeatherHour::windFrom_deg, Shown.DEGREES)
            .number("rain_mm", "rain", WeatherHour::rain_mm, Shown.WATER)
            .number("rain_chance", "chance of rain", WeatherHour::rainChance, Shown.SHARE)
            .number("cloud", "cloud", WeatherHour::cloud, Shown.SHARE)
            .read(WeatherTables::hour);

    private WeatherTables() {}

    /** A day of forecast with its chance of rain. */
    record Ahead(WeatherDay day, double rainChance) {
        static List<Ahead> of(WeatherBook book) {
            List<Ahead> ahead = new ArrayList<>();
            for (int k = 0; k < book.forecast().size(); k++) {
                double chance = k < book.rainChance().size() ? book.rainChance().get(k) : Double.NaN;
                ahead.add(new Ahead(book.forecast().get(k), chance));
            }
            return ahead;
        }
    }

    /** The newer day, and of the older what the newer does not know. */
    static WeatherDay over(WeatherDay older, WeatherDay newer) {
        return new WeatherDay(
                newer.date(),
                known(newer.tmax_C(), older.tmax_C()),
                known(newer.tmin_C(), older.tmin_C()),
                known(newer.rain_mm(), older.rain_mm()),
                known(newer.solar_MJm2(), older.solar_MJm2()),
                known(newer.wind_ms(), older.wind_ms()),
                known(newer.rhMax_pct(), older.rhMax_pct()),
                known(newer.rhMin_pct(), older.rhMin_pct()),
                known(newer.dewPoint_C(), older.dewPoint_C()));
    }

    private static double known(double first, double second) {
        return Double.isNaN(first) ? second : first;
    }

    private static <T> Table.Builder<T> day(Table.Builder<T> table, Function<T, WeatherDay> of) {
        return table.key("date_", t -> of.apply(t).date())
                .number("tmax_c", "high", t -> of.apply(t).tmax_C(), Shown.TEMPERATURE)
                .number("tmin_c", "low", t -> of.apply(t).tmin_C(), Shown.TEMPERATURE)
                .number("rain_mm", "rain", t -> of.apply(t).rain_mm(), Shown.WATER)
                .number("solar_mj_m2", "light", t -> of.apply(t).solar_MJm2(), Shown.LIGHT)
                .number("wind_m_s", "wind", t -> of.apply(t).wind_ms(), Shown.WIND)
                .number("rh_max_pct", "highest humidity", t -> of.apply(t).rhMax_pct(), Shown.PERCENT)
                .number("rh_min_pct", "lowest humidity", t -> of.apply(t).rhMin_pct(), Shown.PERCENT)
                .number("dew_point_c", "dew point", t -> of.apply(t).dewPoint_C(), Shown.TEMPERATURE);
    }

    private static WeatherDay day(Row r) {
        return new WeatherDay(
                r.date("date_"),
                r.number("tmax_c"),
                r.number("tmin_c"),
                r.number("rain_mm"),
                r.number("solar_mj_m2"),
                r.number("wind_m_s"),
                r.number("rh_max_pct"),
                r.number("rh_min_pct"),
                r.number("dew_point_c"));
    }

    private static WeatherHour hour(Row r) {
        return new WeatherHour(
                LocalDateTime.parse(r.text("at")),
                r.number("air_c"),
                r.number("rh_pct"),
                r.number("wind_m_s"),
                r.number("gust_m_s"),
                r.number("wind_from_deg"),
                r.number("rain_mm"),
                r.number("rain_chance"),
                r.number("cloud"));
    }
}
