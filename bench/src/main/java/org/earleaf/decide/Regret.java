// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.field.PreviousCrop;
import org.earleaf.field.Reading;
import org.earleaf.season.Event;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.ZoneSeason;
import org.earleaf.units.SideBySide;
import org.earleaf.units.Units;

/**
 * Dollars an acre that each way of choosing leaves on the table against knowing the season. The advice is followed as a
 * grower would: asked every week with the weather and the passes since, until it has nothing more to say. "First only"
 * makes the pass first proposed and never asks again.
 */
final class Regret {
    private static final String[] RULES = {"advice", "first_only", "fixed", "soil_test", "published"};
    private static final double CRITICAL_PPM = 25;
    private static final int WEEK_D = 7;
    private static final int LAST_ASKED_D = 35;
    private static final double[] RATES_LBAC = {20, 30, 40, 50, 60, 70, 80, 90, 100, 110, 120, 135, 150, 165, 180};
    private static final double[] PART_LBAC = {30, 60, 90, 120};

    private Regret() {}

    /** One pass of a course of passes. */
    record Made(LocalDate date, Placement placement, double nitrogen_kgHa) {
        Event.Nitrogen event() {
            NitrogenProduct uan = NitrogenProduct.findBuiltIn("UAN 32").orElseThrow();
            NitrogenPass pass = ZoneSeason.pass(uan, nitrogen_kgHa, placement, Inhibitor.NONE);
            return new Event.Nitrogen(date, pass);
        }

        double cost_usdAc() {
            return Units.lbAc(nitrogen_kgHa) * Twin.NITROGEN_USD_LB
                    + Twin.PASS_USD_AC
                    + (placement == Placement.MID_INJECT ? 2 : 0);
        }
    }

    /** Gains of the oracle, of each rule, and the passes that the advice made [$/ac]. */
    static double[] of(Twin twin) {
        List<Reading> readings = twin.readings(true, true, true);
        List<Made> first = new ArrayList<>();
        List<Made> advised = followed(twin, readings, first);
        List<List<Made>> courses = new ArrayList<>(List.of(List.of(), advised, first));
        boolean corn = twin.before() == PreviousCrop.CORN;
        double starter = Units.lbAc(twin.starter_kgHa());
        courses.add(byRule(twin, (corn ? 180 : 150) - starter));
        courses.add(
                byRule(twin, Units.lbAc(SoilTestRule.rate_kgHa(readings.get(0).value(), CRITICAL_PPM))));
        courses.add(byRule(twin, (corn ? 187 : 145) - starter));
        courses.addAll(known(twin));
        double[] yields = twin.yields_kgHa(courses);
        double best = 0;
        double[] gains = new double[RULES.length + 2];
        for (int k = 1; k < yields.length; k++) {
            double gain = Units.buAc(yields[k] - yields[0]) * Twin.CORN_USD
                    - courses.get(k).stream().mapToDouble(Made::cost_usdAc).sum();
            best = Math.max(best, gain);
            if (k <= RULES.length) {
                gains[k] = gain;
            }
        }
        gains[0] = best;
        gains[RULES.length + 1] = advised.size();
        return gains;
    }

    /** What comes of asking every week and doing as told. */
    private static List<Made> followed(Twin twin, List<Reading> readings, List<Made> first) {
        List<Made> made = new ArrayList<>();
        LocalDate date = twin.on();
        while (!date.isAfter(twin.on().plusDays(LAST_ASKED_D))) {
            NitrogenOptions.Answer answer =
                    NitrogenOptions.of(twin.farm(readings, made, date), twin.zone(), date, false, SideBySide.IN_TURN);
            if (answer.options().isEmpty()) {
                break;
            }
            Optional<Made> go = answer.proposed().map(o -> new Made(o.date(), o.placement(), o.nitrogen_kgHa()));
            if (date.equals(twin.on())) {
                go.ifPresent(first::add);
            }
            LocalDate today = date;
            go.filter(m -> m.date().equals(today)).ifPresent(made::add);
            LocalDate week = date.plusDays(WEEK_D);
            date = go.map(Made::date)
                    .filter(d -> d.isAfter(today) && d.isBefore(week))
                    .orElse(week);
        }
        return made;
    }

    /** At the row base on the day itself. */
    private static List<Made> byRule(Twin twin, double lbAc) {
        return lbAc < 10
                ? List.of()
                : List.of(new Made(twin.on(), Placement.ROW_BASE, Units.kgHa(Math.min(lbAc, 250))));
    }

    /** What somebody who knows the season chooses from: one pass, or two a week or more apart. */
    private static List<List<Made>> known(Twin twin) {
        List<List<Made>> all = new ArrayList<>();
        for (Placement p : List.of(Placement.ROW_BASE, Placement.MID_INJECT)) {
            for (int d = 0; d <= 20; d += 2) {
                for (double rate : RATES_LBAC) {
                    all.add(List.of(new Made(twin.on().plusDays(d), p, Units.kgHa(rate))));
                }
            }
        }
        for (int d = 0; d <= 8; d += 4) {
            for (int later = 8; later <= 24; later += 8) {
                for (double a : PART_LBAC) {
                    for (double b : PART_LBAC) {
                        Made one = new Made(twin.on().plusDays(d), Placement.ROW_BASE, Units.kgHa(a));
                        Made two = new Made(twin.on().plusDays(d + later), Placement.ROW_BASE, Units.kgHa(b));
                        all.add(List.of(one, two));
                    }
                }
            }
        }
        return all.stream()
                .filter(course -> course.stream().allMatch(m -> twin.mayEnter(m.date(), m.placement())))
                .toList();
    }

    static String report(List<double[]> gains) {
        System.out.printf("%nMean gain and regret against knowing the season, %d twins, $/ac%n", gains.size());
        double oracle = mean(gains, 0);
        System.out.printf(Locale.ROOT, "%-12s %8.2f%n", "oracle", oracle);
        StringBuilder json = new StringBuilder("\"regret_usd_ac\":{");
        for (int r = 0; r < RULES.length; r++) {
            int k = r + 1;
            double mean = mean(gains, k);
            double se = Math.sqrt(gains.stream()
                            .mapToDouble(g -> Math.pow(g[0] - g[k] - (oracle - mean), 2))
                            .average()
                            .orElse(0)
                    / gains.size());
            System.out.printf(
                    Locale.ROOT,
                    "%-12s %8.2f   regret %6.2f (standard error %.2f)%n",
                    RULES[r],
                    mean,
                    oracle - mean,
                    se);
            json.append(String.format(Locale.ROOT, "%s\"%s\":%.3f", r > 0 ? "," : "", RULES[r], oracle - mean));
        }
        double passes = mean(gains, RULES.length + 1);
        System.out.printf(Locale.ROOT, "passes that the advice made: %.2f a field%n", passes);
        return json.append(String.format(Locale.ROOT, "},\"passes_advised\":%.3f,\"advised\":%d", passes, gains.size()))
                .toString();
    }

    private static double mean(List<double[]> gains, int k) {
        return gains.stream().mapToDouble(g -> g[k]).average().orElse(Double.NaN);
    }
}
