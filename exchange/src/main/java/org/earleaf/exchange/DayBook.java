// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.ToDoubleFunction;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Place;
import org.earleaf.units.Figure;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherDay;

/** Days of weather as they are read: each once, in order, and such as the unit they claim can be. */
final class DayBook {
    /** No air temperature in °C is higher (the model's range). */
    private static final double MOST_C = 55;
    /** Half of all summer days warmer than this are no °C; colder than the other, no °F; own construct. */
    private static final double HOT_SUMMER_C = 45;

    /** The same for the middle highest and lowest temperature of summer days, on the cold side. */
    static final double COLD_SUMMER_C = 8;

    static final double COLD_SUMMER_NIGHT_C = -3;
    private static final int DIGITS = 5;
    private static final double WRONG_SHARE = 0.02;
    private static final int ENOUGH_SUMMER_DAYS = 10;
    private static final int ENOUGH_RAIN_DAYS = 30;
    /** Mean of all days; the wettest farmed places have a third of it. */
    private static final double FLOOD_MM = 15;

    private record Noted(Place place, WeatherDay day) {}

    private final Findings findings;
    private final Map<LocalDate, Noted> days = new TreeMap<>();
    private LocalDate latest = LocalDate.MIN;

    DayBook(Findings findings) {
        this.findings = findings;
    }

    void add(Place place, WeatherDay day) {
        Noted before = days.putIfAbsent(day.date(), new Noted(place, day));
        if (before == null) {
            if (day.date().isBefore(latest)) {
                findings.flag(Place.of(place.file()), Said.of("flag.days-unsorted"));
            }
            latest = day.date();
        } else if (before.day().equals(day)) {
            findings.flag(place, Said.of("flag.day-twice", "day", day.date()));
        } else {
            findings.problem(
                    "weather.day-twice",
                    place,
                    Said.of(
                            "found.other-values",
                            "day",
                            day.date(),
                            "place",
                            before.place().said()));
        }
    }

    List<WeatherDay> days() {
        return days.values().stream().map(Noted::day).toList();
    }

    /** Every day of another book. */
    void addAll(DayBook other) {
        other.days.values().forEach(n -> add(n.place(), n.day()));
    }

    /** Notes a problem when a temperature is known on no day at all. */
    void checkKnown() {
        if (isEmpty() || findings.hasProblems()) {
            return;
        }
        String file = days.values().iterator().next().place().file();
        for (boolean high : new boolean[] {true, false}) {
            if (values(n -> high ? n.day().tmax_C() : n.day().tmin_C()).length == 0) {
                Place column = new Place(file, 0, high ? "tmax" : "tmin");
                findings.problem("weather.column-empty", column, Said.of("found.no-value"));
            }
        }
    }

    /** Days of this book, and those of the other that it lacks. */
    void addMissing(DayBook other) {
        other.days.forEach(days::putIfAbsent);
    }

    boolean isEmpty() {
        return days.isEmpty();
    }

    /**
     * Whether temperatures can be what their column says; notes the problem when they cannot.
     *
     * @param column name of the column of highest temperatures
     * @param celsius whether it claims °C
     * @param cold_C the middle summer day cannot be colder
     * @param otherwise what to do about it
     */
    boolean hasLikelyTemperatures(
            ToDoubleFunction<WeatherDay> temperature, String column, boolean celsius, double cold_C, Said otherwise) {
        List<Noted> hot = days.values().stream()
                .filter(n -> temperature.applyAsDouble(n.day()) > MOST_C)
                .toList();
        double summer = summerMedian(temperature);
        boolean tooHot = hot.size() > WRONG_SHARE * days.size() || summer > HOT_SUMMER_C;
        if (celsius && tooHot) {
            Noted first = hot.isEmpty() ? days.values().iterator().next() : hot.get(0);
            Said found = hot.isEmpty()
                    ? Said.of("found.median-summer", "value", Figure.text(summer, DIGITS))
                    : Said.of(
                            "found.values-over",
                            "value",
                            Figure.text(temperature.applyAsDouble(first.day()), DIGITS),
                            "more",
                            hot.size() - 1);
            findings.problem("weather.not-celsius", at(first, column), found, "otherwise", otherwise);
            return false;
        }
        if (summer < cold_C) {
            Noted first = days.values().iterator().next();
            Said found = Said.of("found.median-summer-converted", "value", Figure.text(summer, DIGITS));
            findings.problem("weather.other-unit", at(first, column), found, "otherwise", otherwise);
            return false;
        }
        return true;
    }

    /** Notes a problem when so much rain can only be another unit. */
    void checkRain(String column, Said otherwise) {
        double[] rain = values(n -> n.day().rain_mm());
        double mean = Arrays.stream(rain).average().orElse(0);
        if (rain.length >= ENOUGH_RAIN_DAYS && mean > FLOOD_MM) {
            Noted first = days.values().iterator().next();
            Said found = Said.of("found.rain-a-day", "value", Figure.text(mean, DIGITS));
            findings.problem("weather.rain-other-unit", at(first, column), found, "otherwise", otherwise);
        }
    }

    private static Place at(Noted noted, String column) {
        return new Place(noted.place().file(), noted.place().row(), column);
    }

    private double summerMedian(ToDoubleFunction<WeatherDay> temperature) {
        double[] summer = values(n -> {
            int month = n.day().date().getMonthValue();
            return month >= 6 && month <= 8 ? temperature.applyAsDouble(n.day()) : Double.NaN;
        });
        Arrays.sort(summer);
        return summer.length < ENOUGH_SUMMER_DAYS ? Double.NaN : summer[summer.length / 2];
    }

    private double[] values(ToDoubleFunction<Noted> value) {
        return days.values().stream()
                .mapToDouble(value)
                .filter(v -> !Double.isNaN(v))
                .toArray();
    }
}
