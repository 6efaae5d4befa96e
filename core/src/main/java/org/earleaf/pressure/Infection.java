// SPDX-License-Identifier: Apache-2.0
package org.earleaf.pressure;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.earleaf.weather.LeafWetness;
import org.earleaf.weather.WeatherHour;

/**
 * Infections of a leaf that the weather allowed, hour by hour.
 *
 * <p>Wet hours add up; a dry gap longer than the fungus bears starts anew. An infection is complete when the hours reach
 * what their mean temperature asks for. Gray leaf spot counts hours of air at 95 % and more over several days, and those
 * beside a day that fell to 60 % or less with a third of their weight (derived from germ tubes of Thorson & Martinson
 * 1993).
 *
 * @param begin first wet hour
 * @param done end of the hour that completed it
 * @param wet_h weighted wet hours
 * @param needed_h asked for
 */
public record Infection(LocalDateTime begin, LocalDateTime done, double wet_h, double needed_h) {
    private static final double SATURATED = 95;
    private static final double DRY_DAY = 60;
    private static final int DAY_AFTER_H = 18;

    /** Infections of a disease, in their order; hours in order without gaps. */
    public static List<Infection> of(
            InfectionConditions conditions,
            List<WeatherHour> hours,
            boolean canopyClosed,
            ProtectionSettings settings) {
        double[] wet = wet(conditions, hours, canopyClosed, settings);
        List<Infection> found = new ArrayList<>();
        double sum = 0;
        double heat = 0;
        int dry = 0;
        int begin = -1;
        for (int k = 0; k < wet.length; k++) {
            if (wet[k] == 0) {
                dry++;
                if (dry > conditions.dryGap_h()) {
                    sum = 0;
                    heat = 0;
                }
                continue;
            }
            begin = sum == 0 ? k : begin;
            dry = 0;
            sum += wet[k];
            heat += wet[k] * hours.get(k).air_C();
            OptionalDouble needed = conditions.wetNeeded_h(heat / sum);
            if (needed.isPresent() && sum >= needed.getAsDouble()) {
                LocalDateTime done = hours.get(k).at().plusHours(1);
                found.add(new Infection(hours.get(begin).at(), done, sum, needed.getAsDouble()));
                sum = 0;
                heat = 0;
            }
        }
        return List.copyOf(found);
    }

    /**
     * Mean over the days of how much of an infection each allowed, each day at most 1: for a first look at the risk.
     *
     * <pre>
     * index of a day = min(1, wet hours of the day/W(their mean temperature))
     *
     * Source own construct on the model of Magarey et al. 2005
     * Check  InfectionTest
     * </pre>
     */
    public static double meanDailyIndex(
            InfectionConditions conditions,
            List<WeatherHour> hours,
            boolean canopyClosed,
            ProtectionSettings settings) {
        double[] wet = wet(conditions, hours, canopyClosed, settings);
        Map<LocalDate, double[]> days = new TreeMap<>();
        for (int k = 0; k < wet.length; k++) {
            double[] day = days.computeIfAbsent(hours.get(k).at().toLocalDate(), d -> new double[2]);
            day[0] += wet[k];
            day[1] += wet[k] * hours.get(k).air_C();
        }
        double sum = 0;
        for (double[] day : days.values()) {
            OptionalDouble needed = conditions.wetNeeded_h(day[0] > 0 ? day[1] / day[0] : Double.NaN);
            sum += needed.isPresent() ? Math.min(1, day[0] / needed.getAsDouble()) : 0;
        }
        return days.isEmpty() ? 0 : sum / days.size();
    }

    /** Weight of each hour, 0 for a dry one; an hour without a temperature is dry. */
    private static double[] wet(
            InfectionConditions conditions,
            List<WeatherHour> hours,
            boolean canopyClosed,
            ProtectionSettings settings) {
        List<LeafWetness> leaves = LeafWetness.byHumidity(hours, canopyClosed);
        double[] wet = new double[hours.size()];
        for (int k = 0; k < wet.length; k++) {
            WeatherHour h = hours.get(k);
            if (Double.isNaN(h.air_C())) {
                continue;
            }
            if (!conditions.saturatedAir()) {
                wet[k] = leaves.get(k) == LeafWetness.DRY ? 0 : 1;
            } else if (LeafWetness.inCanopy_pct(h.rh_pct(), canopyClosed) >= SATURATED) {
                boolean dryDay = driestAfter(hours, k) <= DRY_DAY;
                wet[k] = dryDay ? settings.of(ProtectionAssumption.DRY_DAY_NIGHT) : 1;
            }
        }
        return wet;
    }

    private static double driestAfter(List<WeatherHour> hours, int k) {
        double driest = 100;
        for (int j = k; j < Math.min(hours.size(), k + DAY_AFTER_H); j++) {
            double rh = hours.get(j).rh_pct();
            driest = rh < driest ? rh : driest;
        }
        return driest;
    }
}
