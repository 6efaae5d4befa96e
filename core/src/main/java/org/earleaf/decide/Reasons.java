// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.field.Placement;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.units.Units;

/** The reasons behind an option, as facts that say themselves. */
final class Reasons {
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final int TOP_FOOT = 3;
    private static final int NEXT_WEEK = 7;

    private Reasons() {}

    /** When nitrogen runs short. */
    record ShortOfNitrogen(DateSpread when, LocalDate on) implements Reason {
        @Override
        public String sentence() {
            if (when.probability() == 0) {
                return "Not short of nitrogen in any future.";
            }
            String tenths = tenths(when.probability());
            if (when.p50().isPresent() && !when.p50().get().isAfter(on)) {
                return "Short of nitrogen already: growth is held back.";
            }
            if (when.p50().isEmpty()) {
                String from = when.p10()
                        .map(d -> ", from " + d.format(DAY) + " at the earliest")
                        .orElse("");
                return "Short of nitrogen in " + tenths + " futures" + from + ".";
            }
            String early = when.p10().orElseThrow().format(DAY);
            String late = when.p90().map(d -> d.format(DAY)).orElse("never");
            String spread = early.equals(late) ? "" : " (" + early + " to " + late + ")";
            return "Short of nitrogen about " + when.p50().get().format(DAY) + spread + ".";
        }
    }

    /** Nitrate of the top foot at the row and between rows, and how dry it lies [kg/ha of field]. */
    record WhereItLies(double row_kgHa, double middle_kgHa, double middleWetness) implements Reason {
        @Override
        public String sentence() {
            String dry = middleWetness < .35 ? ", and it lies dry" : "";
            return "The top foot holds " + lb(row_kgHa + middle_kgHa) + " lb of nitrate nitrogen, " + lb(middle_kgHa)
                    + " of it between the rows" + dry + ".";
        }
    }

    /** Rain expected in the week after the pass [mm], over the futures. */
    record RainToCome(Spread rain_mm, Placement placement) implements Reason {
        @Override
        public String sentence() {
            String amount = inches(rain_mm.p50()) + " in (" + inches(rain_mm.p10()) + " to " + inches(rain_mm.p90())
                    + ") of rain are likely in the week after";
            return switch (placement) {
                case ROW_BASE -> "At the row base light rain runs down the stems to it; " + amount + ".";
                case MID_INJECT, ROW_INJECT -> "Laid below the surface, it is safe from the air; " + amount + ".";
                default -> "It needs rain to reach the roots; " + amount + ".";
            };
        }
    }

    /** Last day that the rig fits. */
    record FitsUntil(String rig, LocalDate lastDay) implements Reason {
        @Override
        public String sentence() {
            return "The " + rig + " fits until " + lastDay.format(DAY) + ".";
        }
    }

    /** Losses so far this season [kg/ha]. */
    record LostSoFar(double leached_kgHa, double gas_kgHa) implements Reason {
        @Override
        public String sentence() {
            return "Lost since the start: " + lb(leached_kgHa) + " lb leached, " + lb(gas_kgHa) + " lb as gas.";
        }
    }

    /** What may follow, by the rain until then. */
    record LookAgain(FollowUp then) implements Reason {
        @Override
        public String sentence() {
            List<String> steps = new ArrayList<>();
            for (FollowUp.Step s : then.steps()) {
                String what = s.nitrogen_kgHa() > 0 ? lb(s.nitrogen_kgHa()) + " lb more" : "nothing more";
                steps.add(what + rain(s));
            }
            return "Look again about " + then.date().format(DAY) + ": " + String.join(", ", steps) + " ("
                    + then.placement().word() + "). That is done in " + tenths(then.chance()) + " futures and adds $"
                    + Math.round(then.adds_usdHa() * Units.HA_PER_AC) + "/ac on average.";
        }

        private static String rain(FollowUp.Step s) {
            if (s.fromRain_mm() <= 0) {
                return Double.isInfinite(s.toRain_mm()) ? "" : " after up to " + inches(s.toRain_mm()) + " in of rain";
            }
            return Double.isInfinite(s.toRain_mm()) ? " after more" : " after up to " + inches(s.toRain_mm()) + " in";
        }
    }

    /** Why something is hired. */
    record OwnRigsDoNotFit(String rig, double cost_usdHa, boolean isUsual) implements Reason {
        @Override
        public String sentence() {
            String from = isUsual ? " (a usual price, not yours: set it in farm.csv)" : "";
            return "None of the farm's own rigs fits this crop any more; the " + rig + " is counted at $"
                    + Math.round(cost_usdHa * Units.HA_PER_AC) + "/ac without product" + from + ".";
        }
    }

    /** What dry urea does to wet leaves (common practice, no source). */
    record UreaOnLeaves() implements Reason {
        @Override
        public String sentence() {
            return "Spread urea on dry leaves only: granules that stay in wet whorls burn them.";
        }
    }

    private static void hired(Farm farm, Option o, List<Reason> all) {
        boolean byAir = o.placement() == Placement.BY_AIR;
        if (o.rig().equals(Rescue.HIGH_RIG) || o.rig().equals(Rescue.AIRCRAFT)) {
            Setting cost = byAir ? Setting.AIRCRAFT_COST : Setting.HIRED_RIG_COST;
            boolean isUsual = !farm.settings().own().containsKey(cost);
            all.add(new OwnRigsDoNotFit(o.rig(), farm.settings().of(cost), isUsual));
        }
        if (byAir) {
            all.add(new UreaOnLeaves());
        }
    }

    static List<Reason> of(ZoneEnsemble futures, Baseline base, Option o, List<OutOfReach> reach) {
        List<Reason> all = new ArrayList<>();
        SeasonTrace trace = base.trace();
        int today = trace.day(futures.decisionDay());
        all.add(new ShortOfNitrogen(base.nShort(), futures.on()));
        all.add(whereItLies(futures, trace, today));
        all.add(new RainToCome(rain(futures, o.date()), o.placement()));
        double gas = trace.at(today, Daily.DENITRIFIED) + trace.at(today, Daily.VOLATILISED);
        if (Units.lbAc(gas + trace.at(today, Daily.LEACHED)) >= 10) {
            all.add(new LostSoFar(trace.at(today, Daily.LEACHED), gas));
        }
        hired(futures.farm(), o, all);
        o.then().ifPresent(then -> all.add(new LookAgain(then)));
        lastDay(reach, o).ifPresent(d -> all.add(new FitsUntil(o.rig(), d)));
        return all;
    }

    private static Optional<LocalDate> lastDay(List<OutOfReach> reach, Option o) {
        return reach.stream()
                .filter(r -> r.rig().equals(o.rig()) && r.date().isPresent())
                .flatMap(r -> r.lastDay().stream())
                .findFirst();
    }

    private static WhereItLies whereItLies(ZoneEnsemble futures, SeasonTrace trace, int day) {
        double row = 0;
        double middle = 0;
        double water = 0;
        double room = 0;
        for (int i = 0; i < TOP_FOOT; i++) {
            row += trace.field(day, Cell.NITRATE, SeasonTrace.ROW, i);
            middle += trace.field(day, Cell.NITRATE, SeasonTrace.MIDDLE, i);
            double dz = org.earleaf.soil.SoilProfile.thickness_mm(i);
            var soil = futures.zone().soil().water().get(i);
            water += trace.at(day, Cell.WATER, SeasonTrace.MIDDLE, i) - soil.wp() * dz;
            room += (soil.fc() - soil.wp()) * dz;
        }
        return new WhereItLies(row, middle, water / room);
    }

    private static Spread rain(ZoneEnsemble futures, LocalDate from) {
        double[] sums = new double[futures.weather().size()];
        for (int f = 0; f < sums.length; f++) {
            double[] rain = futures.weather().get(f).rain_mm();
            int k = futures.weather().get(f).index(from);
            for (int d = k; d < Math.min(rain.length, k + NEXT_WEEK); d++) {
                sums[f] += rain[d];
            }
        }
        return Spread.of(sums);
    }

    static String tenths(double chance) {
        return Math.round(10 * chance) + " of 10";
    }

    private static String lb(double kgHa) {
        return String.valueOf(Math.round(Units.lbAc(kgHa)));
    }

    private static String inches(double mm) {
        return String.format(Locale.ENGLISH, "%.1f", Units.inches(mm));
    }
}
