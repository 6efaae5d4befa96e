// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDateTime;

/**
 * One hour of weather, for spraying. {@code NaN} means not known.
 *
 * @param at start of the hour, in the farm's own time
 * @param air_C air temperature [°C]
 * @param rh_pct relative humidity [%]
 * @param wind_ms mean wind at 10 m [m/s]
 * @param gust_ms strongest gust [m/s]
 * @param windFrom_deg where the wind comes from, 0 north, 90 east
 * @param rain_mm precipitation [mm]
 * @param rainChance share, 0 to 1
 * @param cloud share of sky covered, 0 to 1
 */
public record WeatherHour(
        LocalDateTime at,
        double air_C,
        double rh_pct,
        double wind_ms,
        double gust_ms,
        double windFrom_deg,
        double rain_mm,
        double rainChance,
        double cloud) {}
