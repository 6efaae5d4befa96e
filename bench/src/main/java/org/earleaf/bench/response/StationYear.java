// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.earleaf.exchange.StationFile;
import org.earleaf.weather.Forcing;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherFill;
import org.earleaf.weather.WeatherSeries;

/**
 * One year of one station, days 60 to 273.
 *
 * @param before_C mean air temperature of the 30 days before
 */
public record StationYear(Station station, int year, WeatherSeries days, Forcing forcing, double before_C) {
    static final int FIRST_DOY = 60;
    static final int LAST_DOY = 273;
    private static final int FIRST_YEAR = 1985;
    private static final int LAST_YEAR = 2014;

    /** Stations of the Global Historical Climatology Network Daily; places from memory, 0.05 degrees either way. */
    public enum Station {
        URBANA("Urbana", "USC00118740.txt", new Site(40.08, -88.24, 220)),
        CLINTON("Clinton", "USC00131635.txt", new Site(41.79, -90.26, 180)),
        FINDLAY("Findlay", "USC00332791.txt", new Site(41.05, -83.66, 235));

        private final String word;
        private final String file;
        private final Site site;

        Station(String word, String file, Site site) {
            this.word = word;
            this.file = file;
            this.site = site;
        }

        static Station of(String word) {
            return java.util.Arrays.stream(values())
                    .filter(v -> v.word.equals(word))
                    .findFirst()
                    .orElseThrow();
        }

        public String word() {
            return word;
        }
    }

    /** The folder of station files beside the project, looked for from the working folder upwards. */
    public static Optional<Path> findFolder() {
        Path at = Path.of("").toAbsolutePath();
        while (at != null && !Files.exists(at.resolve("earleaf"))) {
            at = at.getParent();
        }
        if (at == null) {
            return Optional.empty();
        }
        Path folder = at.resolve("../shared/data/weather").normalize();
        return Optional.of(folder).filter(StationYear::isHere);
    }

    static boolean isHere(Path folder) {
        return java.util.Arrays.stream(Station.values()).allMatch(s -> Files.exists(folder.resolve(s.file)));
    }

    /** All years of all stations. */
    public static Map<Station, List<StationYear>> readAll(Path folder) {
        Map<Station, List<StationYear>> years = new EnumMap<>(Station.class);
        for (Station station : Station.values()) {
            years.put(station, read(folder, station));
        }
        return years;
    }

    /** All years of a station, gaps filled by the rules of {@link WeatherFill}. */
    public static List<StationYear> read(Path folder, Station station) {
        Path file = folder.resolve(station.file);
        WeatherSeries all = WeatherFill.fill(StationFile.read(file), station.site, station.file)
                .series();
        List<StationYear> years = new ArrayList<>();
        for (int year = FIRST_YEAR; year <= LAST_YEAR; year++) {
            LocalDate first = LocalDate.ofYearDay(year, FIRST_DOY);
            WeatherSeries days = all.between(first, LocalDate.ofYearDay(year, LAST_DOY));
            double before = all.between(first.minusDays(30), first.minusDays(1)).days().stream()
                    .mapToDouble(WeatherDay::tmean_C)
                    .average()
                    .orElseThrow();
            years.add(new StationYear(station, year, days, Forcing.of(days, station.site), before));
        }
        return years;
    }

    /** Month of a day, by its number in a year that is not a leap year, as the reference run counts. */
    static int month(LocalDate date) {
        return LocalDate.ofYearDay(2001, Math.min(365, date.getDayOfYear())).getMonthValue();
    }

    /** Rain from the first of one month to the last of another [mm]. */
    double rain_mm(int fromMonth, int toMonth) {
        return days.days().stream()
                .filter(d -> month(d.date()) >= fromMonth && month(d.date()) <= toMonth)
                .mapToDouble(WeatherDay::rain_mm)
                .sum();
    }

    LocalDate date(int doy) {
        return LocalDate.ofYearDay(year, doy);
    }
}
