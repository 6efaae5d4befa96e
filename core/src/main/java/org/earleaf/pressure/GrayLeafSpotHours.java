// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Predicate;
import org.earleaf.weather.WeatherHour;

/**
 * What weather has added up for gray leaf spot, beside the ranges seen in trials.
 *
 * <pre>
 * score = mean of the five figures scaled to their ranges, each held within 0 and 1
 *
 * warm hours, 22 to 30 °C, V4 to V12                 85.5 to 230.5 h
 * night hours of 90 % and more, V4 to V12            122 to 330 h
 * mean night temperature, V12 to R2                  18.5 to 24.8 °C
 * residue on the ground                              0 to 1
 * rating of the hybrid, 7 to 2 (turned round)
 * Range  nights from 20:00 to 06:00
 * Source factors and ranges: Paul & Munkvold 2005, Phytopathology 95:388-396 (abstract read); hours of 22 to 30 °C at 95 %
 *        and more: Bhatia & Munkvold 2002, Plant Dis. 86:1127. Their equations are not reproducible from print; the mean
 *        of the scaled figures is an assumption.
 * Check  GrayLeafSpotHoursTest
 * </pre>
 *
 * @param infectionHours hours of 22 to 30 °C with air of 95 % and more
 * @param warmHours from V4 to V12
 * @param humidNightHours from V4 to V12
 * @param night_C mean night temperature from V12 to R2; NaN: no such hour yet
 */
public record GrayLeafSpotHours(int infectionHours, int warmHours, int humidNightHours, double night_C) {
    /** Hours between V4, V12 and R2, the last exclusive; dates not reached yet may lie in the future. */
    public static GrayLeafSpotHours of(List<WeatherHour> hours, LocalDate v4, LocalDate v12, LocalDate r2) {
        List<WeatherHour> early = between(hours, v4, v12);
        List<WeatherHour> late = between(hours, v12, r2);
        return new GrayLeafSpotHours(
                count(between(hours, v4, r2), h -> isWarm(h) && h.rh_pct() >= 95),
                count(early, GrayLeafSpotHours::isWarm),
                count(early, h -> isNight(h) && h.rh_pct() >= 90),
                late.stream()
                        .filter(GrayLeafSpotHours::isNight)
                        .mapToDouble(WeatherHour::air_C)
                        .filter(t -> !Double.isNaN(t))
                        .average()
                        .orElse(Double.NaN));
    }

    /** Between 0 and 1, over the figures that are known; NaN when none is. */
    public double score(double residueCover, double hybridRating) {
        double[] scaled = {
            scaled(warmHours, 85.5, 230.5),
            scaled(humidNightHours, 122, 330),
            scaled(night_C, 18.5, 24.8),
            scaled(residueCover, 0, 1),
            scaled(hybridRating, 7, 2)
        };
        return java.util.Arrays.stream(scaled)
                .filter(v -> !Double.isNaN(v))
                .average()
                .orElse(Double.NaN);
    }

    private static double scaled(double value, double from, double to) {
        return Math.max(0, Math.min(1, (value - from) / (to - from)));
    }

    private static boolean isWarm(WeatherHour h) {
        return h.air_C() >= 22 && h.air_C() <= 30;
    }

    private static boolean isNight(WeatherHour h) {
        return h.at().getHour() >= 20 || h.at().getHour() < 6;
    }

    private static int count(List<WeatherHour> hours, Predicate<WeatherHour> which) {
        return (int) hours.stream().filter(which).count();
    }

    private static List<WeatherHour> between(List<WeatherHour> hours, LocalDate from, LocalDate toExclusive) {
        return hours.stream()
                .filter(h -> !h.at().toLocalDate().isBefore(from))
                .filter(h -> h.at().toLocalDate().isBefore(toExclusive))
                .toList();
    }
}
