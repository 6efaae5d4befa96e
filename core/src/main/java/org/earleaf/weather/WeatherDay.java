// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;

/**
 * One day of weather as observed or forecast. {@code NaN} means not known; temperatures and rain of a day inside a
 * {@link WeatherSeries} are always known.
 *
 * @param tmax_C highest air temperature [°C]
 * @param tmin_C lowest air temperature [°C]
 * @param rain_mm precipitation [mm]
 * @param solar_MJm2 global radiation [MJ/m2/d]
 * @param wind_ms mean wind at 2 m [m/s]
 * @param rhMax_pct highest relative humidity [%]
 * @param rhMin_pct lowest relative humidity [%]
 * @param dewPoint_C dew point [°C]
 */
public record WeatherDay(
        LocalDate date,
        double tmax_C,
        double tmin_C,
        double rain_mm,
        double solar_MJm2,
        double wind_ms,
        double rhMax_pct,
        double rhMin_pct,
        double dewPoint_C) {
    /** A day for which only temperatures and rain are known. */
    public static WeatherDay of(LocalDate date, double tmax_C, double tmin_C, double rain_mm) {
        double unknown = Double.NaN;
        return new WeatherDay(date, tmax_C, tmin_C, rain_mm, unknown, unknown, unknown, unknown, unknown);
    }

    public double tmean_C() {
        return (tmax_C + tmin_C) / 2;
    }

    public WeatherDay withRain(double mm) {
        return new WeatherDay(date, tmax_C, tmin_C, mm, solar_MJm2, wind_ms, rhMax_pct, rhMin_pct, dewPoint_C);
    }

    /** The same weather on another day. */
    public WeatherDay on(LocalDate other) {
        return new WeatherDay(other, tmax_C, tmin_C, rain_mm, solar_MJm2, wind_ms, rhMax_pct, rhMin_pct, dewPoint_C);
    }
}
