// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.trials;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.earleaf.soil.Horizon;
import org.earleaf.soil.SoilProfile;
import org.earleaf.weather.Site;
import org.earleaf.weather.WeatherDay;
import org.earleaf.weather.WeatherSeries;

/** A research farm: where it lies, its soil and its weather. */
record TrialFarm(String name, Site site, SoilProfile soil, WeatherSeries weather) {
    /** Not told for these farms; Iowa lies some 300 m high, and 100 m either way move the air pressure by 1 %. */
    private static final double ELEVATION_M = 300;
    /** Not told either; cation exchange of clay and organic matter as survey rows without it are read. */
    private static final double PH = 6.5;

    static List<TrialFarm> readAll(Path folder) {
        return Rows.read(folder, "iowa-sites.tsv").stream()
                .map(row -> read(folder, row))
                .toList();
    }

    private static TrialFarm read(Path folder, Rows row) {
        String name = row.text("site");
        Site site = new Site(row.number("latitude"), row.number("longitude"), ELEVATION_M);
        List<Horizon> horizons = Rows.read(folder, "iowa-soils.tsv").stream()
                .filter(each -> each.text("site").equals(name))
                .map(TrialFarm::horizon)
                .toList();
        SoilProfile soil = SoilProfile.of(horizons, name, new ArrayList<>());
        return new TrialFarm(name, site, soil, weather(folder, "iowa-weather-" + name + ".tsv"));
    }

    private static Horizon horizon(Rows each) {
        Earth earth = new Earth(
                each.number("sand_pct"),
                each.number("clay_pct"),
                each.number("organic_matter_pct"),
                each.number("bulk_density_g_cm3"));
        return earth.between(10 * each.number("top_cm"), 10 * each.number("bottom_cm"));
    }

    /** What a horizon consists of. */
    record Earth(double sand_pct, double clay_pct, double organic_pct, double density_gcm3) {
        Horizon between(double top_mm, double bottom_mm) {
            double unknown = Double.NaN;
            double exchange = .5 * clay_pct + 2 * organic_pct;
            Horizon.Measured measured = new Horizon.Measured(density_gcm3, unknown, unknown);
            return new Horizon(top_mm, bottom_mm, sand_pct, clay_pct, organic_pct, PH, exchange, measured);
        }
    }

    static WeatherSeries weather(Path folder, String file) {
        List<WeatherDay> days = new ArrayList<>();
        for (Rows row : Rows.read(folder, file)) {
            double unknown = Double.NaN;
            days.add(new WeatherDay(
                    row.day("date"),
                    row.number("tmax_c"),
                    row.number("tmin_c"),
                    row.number("rain_mm"),
                    row.number("solar_mj_m2"),
                    unknown,
                    unknown,
                    unknown,
                    unknown));
        }
        return new WeatherSeries(days);
    }

    /**
     * Weather up to a day as a grower would have it on record. Years that came later stand before the first on record,
     * so that there are as many to look back on everywhere: what is to come of the year itself is not in it.
     */
    WeatherSeries known(LocalDate through) {
        int year = through.getYear();
        int span = weather.last().getYear() - weather.first().getYear() + 1;
        List<WeatherDay> days = new ArrayList<>();
        for (int other = year + 1; other <= weather.last().getYear(); other++) {
            days.addAll(as(other, other - span));
        }
        days.addAll(weather.between(weather.first(), through).days());
        return new WeatherSeries(days);
    }

    /** The days of a year as if they were another's. */
    private List<WeatherDay> as(int other, int year) {
        List<WeatherDay> days = new ArrayList<>();
        for (LocalDate day = LocalDate.of(year, 1, 1); day.getYear() == year; day = day.plusDays(1)) {
            boolean leap = day.getMonthValue() == 2 && day.getDayOfMonth() == 29;
            LocalDate same = LocalDate.of(other, day.getMonth(), leap ? 28 : day.getDayOfMonth());
            days.add(weather.at(same).on(day));
        }
        return days;
    }
}
