// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.io.PrintStream;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.apache.commons.csv.CSVRecord;
import org.earleaf.bench.response.StationYear.Station;

/** Prints what the model gives now beside what it gave when the tables were derived; exit status 1 when one is outside. */
public final class Response {
    private final PrintStream out;
    private final Checks checks = new Checks();

    private Response(PrintStream out) {
        this.out = out;
    }

    public static void main(String[] args) {
        Optional<Path> folder =
                args.length > 0 ? Optional.of(Path.of(args[0])).filter(StationYear::isHere) : StationYear.findFolder();
        if (folder.isEmpty()) {
            System.err.println(
                    "response: the station files are not here. Expected them in ../shared/data/weather beside"
                            + " the project; or give their folder as an argument.");
            System.exit(2);
        }
        System.exit(new Response(System.out).run(folder.get()) ? 0 : 1);
    }

    private boolean run(Path folder) {
        long start = System.nanoTime();
        Map<Station, List<StationYear>> years = StationYear.readAll(folder);
        List<StationYear> all = years.values().stream().flatMap(List::stream).toList();
        ResponseTables response = new ResponseTables(years, checks, out::println);
        PlacementTables placement = new PlacementTables(all, checks, out::println);
        WaterTables water = new WaterTables(all, checks, out::println);
        out.println("Value now (value due). Rates, nitrogen and losses lb/ac, yield bu/ac, water mm.");
        title("Response by soil, crop before and station, means of 30 years");
        response.regression(g -> true);
        title("Mean yield by rate [kg N/ha]");
        response.yields();
        title("Row base less mid-row coulter");
        placement.placement();
        title("Split less all at planting");
        placement.gains();
        placement.split();
        title("June rain");
        response.rain();
        title("Water, silt loam after corn, 180 kg N/ha");
        water.water();
        title("Other values");
        others(response, water);
        return verdict(all.size(), (System.nanoTime() - start) / 1e9);
    }

    private void title(String text) {
        out.println();
        out.println(text);
    }

    private void others(ResponseTables response, WaterTables water) {
        Map<String, Double> values = new LinkedHashMap<>();
        response.putOthers(values);
        water.putOthers(values);
        for (CSVRecord due : Due.table("others.csv")) {
            double value = values.getOrDefault(due.get("what"), Double.NaN);
            double expected = Due.of(due, "value");
            checks.row(due.get("what"));
            checks.add("", value, expected, Due.of(due, "tolerance"), expected < 1 ? 2 : expected < 10 ? 1 : 0);
            out.println(checks.line());
        }
    }

    private boolean verdict(int stationYears, double seconds) {
        List<Checks.Check> outside = checks.outside();
        out.println();
        out.println(outside.isEmpty() ? "All within tolerance." : "Outside tolerance:");
        outside.forEach(c -> out.println("  " + c));
        int total = checks.all().size();
        out.printf(
                Locale.ROOT,
                "{\"bench\":\"response\",\"station_years\":%d,\"checks\":%d,\"within\":%d,\"outside\":%d,\"seconds\":%.1f}%n",
                stationYears,
                total,
                total - outside.size(),
                outside.size(),
                seconds);
        return outside.isEmpty();
    }
}
