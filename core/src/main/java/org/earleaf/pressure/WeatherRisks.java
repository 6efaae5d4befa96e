// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDateTime;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.earleaf.field.Disease;
import org.earleaf.weather.WeatherHour;

/** How the weather of the last two weeks suited each disease. */
public final class WeatherRisks {
    private static final int DAYS = 14;
    /** Fewer known hours say too little (own construct). */
    private static final int LEAST_H = 72;

    private WeatherRisks() {}

    /**
     * By the hours of the two weeks before a time; a disease without a model, and every one when too few hours are known,
     * is left out.
     *
     * @param hours in order
     */
    public static Map<Disease, WeatherRisk> of(
            List<WeatherHour> hours, LocalDateTime until, boolean canopyClosed, ProtectionSettings settings) {
        LocalDateTime from = until.minusDays(DAYS);
        List<WeatherHour> known = hours.stream()
                .filter(h -> !h.at().isBefore(from) && h.at().isBefore(until))
                .filter(h -> !Double.isNaN(h.air_C()) && !Double.isNaN(h.rh_pct()))
                .toList();
        Map<Disease, WeatherRisk> risks = new EnumMap<>(Disease.class);
        if (known.size() < LEAST_H) {
            return risks;
        }
        for (Disease d : Disease.values()) {
            InfectionConditions.find(d)
                    .map(c -> Infection.meanDailyIndex(c, known, canopyClosed, settings))
                    .ifPresent(index -> risks.put(d, WeatherRisk.ofIndex(index, settings)));
        }
        return risks;
    }
}
