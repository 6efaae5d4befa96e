// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.exchange.table.CsvText;
import org.earleaf.exchange.table.Findings;
import org.earleaf.exchange.table.Place;
import org.earleaf.exchange.table.Sheet;
import org.earleaf.farm.WeatherBook;
import org.earleaf.units.Flag;
import org.earleaf.units.Said;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherFill;
import org.earleaf.weather.WeatherHour;

/**
 * The weather of a folder as written, holes and all: what a repeated import hands to the store, and what
 * {@link #filled} turns into the farm's weather.
 *
 * @param source what to call the observed weather in remarks
 * @param observed oldest first
 * @param forecast as issued
 * @param rainChance share 0 to 1 of the forecast days that have one, else {@code NaN}
 * @param hours oldest first
 * @param flags what is to be remarked
 */
public record FolderWeather(
        String source,
        List<WeatherDay> observed,
        List<WeatherDay> forecast,
        Map<LocalDate, Double> rainChance,
        List<WeatherHour> hours,
        List<Flag> flags) {
    public FolderWeather {
        observed = List.copyOf(observed);
        forecast = List.copyOf(forecast);
        rainChance = Map.copyOf(rainChance);
        hours = List.copyOf(hours);
        flags = List.copyOf(flags);
    }

    /** @param required whether at least one file of observed weather must be there */
    static FolderWeather read(FolderFiles files, Findings findings, boolean required) {
        DayBook own = new DayBook(findings);
        Optional<Sheet> table = files.find("weather.csv").flatMap(file -> Sheet.open(file, findings));
        table.ifPresent(sheet -> WeatherCsv.read(sheet, own, new HashMap<>()));
        List<Path> stationFiles = files.stations();
        DayBook stations = new DayBook(findings);
        stationFiles.forEach(file -> StationFile.read(file, stations, findings));
        if (required && files.find("weather.csv").isEmpty() && stationFiles.isEmpty()) {
            files.refuseMissing("weather.csv", Said.of("folder.weather-files"));
        }
        if (!own.isEmpty() && !stations.isEmpty()) {
            findings.flag(Place.of("weather.csv"), Said.of("flag.both-weathers"));
        }
        own.addMissing(stations);
        own.checkKnown();
        DayBook forecast = new DayBook(findings);
        Map<LocalDate, Double> chances = new HashMap<>();
        files.optional("forecast.csv")
                .filter(s -> !s.rows().isEmpty())
                .ifPresent(sheet -> WeatherCsv.read(sheet, forecast, chances));
        List<WeatherHour> hours =
                files.optional("hours.csv").map(HoursCsv::read).orElse(List.of());
        forecast.checkKnown();
        String source = source(table.isPresent(), stationFiles);
        return new FolderWeather(source, own.days(), forecast.days(), chances, hours, List.of());
    }

    private static String source(boolean table, List<Path> stations) {
        if (stations.isEmpty()) {
            return "weather.csv";
        }
        return table || stations.size() > 1 ? "weather" : CsvText.name(stations.get(0));
    }

    /** With holes filled and every filling flagged. */
    public WeatherBook filled(Site site) {
        WeatherFill.Filled past = WeatherFill.fill(observed, site, source);
        WeatherFill.Filled ahead = WeatherFill.fill(forecast, site, "forecast.csv");
        List<Double> chances = new ArrayList<>();
        for (WeatherDay day : ahead.series().days()) {
            chances.add(rainChance.getOrDefault(day.date(), Double.NaN));
        }
        List<Flag> all = new ArrayList<>(past.flags());
        all.addAll(ahead.flags());
        return new WeatherBook(past.series(), ahead.series().days(), chances, hours, past.gaps(), all);
    }
}
