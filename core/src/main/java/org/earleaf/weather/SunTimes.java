// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;

/**
 * Sunrise and sunset on the farm's own clock, without refraction (a few minutes late and early).
 *
 * <pre>
 * solar noon = 12 - longitude/15 - Sc hours UTC;  sunrise and sunset = noon -+ N/2
 * Sc = 0.1645 sin(2b) - 0.1255 cos(b) - 0.025 sin(b),  b = 2 pi (J - 81)/364
 *
 * J      day of the year
 * N      hours of daylight
 * Range  latitude 25 to 55 degrees
 * Source Allen, Pereira, Raes & Smith 1998, FAO Irrigation and Drainage Paper 56, eqs 31 to 34.
 * Check  SunTimesTest
 * </pre>
 */
public record SunTimes(LocalDateTime rise, LocalDateTime set) {
    public static SunTimes of(LocalDate date, Site site, ZoneId zone) {
        double b = 2 * Math.PI * (date.getDayOfYear() - 81) / 364;
        double sc = 0.1645 * Math.sin(2 * b) - 0.1255 * Math.cos(b) - 0.025 * Math.sin(b);
        double noon = 12 - site.longitude_deg() / 15 - sc;
        double half = ReferenceEvapotranspiration.daylight_h(site.latitude_deg(), date.getDayOfYear()) / 2;
        return new SunTimes(clock(date, noon - half, zone), clock(date, noon + half, zone));
    }

    private static LocalDateTime clock(LocalDate date, double utc_h, ZoneId zone) {
        return date.atStartOfDay()
                .plusSeconds(Math.round(utc_h * 3600))
                .atOffset(ZoneOffset.UTC)
                .atZoneSameInstant(zone)
                .toLocalDateTime();
    }
}
