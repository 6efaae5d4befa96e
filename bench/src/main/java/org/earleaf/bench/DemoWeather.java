// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.Month;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import org.earleaf.units.Units;
import org.earleaf.weather.MonthlyClimate;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherGenerator;
import org.earleaf.weather.WeatherSeries;

/**
 * Invents the demo farm's weather.csv, forecast.csv and hours.csv from the monthly means of its climate.csv. No day of it was ever
 * measured.
 */
public final class DemoWeather {
    private static final Site SITE = new Site(41.0, -93.0, 274);
    private static final LocalDate FIRST = LocalDate.of(2006, 1, 1);
    private static final LocalDate LAST = LocalDate.of(2026, 7, 15);
    /** The demo's day; the forecast is of the days after it. */
    static final LocalDate TODAY = LocalDate.of(2026, 6, 30);
    /** Picked among some ten thousand: rain to fill June, ten dry days to the demo's day, then a little in the forecast. */
    private static final long SEED = 8198;

    private DemoWeather() {}

    /** Writes the files into the folder given, or into demo-farm. */
    public static void main(String[] args) throws IOException {
        Path folder = Path.of(args.length > 0 ? args[0] : "demo-farm");
        WeatherSeries days = days(Files.readAllLines(folder.resolve("climate.csv")));
        Files.writeString(folder.resolve("weather.csv"), weatherCsv(days));
        Files.writeString(folder.resolve("forecast.csv"), forecastCsv(days));
        Files.writeString(folder.resolve("hours.csv"), DemoHours.csv(days));
    }

    static WeatherSeries days(List<String> climate) {
        return days(climate, SEED);
    }

    static WeatherSeries days(List<String> climate, long seed) {
        List<MonthlyClimate> months = new ArrayList<>();
        for (String line : climate) {
            if (!line.startsWith("#") && !line.startsWith("month")) {
                String[] cell = line.split(",");
                months.add(new MonthlyClimate(
                        Month.of(Integer.parseInt(cell[0])),
                        Double.parseDouble(cell[1]),
                        Double.parseDouble(cell[2]),
                        Double.parseDouble(cell[3]),
                        Double.parseDouble(cell[4])));
            }
        }
        return WeatherGenerator.ofClimate(months, SITE).generate(FIRST, LAST, new SplittableRandom(seed));
    }

    static String weatherCsv(WeatherSeries days) {
        StringBuilder csv = new StringBuilder("date,tmax_f,tmin_f,rain_in\n");
        for (WeatherDay d : days.days()) {
            csv.append(String.format(
                    Locale.ROOT,
                    "%s,%.1f,%.1f,%.2f\n",
                    d.date(),
                    Units.fahrenheit(d.tmax_C()),
                    Units.fahrenheit(d.tmin_C()),
                    Units.inches(d.rain_mm())));
        }
        return csv.toString();
    }

    /**
     * What an office might have issued: the temperatures miss by 1.0 + 0.3 °C a day ahead, the chance of rain leans less
     * and less to what will be; own construct.
     */
    static String forecastCsv(WeatherSeries days) {
        SplittableRandom random = new SplittableRandom(SEED);
        StringBuilder csv = new StringBuilder("date,tmax_f,tmin_f,rain_in,rain_chance_pct\n");
        for (int ahead = 1; ahead <= 7; ahead++) {
            WeatherDay d = days.at(TODAY.plusDays(ahead));
            double miss_C = (1.0 + 0.3 * ahead) * (2 * random.nextDouble() - 1);
            boolean rain = d.rain_mm() > 0;
            long chance = rain ? 85 - 5 * ahead : 5 + 5 * (ahead / 2);
            double tenths_in = Math.rint(Units.inches(d.rain_mm()) * (0.7 + 0.6 * random.nextDouble()) * 10);
            csv.append(String.format(
                    Locale.ROOT,
                    "%s,%d,%d,%.1f,%d\n",
                    d.date(),
                    Math.round(Units.fahrenheit(d.tmax_C() + miss_C)),
                    Math.round(Units.fahrenheit(d.tmin_C() + miss_C)),
                    tenths_in / 10,
                    chance));
        }
        return csv.toString();
    }
}
