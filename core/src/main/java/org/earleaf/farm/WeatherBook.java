// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.util.List;
import org.earleaf.units.Flag;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherGap;
import org.earleaf.weather.WeatherHour;
import org.earleaf.weather.WeatherSeries;

/**
 * All the weather a farm knows.
 *
 * @param observed the site's record, many years, gaps filled
 * @param forecast days after the record, as issued; may be empty; rain chance stands in {@code rainChance}
 * @param rainChance share 0 to 1 per forecast day, NaN: not given
 * @param hours hour by hour, observed or forecast, for spraying; may be empty
 * @param gaps long runs of filled days, never to be taken as a possible future
 * @param flags what was filled in
 */
public record WeatherBook(
        WeatherSeries observed,
        List<WeatherDay> forecast,
        List<Double> rainChance,
        List<WeatherHour> hours,
        List<WeatherGap> gaps,
        List<Flag> flags) {
    public WeatherBook {
        forecast = List.copyOf(forecast);
        rainChance = List.copyOf(rainChance);
        hours = List.copyOf(hours);
        gaps = List.copyOf(gaps);
        flags = List.copyOf(flags);
    }
}
