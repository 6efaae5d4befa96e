// SPDX-License-Identifier: Apache-2.0
package org.earleaf.spray;

import java.util.List;
import org.earleaf.weather.WeatherHour;

/**
 * One hour judged for one pass.
 *
 * @param wind_ms at boom height
 * @param deltaT_C air less wet bulb
 * @param against everything that speaks against it, worst first; empty when it is fit
 */
public record SprayHour(
        WeatherHour hour,
        SprayFit fit,
        double wind_ms,
        double deltaT_C,
        Inversion inversion,
        List<HourReason> against) {
    public SprayHour {
        against = List.copyOf(against);
    }
}
