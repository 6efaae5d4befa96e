// SPDX-License-Identifier: Apache-2.0
package org.earleaf.weather;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.earleaf.units.Flag;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.weather.WeatherFill.Change;

/** Remarks on filled weather, one for each kind and year, so that a long record does not drown its reader. */
final class FillNotes {
    private static final int DAYS_NAMED = 3;

    private final String where;
    private final Map<Integer, Map<Change, List<LocalDate>>> days = new TreeMap<>();

    FillNotes(String where) {
        this.where = where;
    }

    void add(LocalDate day, Change change) {
        days.computeIfAbsent(day.getYear(), y -> new EnumMap<>(Change.class))
                .computeIfAbsent(change, k -> new ArrayList<>())
                .add(day);
    }

    List<Flag> flags() {
        List<Flag> flags = new ArrayList<>();
        days.forEach((year, changes) -> changes.forEach((change, on) -> flags.add(new Flag(
                Said.of("flag.year", "where", where, "year", String.valueOf(year)), said(change, count(on))))));
        return flags;
    }

    private static Said said(Change change, Said on) {
        Measured most = Measure.TEMPERATURE.of(WeatherFill.MOST_C);
        Measured rain = Measure.RAIN.of(WeatherFill.MOST_RAIN_MM);
        Measured apart = Measure.TEMPERATURE_STEP.of(WeatherFill.APART_C);
        return switch (change) {
            case HIGHEST_BEYOND -> Said.of("fill.highest-beyond", "on", on, "most", most);
            case LOWEST_BEYOND -> Said.of("fill.lowest-beyond", "on", on, "most", most);
            case RAIN_BEYOND -> Said.of("fill.rain-beyond", "on", on, "most", rain);
            case SUN_BEYOND -> Said.of("fill.sun-beyond", "on", on);
            case SWAPPED -> Said.of("fill.swapped", "on", on);
            case NO_ROW -> Said.of("fill.no-row", "on", on);
            case NO_HIGHEST -> Said.of("fill.no-highest", "on", on);
            case NO_LOWEST -> Said.of("fill.no-lowest", "on", on);
            case NO_RAIN -> Said.of("fill.no-rain", "on", on);
            case APART -> Said.of("fill.apart", "on", on, "apart", apart);
        };
    }

    private static Said count(List<LocalDate> on) {
        if (on.size() == 1) {
            return Said.of("fill.day", "day", on.get(0));
        }
        return on.size() > DAYS_NAMED
                ? Said.of("fill.days-first", "n", on.size(), "first", on.get(0))
                : Said.of("fill.days", "n", on.size(), "days", on);
    }
}
