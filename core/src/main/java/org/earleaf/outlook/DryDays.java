// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.earleaf.farm.Farm;
import org.earleaf.weather.AnalogYears;
import org.earleaf.weather.Future;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/**
 * Which of the next days can be worked, in each of a hundred futures of the farm's weather: earlier years by their
 * likeness, the forecast with its error, one rule of rain as in {@link WorkableDays}.
 */
public final class DryDays {
    private static final long SEED = 20_250_102L;
    private static final int FUTURES = 100;
    /** Rain of so many days before counts. */
    private static final int BEFORE_D = 3;

    private DryDays() {}

    /**
     * Futures with the same days.
     *
     * @param share of the futures
     * @param canBeWorked by day, from the day asked about on
     */
    public record Course(double share, List<Boolean> canBeWorked) {
        public Course {
            canBeWorked = List.copyOf(canBeWorked);
        }
    }

    /** The likeliest course first; the rain of {@code on} itself is known. */
    public static List<Course> of(Farm farm, LocalDate on, int days) {
        LocalDate first = on.minusDays(BEFORE_D);
        AnalogYears years = new AnalogYears(
                farm.weather().observed(),
                farm.weather().forecast(),
                farm.site(),
                farm.weather().gaps());
        List<Future> futures = years.futures(on, first, on.plusDays(days), new SplittableRandom(SEED));
        Map<List<Boolean>, Integer> counts = new LinkedHashMap<>();
        new ForecastError(farm.weather(), on)
                .courses(futures, ForecastError.byWeight(futures, FUTURES), SEED)
                .forEach(course -> counts.merge(dry(course, days), 1, Integer::sum));
        return counts.entrySet().stream()
                .map(e -> new Course((double) e.getValue() / FUTURES, e.getKey()))
                .sorted((a, b) -> Double.compare(b.share(), a.share()))
                .toList();
    }

    private static List<Boolean> dry(WeatherSeries course, int days) {
        double[] rain_mm =
                course.days().stream().mapToDouble(WeatherDay::rain_mm).toArray();
        List<Boolean> dry = new ArrayList<>();
        for (int d = 0; d < days; d++) {
            dry.add(WorkableDays.isDry(rain_mm, BEFORE_D + d));
        }
        return dry;
    }

    /** Share of the futures in which a day can be worked. */
    public static double chance(List<Course> courses, int day) {
        return courses.stream()
                .filter(c -> c.canBeWorked().get(day))
                .mapToDouble(Course::share)
                .sum();
    }
}
