// SPDX-License-Identifier: Apache-2.0
package org.earleaf.exchange;

import java.util.stream.Stream;

/** Faults in weather, forecast, hours and station files. */
final class WeatherFaults {
    private static final String STATION = "20120101\t  33\t -56\t  56\n20120102\t -61\t-122\t   0\n";

    private WeatherFaults() {}

    static Stream<Fault> weather() {
        String f = "weather.csv";
        return Stream.of(
                Fault.of("no weather", t -> t.without(f), f, "folder.file-missing", "folder.weather-files"),
                Fault.of("header alone", t -> t.with(f, "date,tmax_f,tmin_f,rain_in\n"), f + ", row 1", "file.no-rows"),
                Fault.of(
                        "lowest above highest",
                        t -> t.with(f, "date,tmax_f,tmin_f,rain_in\n2012-05-01,60,70,0\n"),
                        f + ", row 2, column tmin_f",
                        "weather.temperatures-turned",
                        "\"70\""),
                Fault.of(
                                "Fahrenheit in a Celsius column",
                                t -> t.with(
                                        f, t.text(f).replace("tmax_f", "tmax_c").replace("tmin_f", "tmin_c")),
                                f + ", row 115, column tmax_c",
                                "weather.not-celsius",
                                "found.values-over",
                                "tmax_f")
                        .problems(2),
                Fault.of(
                                "Celsius in a Fahrenheit column",
                                t -> t.with(
                                        f,
                                        TinyFolder.metric()
                                                .text(f)
                                                .replace("tmax_c", "tmax_f")
                                                .replace("tmin_c", "tmin_f")),
                                f + ", row 2, column tmax_f",
                                "weather.other-unit",
                                "tmax_c")
                        .problems(2),
                Fault.of(
                        "millimetres in an inch column",
                        t -> t.with(f, TinyFolder.metric().text(f).replace("rain_mm", "rain_in")),
                        f + ", row 2, column rain_in",
                        "weather.rain-other-unit",
                        "found.rain-a-day"),
                Fault.of(
                        "a day twice with other rain",
                        t -> t.with(f, "date,tmax_c,tmin_c,rain_mm\n2012-05-01,20,10,0\n2012-05-01,20,10,4\n"),
                        f + ", row 3, column date",
                        "weather.day-twice",
                        "row=2"),
                Fault.of(
                        "no highest temperature at all",
                        t -> t.with(f, "date,tmax_c,tmin_c,rain_mm\n2012-05-01,,10,0\n"),
                        f + ", column tmax",
                        "weather.column-empty"),
                Fault.of(
                        "negative rain",
                        t -> t.with(f, "date,tmax_c,tmin_c,rain_mm\n2012-05-01,20,10,-3\n"),
                        f + ", row 2, column rain_mm",
                        "found -3",
                        "0 to 10000 mm"),
                Fault.of(
                        "a trace of rain",
                        t -> t.with(f, "date,tmax_c,tmin_c,rain_mm\n2012-05-01,20,10,T\n"),
                        f + ", row 2, column rain_mm",
                        "\"T\"",
                        "number.unreadable"),
                Fault.of("no rain", f, "rain_in", "wet", f + ", row 1, column rain", "rain_in"),
                Fault.of(
                        "unknown unit of wind",
                        f,
                        "wind_mph",
                        "wind_psi",
                        f + ", row 1, column wind_psi",
                        "column.unit",
                        "wind_m_s, wind_km_h, wind_mph"),
                Fault.of(
                                "more than all air is water",
                                f,
                                ",90,50,",
                                ",150,50,",
                                f + ", row 2, column rh_max_pct",
                                "150")
                        .problems(6),
                Fault.of(
                        "date of a station",
                        f,
                        "2012-01-02",
                        "20120102",
                        f + ", row 3, column date",
                        "date.unreadable"),
                Fault.of(
                        "more than certain rain",
                        "forecast.csv",
                        "0.1,40",
                        "0.1,140",
                        "forecast.csv, row 2, column rain_chance_pct",
                        "140",
                        "0 to 100"),
                Fault.of("an empty forecast", t -> t.with("forecast.csv", ""), "forecast.csv", "file.empty"),
                Fault.of(
                                "Fahrenheit in a forecast",
                                t -> t.with("forecast.csv", "date,tmax_c,tmin_c,rain_mm\n2012-07-01,88,66,0\n"),
                                "forecast.csv, row 2, column tmax_c",
                                "weather.not-celsius",
                                "found.values-over")
                        .problems(2),
                Fault.of(
                        "an hour that is none",
                        "hours.csv",
                        "06:00",
                        "6 am",
                        "hours.csv, row 2, column time",
                        "hour.unreadable"),
                Fault.of(
                        "wind from nowhere",
                        "hours.csv",
                        ",180,",
                        ",400,",
                        "hours.csv, row 2, column wind_from_deg",
                        "0 to 360"));
    }

    private static Fault station(String name, String from, String to, String where, String... parts) {
        return Fault.of(
                name,
                t -> t.without("weather.csv").with("weather/X.txt", STATION.replace(from, to)),
                "weather/X.txt" + where,
                parts);
    }

    static Stream<Fault> station() {
        return Stream.of(
                station("a column less", "\t   0", "", ", row 2", "station.cells", "found.cells"),
                station("no such day", "20120102", "20120142", ", row 2, column 1 (date)", "station.date"),
                station("text for a temperature", " -61", "cold", ", row 2, column 2 (highest)", "\"cold\""),
                station("degrees with a point", "-122", "-12.2", ", row 2, column 3 (lowest)", "station.number"),
                station("negative rain", "  56", "  -1", ", row 1, column 4 (rain)", "station.rain-below-zero"),
                station("a day twice", "20120102", "20120101", ", row 2, column 1 (date)", "weather.day-twice"),
                station("nothing", STATION, "", "", "station.empty"));
    }
}
