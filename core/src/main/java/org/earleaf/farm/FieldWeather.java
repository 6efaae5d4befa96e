// SPDX-License-Identifier: Apache-2.0
package org.earleaf.farm;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.earleaf.field.Reading;
import org.earleaf.field.Zone;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** The weather of one field: the station's, with the rain of the grower's own gauge where he read it. */
public final class FieldWeather {
    private FieldWeather() {}

    /**
     * The farm's observed weather, in which every reading of kind rain on this zone stands for the station's rain of
     * its day. A reading of the zone goes before one of the whole field, and a later entry before an earlier one.
     */
    public static WeatherSeries of(Farm farm, Zone zone) {
        WeatherSeries station = farm.weather().observed();
        Map<LocalDate, Double> gauge = gauge(farm, zone, LocalDate.MAX);
        return gauge.isEmpty() ? station : new WeatherSeries(with(station.days(), gauge));
    }

    /** The forecast likewise: a day that has passed since it was issued may have been measured, up to {@code on}. */
    public static List<WeatherDay> forecast(Farm farm, Zone zone, LocalDate on) {
        return with(farm.weather().forecast(), gauge(farm, zone, on));
    }

    private static Map<LocalDate, Double> gauge(Farm farm, Zone zone, LocalDate toInclusive) {
        Map<LocalDate, Double> rain = new HashMap<>();
        Map<LocalDate, Double> ofZone = new HashMap<>();
        for (Reading r : farm.readings()) {
            if (r.kind() == Reading.Kind.RAIN && r.isOn(zone) && !r.date().isAfter(toInclusive)) {
                (r.zone().isEmpty() ? rain : ofZone).put(r.date(), r.value());
            }
        }
        rain.putAll(ofZone);
        return rain;
    }

    private static List<WeatherDay> with(List<WeatherDay> days, Map<LocalDate, Double> rain_mm) {
        return days.stream()
                .map(d -> rain_mm.containsKey(d.date()) ? d.withRain(rain_mm.get(d.date())) : d)
                .toList();
    }
}
