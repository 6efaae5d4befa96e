// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.util.List;
import org.earleaf.weather.WeatherHour;

/**
 * Rain after a pass.
 *
 * <pre>
 * stays on when the sum of the hourly chances < 0.3 and no hour brings more than 0.05 in
 * washed when 0.1 in or more fell within the label's hours
 *
 * Range  the label's hours to rainfast, an input without default
 * Source common practice, no source
 * Check  RainfastTest
 * </pre>
 */
public final class Rainfast {
    private static final double MOST_CHANCE = 0.3;
    private static final double MOST_MM = 0.05 * org.earleaf.units.Units.MM_PER_IN;
    private static final double WASHED_MM = 0.1 * org.earleaf.units.Units.MM_PER_IN;
    static final double RAINS_MM = 0.1;

    private Rainfast() {}

    /** Chance of rain in an hour: as forecast, or certain and none where rain was measured; NaN when not known. */
    public static double chance(WeatherHour h) {
        if (!Double.isNaN(h.rainChance())) {
            return h.rainChance();
        }
        return Double.isNaN(h.rain_mm()) ? Double.NaN : h.rain_mm() >= RAINS_MM ? 1 : 0;
    }

    /** Whether what was sprayed is likely to stay on over these hours, those with unknown rain not counted. */
    public static boolean staysOn(List<WeatherHour> after) {
        double sum = 0;
        for (WeatherHour h : after) {
            double chance = chance(h);
            sum += Double.isNaN(chance) ? 0 : chance;
            if (h.rain_mm() > MOST_MM) {
                return false;
            }
        }
        return sum < MOST_CHANCE;
    }

    /**
     * Whether rain measured within the label's hours may have washed the pass off. It calls for another look; the
     * label's interval and season limits decide whether anything may be put on again.
     */
    public static boolean washed(List<WeatherHour> within) {
        double sum = 0;
        for (WeatherHour h : within) {
            sum += Double.isNaN(h.rain_mm()) ? 0 : h.rain_mm();
        }
        return sum >= WASHED_MM - 1e-9;
    }
}
