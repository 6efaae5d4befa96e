// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDateTime;

/** Makes hours of an invented day, 1 July 2023, pleasant unless said otherwise: 72 °F, 60 %, wind 6 mph at 10 m. */
public final class Hours {
    private LocalDateTime at;
    private double air_C = 22;
    private double rh_pct = 60;
    private double wind_ms = 2.7;
    private double gust_ms = Double.NaN;
    private double rain_mm;
    private double chance;
    private double cloud = 0.5;

    private Hours(int hour) {
        at = LocalDateTime.parse("2023-07-01T00:00").plusHours(hour);
    }

    /** An hour counted from midnight of that day; more than 23 is a later day. */
    public static Hours at(int hour) {
        return new Hours(hour);
    }

    public Hours air(double c) {
        air_C = c;
        return this;
    }

    public Hours rh(double pct) {
        rh_pct = pct;
        return this;
    }

    public Hours wind(double ms) {
        wind_ms = ms;
        return this;
    }

    public Hours gust(double ms) {
        gust_ms = ms;
        return this;
    }

    public Hours rain(double mm) {
        rain_mm = mm;
        chance = Double.NaN;
        return this;
    }

    public Hours chance(double share) {
        chance = share;
        return this;
    }

    public Hours cloud(double share) {
        cloud = share;
        return this;
    }

    public WeatherHour build() {
        return new WeatherHour(at, air_C, rh_pct, wind_ms, gust_ms, 180, rain_mm, chance, cloud);
    }
}
