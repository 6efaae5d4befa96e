// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVRecord;
import org.earleaf.bench.response.Plot.Plan;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace.Daily;

/**
 * Where the water goes month by month under 180 kg N/ha. No port tolerance was given for it: 3 mm or 5 %, ratios .02,
 * leached .3 kg/ha.
 */
final class WaterTables {
    private static final double RATE_KGHA = 180;
    private static final int FIRST_MONTH = 3;
    private static final int MONTHS = 7;
    private static final int ALL = MONTHS;

    private final List<StationYear> years;
    private final Checks checks;
    private final Consumer<String> out;

    WaterTables(List<StationYear> years, Checks checks, Consumer<String> out) {
        this.years = List.copyOf(years);
        this.checks = checks;
        this.out = out;
    }

    /** Means over the station-years by item and month, the last the sum of all. */
    private Map<String, double[]> means(Ground ground, Before before) {
        Map<String, double[]> sums = new LinkedHashMap<>();
        for (StationYear at : years) {
            SeasonRun run = Plot.start(ground, before, at, 1);
            double[] rates = {RATE_KGHA};
            while (run.day() < at.days().days().size()) {
                Plot.give(run, at, Plan.AT_PLANTING, rates, run.date());
                day(run, StationYear.month(run.date()) - FIRST_MONTH, sums);
            }
        }
        sums.values().forEach(s -> {
            for (int k = 0; k < MONTHS; k++) {
                s[k] /= years.size();
                s[ALL] += s[k];
            }
        });
        return sums;
    }

    private static void day(SeasonRun run, int month, Map<String, double[]> sums) {
        Map<String, Daily> items = Map.of(
                "transpiration", Daily.TRANSPIRATION,
                "soil evaporation", Daily.EVAPORATION,
                "wet leaves", Daily.INTERCEPTION,
                "runoff", Daily.RUNOFF,
                "deep drainage", Daily.DRAINAGE,
                "leached", Daily.LEACHED);
        Map<String, Double> before = new LinkedHashMap<>();
        items.forEach((name, line) -> before.put(name, run.now(0, line)));
        double water = run.water_mm(0);
        run.step();
        double out = 0;
        for (Map.Entry<String, Daily> item : items.entrySet()) {
            double today = run.now(0, item.getValue()) - before.getOrDefault(item.getKey(), 0.0);
            put(sums, item.getKey(), month, today);
            out += item.getValue() == Daily.LEACHED ? 0 : today;
        }
        // What came in, rain or dew, is what went out and what the soil gained.
        put(sums, "rain and dew", month, run.water_mm(0) - water + out);
        put(sums, "ET0", month, run.now(0, Daily.ET0));
    }

    private static void put(Map<String, double[]> sums, String name, int month, double value) {
        sums.computeIfAbsent(name, k -> new double[MONTHS + 1])[month] += value;
    }

    void water() {
        Map<String, double[]> means = means(Ground.SILT_LOAM, Before.CORN);
        for (CSVRecord due : Due.table("water.csv")) {
            String item = due.get("item");
            boolean ratio = item.equals("evaporation / ET0");
            boolean leached = item.equals("leached");
            checks.row(item);
            for (int k = 0; k <= ALL; k++) {
                String month = due.getParser().getHeaderNames().get(k + 1);
                double value =
                        ratio ? value(means, "soil evaporation", k) / value(means, "ET0", k) : value(means, item, k);
                double tolerance = ratio ? .02 : leached ? .3 : Math.max(3, .05 * Due.of(due, month));
                checks.add(month, value, Due.of(due, month), tolerance, ratio ? 2 : leached ? 1 : 0);
            }
            out.accept(checks.line());
        }
    }

    private static double value(Map<String, double[]> means, String item, int k) {
        return means.getOrDefault(item, new double[MONTHS + 1])[k];
    }

    /** Single values by the words of others.csv. */
    void putOthers(Map<String, Double> values) {
        Map<String, double[]> soybean = means(Ground.SILT_LOAM, Before.SOYBEAN);
        values.put("soybean, soil evaporation, mm", value(soybean, "soil evaporation", ALL));
        values.put("soybean, deep drainage, mm", value(soybean, "deep drainage", ALL));
        double spring = value(soybean, "soil evaporation", 0) + value(soybean, "soil evaporation", 1);
        double et0 = value(soybean, "ET0", 0) + value(soybean, "ET0", 1);
        values.put("soybean, evaporation / ET0, March and April", spring / et0);
        double may = value(soybean, "soil evaporation", 2) / value(soybean, "ET0", 2);
        values.put("soybean, evaporation / ET0, May", may);
        for (Ground g : List.of(Ground.SILTY_CLAY_LOAM, Ground.LOAM, Ground.SANDY_LOAM)) {
            double drained = value(means(g, Before.CORN), "deep drainage", ALL);
            values.put(g.word() + ", corn, deep drainage, mm", drained);
        }
    }
}
