// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.weather.Forcing;

/**
 * Chance, day by day, that a field can be worked.
 *
 * <pre>
 * workable = at most 0.1 in of rain that day, at most 0.5 in the day before, at most 1 in in the two days before
 * chance = share of the members in which it is, from the decision day on never below .1 nor above .9
 *
 * Range  0 to 1
 * Source common practice, no source; that a forecast is never surer than .9 either way: own construct
 * Check  WorkableDaysTest
 * </pre>
 *
 * @param first date of the first chance
 */
public record WorkableDays(LocalDate first, List<Double> chance) {
    private static final double WET_TODAY_MM = 2.54;
    private static final double WET_YESTERDAY_MM = 12.7;
    private static final double WET_TWO_DAYS_MM = 25.4;
    private static final double SUREST = .9;

    public WorkableDays {
        chance = List.copyOf(chance);
    }

    /** Over the courses of weather; before {@code on} they all hold what was observed. */
    static WorkableDays of(List<Forcing> weather, LocalDate on, LocalDate first, LocalDate last) {
        List<Double> chance = new ArrayList<>();
        for (LocalDate day = first; !day.isAfter(last); day = day.plusDays(1)) {
            int dry = 0;
            for (Forcing f : weather) {
                dry += isDry(f.rain_mm(), f.index(day)) ? 1 : 0;
            }
            double share = (double) dry / weather.size();
            chance.add(day.isBefore(on) ? share : Math.max(1 - SUREST, Math.min(SUREST, share)));
        }
        return new WorkableDays(first, chance);
    }

    public static boolean isDry(double[] rain_mm, int day) {
        double yesterday = at(rain_mm, day - 1);
        return at(rain_mm, day) <= WET_TODAY_MM
                && yesterday <= WET_YESTERDAY_MM
                && yesterday + at(rain_mm, day - 2) <= WET_TWO_DAYS_MM;
    }

    private static double at(double[] rain_mm, int day) {
        return day >= 0 && day < rain_mm.length ? rain_mm[day] : 0;
    }

    /** Chance of a date; NaN where it is not known. */
    public double on(LocalDate date) {
        long k = ChronoUnit.DAYS.between(first, date);
        return k >= 0 && k < chance.size() ? chance.get((int) k) : Double.NaN;
    }

    /** So many chances from a date on. */
    public double[] from(LocalDate date, int days) {
        double[] all = new double[days];
        for (int d = 0; d < days; d++) {
            double known = on(date.plusDays(d));
            all[d] = Double.isNaN(known) ? 0 : known;
        }
        return all;
    }
}
