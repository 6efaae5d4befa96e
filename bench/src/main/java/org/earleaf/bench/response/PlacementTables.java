// SPDX-License-Identifier: Apache-2.0
package org.earleaf.bench.response;

import java.time.LocalDate;
import java.util.List;
import java.util.function.Consumer;
import org.apache.commons.csv.CSVRecord;
import org.earleaf.bench.response.Plot.Plan;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Units;

/** Where the sidedress goes: means within .5 bu/ac, as the reference run asks; percentiles within 1, shares within 5 points. */
public final class PlacementTables {
    private final List<StationYear> years;
    private final Checks checks;
    private final Consumer<String> out;

    public PlacementTables(List<StationYear> years, Checks checks, Consumer<String> out) {
        this.years = List.copyOf(years);
        this.checks = checks;
        this.out = out;
    }

    /** Yield of one plan less that of another in every station-year [bu/ac]. */
    public double[] gain(Ground ground, Before before, double total_kgHa, Plan plan, Plan less) {
        return years.stream()
                .mapToDouble(y ->
                        bushels(ground, before, total_kgHa, plan, y) - bushels(ground, before, total_kgHa, less, y))
                .toArray();
    }

    private static double bushels(Ground ground, Before before, double total_kgHa, Plan plan, StationYear at) {
        SeasonRun run = Plot.start(ground, before, at, 1);
        LocalDate sidedress = Plot.sidedress(at);
        double[] rates = {total_kgHa};
        while (run.day() < at.days().days().size()) {
            Plot.give(run, at, plan, rates, sidedress);
            run.step();
        }
        return Units.buAc(run.yield(0).grain_kgHa());
    }

    /** Rain of June and July in every station-year [mm]. */
    public double[] summerRain_mm() {
        return years.stream().mapToDouble(y -> y.rain_mm(6, 7)).toArray();
    }

    private void one(CSVRecord due, String column, double value, double tolerance, int digits) {
        checks.add(column, value, Due.of(due, column), tolerance, digits);
    }

    void placement() {
        for (CSVRecord due : Due.table("placement.csv")) {
            Ground ground = Ground.of(due.get("soil"));
            Before before = Before.of(due.get("before"));
            double total = Due.of(due, "total_kg_ha");
            double[] gain = gain(ground, before, total, Plan.THEN_ROW_BASE, Plan.THEN_MID_INJECT);
            checks.row(ground.word() + ", " + before.word() + ", " + (int) total + " kg");
            one(due, "mean", Numbers.mean(gain), .5, 1);
            one(due, "sd", Numbers.sd(gain), .5, 1);
            one(due, "p5", Numbers.quantile(gain, .05), 1, 1);
            one(due, "median", Numbers.quantile(gain, .5), 1, 1);
            one(due, "p95", Numbers.quantile(gain, .95), 1, 1);
            double below = java.util.Arrays.stream(gain).filter(g -> g < 0).count();
            one(due, "below_0_pct", 100 * below / gain.length, 5, 0);
            double[] thirds = Numbers.byGroup(summerRain_mm(), gain, 3);
            one(due, "dry", thirds[0], .5, 1);
            one(due, "middle", thirds[1], .5, 1);
            one(due, "wet", thirds[2], .5, 1);
            out.accept(checks.line());
        }
    }

    void gains() {
        for (CSVRecord due : Due.table("gain.csv")) {
            Plan plan = Plan.valueOf(due.get("plan"));
            Plan less = Plan.valueOf(due.get("less"));
            double[] gain = gain(Ground.SILT_LOAM, Before.CORN, 160, plan, less);
            checks.row("160 kg, " + plan.word() + " less " + less.word());
            one(due, "mean", Numbers.mean(gain), .5, 1);
            one(due, "sd", Numbers.sd(gain), .5, 1);
            out.accept(checks.line());
        }
    }

    void split() {
        for (CSVRecord due : Due.table("split.csv")) {
            Before before = Before.of(due.get("before"));
            Plan plan = Plan.valueOf(due.get("plan"));
            Curves c = Curves.of(Ground.SILT_LOAM, before, years, plan);
            checks.row("silt loam, " + before.word() + ", " + plan.word());
            one(due, "best", Numbers.mean(c.best()), 4, 0);
            one(due, "best_sd", Numbers.sd(c.best()), 4, 0);
            one(due, "largest", Numbers.mean(c.largest()), .01 * Due.of(due, "largest"), 0);
            one(due, "recovery", c.recovery(), .02, 2);
            one(due, "lost_median", Numbers.quantile(c.lostAt240(), .5), loss(due, "lost_median"), 0);
            one(due, "lost_p90", Numbers.quantile(c.lostAt240(), .9), loss(due, "lost_p90"), 0);
            out.accept(checks.line());
        }
    }

    private static double loss(CSVRecord due, String column) {
        return Math.max(2, .08 * Due.of(due, column));
    }
}
