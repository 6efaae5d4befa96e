// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench;

import java.time.LocalDate;
import java.util.Locale;
import java.util.SplittableRandom;
import org.earleaf.units.Units;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/**
 * Invents the demo farm's hours.csv from the days that {@link DemoWeather} invented: two weeks observed and two days and a
 * half as forecast. The course of a day is our own construct: warmest at three, coldest at five, dew point just below the
 * coldest hour, wind up by day and down at night, rain in four hours of the late afternoon.
 */
final class DemoHours {
    private static final LocalDate FIRST = DemoWeather.TODAY.minusDays(14);
    private static final LocalDate LAST = DemoWeather.TODAY.plusDays(2);
    private static final int COLDEST = 5;
    private static final int WARMEST = 15;
    private static final int RAIN_FROM = 16;
    private static final int RAIN_H = 4;
    private static final long SEED = 4711;

    private final WeatherSeries days;

    private DemoHours(WeatherSeries days) {
        this.days = days;
    }

    static String csv(WeatherSeries days) {
        DemoHours hours = new DemoHours(days);
        StringBuilder csv = new StringBuilder(
                "time,temperature_f,rh_pct,wind_mph,gust_mph,wind_from_deg,rain_in,rain_chance_pct,cloud_pct\n");
        SplittableRandom random = new SplittableRandom(SEED);
        for (LocalDate day = FIRST; !day.isAfter(LAST); day = day.plusDays(1)) {
            double noon_mph = 5 + 7 * random.nextDouble();
            int from = 10 * (int) (14 + 12 * random.nextDouble());
            double cloud = days.at(day).rain_mm() > 0 ? .8 : .1 + .4 * random.nextDouble();
            for (int h = 0; h < 24; h++) {
                csv.append(hours.row(day, h, noon_mph, from, cloud));
            }
        }
        return csv.toString();
    }

    private String row(LocalDate day, int h, double noon_mph, int from, double cloud) {
        double air_C = air_C(day, h);
        double dew_C = between(days.at(day).tmin_C(), days.at(day.plusDays(1)).tmin_C(), h / 24.0) - 1;
        double rh = Math.min(100, 100 * saturation(dew_C) / saturation(air_C));
        boolean rains = days.at(day).rain_mm() > 0 && h >= RAIN_FROM && h < RAIN_FROM + RAIN_H;
        double up = Math.max(0, Math.sin(Math.PI * (h - 6) / 15.0));
        double wind = noon_mph * (.35 + .65 * (h > 6 && h < 21 ? up : 0));
        boolean forecast = !day.isBefore(DemoWeather.TODAY);
        double rain_in = rains ? Units.inches(days.at(day).rain_mm()) / RAIN_H : 0;
        return String.format(
                Locale.ROOT,
                "%s %02d:00,%.0f,%.0f,%.1f,%.1f,%d,%.2f,%s,%.0f\n",
                day,
                h,
                Units.fahrenheit(air_C),
                rains ? Math.max(rh, 95) : rh,
                wind,
                wind * 1.4 + 1,
                from,
                rain_in,
                forecast ? rains ? "70" : "5" : "",
                100 * (rains ? .95 : cloud));
    }

    /** From the coldest hour to the warmest and on to the next day's coldest, on halves of a cosine. */
    private double air_C(LocalDate day, int h) {
        WeatherDay today = days.at(day);
        if (h < COLDEST) {
            return between(
                    days.at(day.minusDays(1)).tmax_C(),
                    today.tmin_C(),
                    (h + 24.0 - WARMEST) / (24 - WARMEST + COLDEST));
        }
        return h < WARMEST
                ? between(today.tmin_C(), today.tmax_C(), (double) (h - COLDEST) / (WARMEST - COLDEST))
                : between(
                        today.tmax_C(),
                        days.at(day.plusDays(1)).tmin_C(),
                        (double) (h - WARMEST) / (24 - WARMEST + COLDEST));
    }

    private static double between(double from, double to, double share) {
        return from + (to - from) * (1 - Math.cos(Math.PI * share)) / 2;
    }

    /** Magnus form, Allen et al. 1998 eq. 11; only its ratio is used. */
    private static double saturation(double t_C) {
        return Math.exp(17.27 * t_C / (t_C + 237.3));
    }
}
