// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.time.LocalDateTime;
import org.earleaf.weather.SunTimes;

/**
 * Whether cold air lies under warm air, so that fine droplets hang and travel.
 *
 * <pre>
 * points: +2 from 2 h before sunset to 2 h after sunrise; +2 wind below 3 mph; +1 at most a quarter of the sky clouded;
 *         +1 dew, fog or frost; +1 smoke or dust hanging; +1 day and night more than 20 °F apart;
 *         -2 solid cloud; -2 steady wind above 5 mph
 * 4 and more: present; 3: probable; less: not likely
 *
 * Range  a stand-in where no pair of thermometers at two heights was read
 * Source signs and times after the land-grant inversion guide AE1705 and a national grains spray manual; the wider span
 *        of hours is taken on purpose. The points, solid cloud as 0.9 of the sky and an unknown sky taken as clear are
 *        assumptions.
 * Check  InversionTest
 * </pre>
 */
public enum Inversion {
    NOT_LIKELY,
    PROBABLE,
    PRESENT;

    static final double STILL_MS = 3 * org.earleaf.units.Units.MS_PER_MPH;
    private static final double STEADY_MS = 5 * org.earleaf.units.Units.MS_PER_MPH;
    private static final double WIDE_RANGE_C = 20 / 1.8;
    private static final double CLEAR = 0.25;
    private static final double SOLID = 0.9;
    private static final int HOURS_AROUND_NIGHT = 2;

    /**
     * What is known of the hour.
     *
     * @param nearNight from two hours before sunset to two hours after sunrise
     * @param wind_ms at boom height
     * @param cloud share of the sky; NaN is taken as clear
     * @param dew dew, fog or frost
     * @param smokeHangs seen on the spot
     * @param dayNightRange_C between the warmest and the coldest hour around; NaN: not known
     */
    public record Signs(
            boolean nearNight, double wind_ms, double cloud, boolean dew, boolean smokeHangs, double dayNightRange_C) {
        int points() {
            int points = 0;
            points += nearNight ? 2 : 0;
            points += wind_ms < STILL_MS ? 2 : 0;
            points += cloud > CLEAR ? 0 : 1;
            points += dew ? 1 : 0;
            points += smokeHangs ? 1 : 0;
            points += dayNightRange_C > WIDE_RANGE_C ? 1 : 0;
            points -= cloud >= SOLID ? 2 : 0;
            points -= wind_ms > STEADY_MS ? 2 : 0;
            return points;
        }
    }

    /** By the signs of the hour. */
    public static Inversion of(Signs signs) {
        int points = signs.points();
        return points >= 4 ? PRESENT : points == 3 ? PROBABLE : NOT_LIKELY;
    }

    /** By thermometers matched to 0.1 °C at 0.5 m and at 3 or 10 m, over ten minutes: this goes before any score. */
    public static Inversion measured(double high_C, double low_C) {
        return high_C - low_C > 0 ? PRESENT : NOT_LIKELY;
    }

    /** Whether an hour lies between two hours before sunset and two hours after sunrise. */
    public static boolean isNearNight(LocalDateTime at, SunTimes sun) {
        return at.isBefore(sun.rise().plusHours(HOURS_AROUND_NIGHT))
                || !at.plusHours(1).isBefore(sun.set().minusHours(HOURS_AROUND_NIGHT));
    }
}
