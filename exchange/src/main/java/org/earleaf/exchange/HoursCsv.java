// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.earleaf.entry.Ranges;
import org.earleaf.exchange.table.Column;
import org.earleaf.exchange.table.Row;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherHour;

/** hours.csv: weather by the hour, for spraying. */
final class HoursCsv {
    private HoursCsv() {}

    static List<WeatherHour> read(Sheet sheet) {
        Column time = sheet.text("time");
        Column air = sheet.number("temperature", Measures.TEMPERATURE_C, Ranges.HOUR_AIR);
        Column rh = sheet.number("rh", Measures.PERCENT, Ranges.HUMIDITY);
        Column mean = sheet.number("wind", Measures.SPEED_MS, Ranges.HOUR_WIND);
        Column gust = sheet.optionalNumber("gust", Measures.SPEED_MS, Ranges.HOUR_WIND);
        Column from = sheet.optionalNumber("wind_from", Measures.DEGREES, Ranges.WIND_FROM);
        Column rain = sheet.optionalNumber("rain", Measures.WATER_MM, Ranges.HOUR_RAIN);
        Column chance = sheet.optionalNumber("rain_chance", Measures.SHARE, Ranges.RAIN_CHANCE);
        Column cloud = sheet.optionalNumber("cloud", Measures.SHARE, Ranges.CLOUD);
        if (!sheet.isComplete()) {
            return List.of();
        }
        Map<LocalDateTime, WeatherHour> hours = new TreeMap<>();
        for (Row row : sheet.rows()) {
            Optional<LocalDateTime> at = row.time(time);
            double c = row.number(air);
            double pct = row.number(rh);
            double ms = row.number(mean);
            double most = row.observed(gust);
            double deg = row.observed(from);
            double mm = row.observed(rain);
            double share = row.observed(chance);
            double sky = row.observed(cloud);
            if (row.isGood() && at.isPresent()) {
                WeatherHour hour = new WeatherHour(at.get(), c, pct, ms, most, deg, mm, share, sky);
                if (hours.putIfAbsent(at.get(), hour) != null) {
                    row.refuse("row.twice", time, Said.of("found.second-time", "what", row.cell(time)));
                }
            }
        }
        return new ArrayList<>(hours.values());
    }
}
