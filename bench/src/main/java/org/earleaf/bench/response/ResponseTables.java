// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.DoubleStream;
import org.apache.commons.csv.CSVRecord;
import org.earleaf.bench.response.Plot.Plan;
import org.earleaf.bench.response.StationYear.Station;

/**
 * Response to nitrogen by soil, crop before and station, with the tolerances within which another writing of the same
 * equations should land: ratio .01, best rate 4 lb/ac and its spread 4, yield 1 %, nitrogen 2 %, recovery .02, losses 2
 * lb/ac or 8 %.
 */
public final class ResponseTables {
    private static final double RATE = 4;
    private static final double MM_PER_IN = 25.4;

    private final Map<Station, List<StationYear>> years;
    private final Map<String, Curves> known = new HashMap<>();
    private final Checks checks;
    private final Consumer<String> out;

    public ResponseTables(Map<Station, List<StationYear>> years, Checks checks, Consumer<String> out) {
        this.years = new EnumMap<>(years);
        this.checks = checks;
        this.out = out;
    }

    private Curves curves(Ground ground, Before before, Station station) {
        return known.computeIfAbsent(
                ground + " " + before + " " + station,
                k -> Curves.of(ground, before, years.getOrDefault(station, List.of()), Plan.AT_PLANTING));
    }

    private Curves curves(Ground ground, Before before) {
        return new Curves(years.keySet().stream()
                .flatMap(s -> curves(ground, before, s).all().stream())
                .toList());
    }

    private static double loss(CSVRecord due, String column) {
        return Math.max(2, .08 * Due.of(due, column));
    }

    private void one(CSVRecord due, String column, double value, double tolerance, int digits) {
        checks.add(column, value, Due.of(due, column), tolerance, digits);
    }

    /** Within a share of the value due. */
    private void near(CSVRecord due, String column, double value, double share, int digits) {
        one(due, column, value, share * Due.of(due, column), digits);
    }

    /** One row a soil, crop before and station, of the stations whose years are here. */
    public void regression(Predicate<Ground> grounds) {
        for (CSVRecord due : Due.table("regression.csv")) {
            Ground ground = Ground.of(due.get("soil"));
            Before before = Before.of(due.get("before"));
            Station station = Station.of(due.get("station"));
            if (years.containsKey(station) && grounds.test(ground)) {
                checks.row(ground.word() + ", " + before.word() + ", " + station.word());
                regression(curves(ground, before, station), due);
                out.accept(checks.line());
            }
        }
    }

    private void regression(Curves c, CSVRecord due) {
        double[] best = c.best();
        double[] largest = c.largest();
        double[] lost = c.lostAt240();
        one(due, "zero_ratio", c.zeroRatio(), .01, 2);
        one(due, "best", Numbers.mean(best), RATE, 0);
        one(due, "best_sd", Numbers.sd(best), RATE, 0);
        one(due, "best_low", Numbers.low(best), RATE, 0);
        one(due, "best_high", Numbers.high(best), RATE, 0);
        near(due, "largest", Numbers.mean(largest), .01, 0);
        one(due, "largest_sd", Numbers.sd(largest), .01 * Due.of(due, "largest"), 0);
        near(due, "shoot_zero", c.mean(r -> r.shootN()[0]), .02, 0);
        near(due, "shoot_best", c.mean(RateCurve::shootAtBest), .02, 0);
        one(due, "recovery", c.recovery(), .02, 2);
        near(due, "net_mineralised", c.mean(RateCurve::netMineralised), .02, 0);
        one(due, "lost_median", Numbers.quantile(lost, .5), loss(due, "lost_median"), 0);
        one(due, "lost_p90", Numbers.quantile(lost, .9), loss(due, "lost_p90"), 0);
    }

    void yields() {
        for (CSVRecord due : Due.table("yields.csv")) {
            Curves c = curves(Ground.SILT_LOAM, Before.of(due.get("before")));
            checks.row("silt loam, mean yield, " + due.get("before"));
            for (int k = 0; k < RateCurve.RATES_KGHA.length; k++) {
                int at = k;
                near(due, String.valueOf((int) RateCurve.RATES_KGHA[k]), c.mean(r -> r.yield()[at]), .01, 1);
            }
            out.accept(checks.line());
        }
    }

    /** How the best rate follows June rain. */
    void rain() {
        for (CSVRecord due : Due.table("rain.csv")) {
            Before before = Before.of(due.get("before"));
            Curves c = curves(Ground.SILT_LOAM, before);
            checks.row("silt loam, June rain, " + before.word());
            one(due, "slope", slopeWithinStations(before), .5, 1);
            double[] fifths = Numbers.byGroup(c.each(r -> r.at().rain_mm(6, 6)), c.best(), 5);
            for (int k = 0; k < fifths.length; k++) {
                one(due, "fifth_" + (k + 1), fifths[k], RATE, 0);
            }
            out.accept(checks.line());
        }
    }

    private double slopeWithinStations(Before before) {
        List<Double> x = new ArrayList<>();
        List<Double> y = new ArrayList<>();
        for (Station s : years.keySet()) {
            Curves c = curves(Ground.SILT_LOAM, before, s);
            x.addAll(boxed(Numbers.lessMean(c.each(r -> r.at().rain_mm(6, 6) / MM_PER_IN))));
            y.addAll(boxed(Numbers.lessMean(c.best())));
        }
        return Numbers.slope(unboxed(x), unboxed(y));
    }

    private static List<Double> boxed(double[] x) {
        return DoubleStream.of(x).boxed().collect(Collectors.toList());
    }

    private static double[] unboxed(List<Double> x) {
        return x.stream().mapToDouble(Double::doubleValue).toArray();
    }

    /** Single values by the words of others.csv. */
    void putOthers(Map<String, Double> values) {
        Curves corn = curves(Ground.SILT_LOAM, Before.CORN);
        double[] spring = corn.each(r -> r.at().rain_mm(4, 6));
        double[] june = corn.each(r -> r.at().rain_mm(6, 6));
        values.put("rain of the driest fifth of Junes, mm", Numbers.byGroup(june, june, 5)[0]);
        values.put("rain of the wettest fifth of Junes, mm", Numbers.byGroup(june, june, 5)[4]);
        values.put("corn, best rate, driest fifth by April to June, lb/ac", Numbers.byGroup(spring, corn.best(), 5)[0]);
        values.put(
                "corn, best rate, wettest fifth by April to June, lb/ac", Numbers.byGroup(spring, corn.best(), 5)[4]);
        values.put("corn, lost at 240 kg, driest fifth, lb/ac", Numbers.byGroup(spring, corn.lostAt240(), 5)[0]);
        values.put("corn, lost at 240 kg, wettest fifth, lb/ac", Numbers.byGroup(spring, corn.lostAt240(), 5)[4]);
        for (Station s : years.keySet()) {
            Curves c = curves(Ground.SILT_LOAM, Before.CORN, s);
            double r = Numbers.correlation(c.each(x -> x.at().rain_mm(4, 6)), c.best());
            values.put("corn, correlation of best rate with April to June rain, " + s.word(), r);
        }
        for (Before before : Before.values()) {
            putOthers(values, before.word(), curves(Ground.SILT_LOAM, before));
            for (Ground g : Ground.values()) {
                String what = g.word() + ", " + before.word() + ", years without yield at any rate";
                values.put(what, (double) curves(g, before).bare());
            }
        }
    }

    private static void putOthers(Map<String, Double> values, String crop, Curves c) {
        double[] gained = c.each(r -> r.largest() - r.yield()[0]);
        values.put(crop + ", r2 of best rate on largest yield", square(Numbers.correlation(c.largest(), c.best())));
        values.put(crop + ", r2 of best rate on yield gained", square(Numbers.correlation(gained, c.best())));
        values.put(crop + ", nitrate on 1 June without nitrogen, mg/kg", c.mean(r -> r.juneNitrate()[0]));
        values.put(crop + ", nitrate on 1 June at the best rate, mg/kg", c.mean(RateCurve::juneNitrateAtBest));
        values.put(crop + ", lost at 240 kg, median, lb/ac", Numbers.quantile(c.lostAt240(), .5));
        values.put(crop + ", lost at 240 kg, p90, lb/ac", Numbers.quantile(c.lostAt240(), .9));
        values.put(crop + ", lost at 240 kg, most, lb/ac", Numbers.high(c.lostAt240()));
    }

    private static double square(double r) {
        return r * r;
    }
}
