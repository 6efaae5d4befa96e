// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.HiredRig;
import org.earleaf.farm.Setting;
import org.earleaf.field.Placement;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.DateSpread;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.Tested;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Cell;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.parameter.TrialDistance;
import org.earleaf.soil.SoilProfile;
import org.earleaf.units.BundledTable;
import org.earleaf.units.Measure;
import org.earleaf.units.Measured;
import org.earleaf.units.Said;
import org.earleaf.units.Units;

/** The reasons behind an option, as facts that name their sentence. */
final class Reasons {
    private static final int TOP_FOOT = 3;
    private static final int NEXT_WEEK = 7;

    private Reasons() {}

    /** When nitrogen runs short. */
    record ShortOfNitrogen(DateSpread when, LocalDate on) implements Reason {
        @Override
        public Said said() {
            Measured chance = Measure.CHANCE.of(when.probability());
            if (when.probability() == 0) {
                return Said.of("short.never");
            }
            if (when.p50().isPresent() && !when.p50().get().isAfter(on)) {
                return Said.of("short.already");
            }
            if (when.p50().isEmpty()) {
                return when.p10()
                        .map(early -> Said.of("short.some-from", "chance", chance, "early", early))
                        .orElseGet(() -> Said.of("short.some", "chance", chance));
            }
            LocalDate about = when.p50().get();
            LocalDate early = when.p10().orElseThrow();
            if (when.p90().isEmpty()) {
                return Said.of("short.about-or-never", "about", about, "early", early);
            }
            LocalDate late = when.p90().get();
            return early.equals(late)
                    ? Said.of("short.about", "about", about)
                    : Said.of("short.about-between", "about", about, "early", early, "late", late);
        }
    }

    /** Nitrate of the top foot at the row and between rows, and how dry it lies [kg/ha of field]. */
    record WhereItLies(double row_kgHa, double middle_kgHa, double middleWetness) implements Reason {
        @Override
        public Said said() {
            return Said.of(
                    middleWetness < .35 ? "top-foot.dry" : "top-foot.holds",
                    "foot",
                    Measure.DEPTH.of(SoilProfile.FOOT_MM),
                    "all",
                    Measure.NITROGEN_RATE.of(row_kgHa + middle_kgHa),
                    "middle",
                    Measure.NITROGEN_RATE.of(middle_kgHa));
        }
    }

    /** Rain expected in the week after the pass [mm], over the futures. */
    record RainToCome(Spread rain_mm, Placement placement) implements Reason {
        @Override
        public Said said() {
            return Said.of(
                    switch (placement) {
                        case ROW_BASE -> "rain-ahead.row-base";
                        case MID_INJECT, ROW_INJECT -> "rain-ahead.injected";
                        default -> "rain-ahead.surface";
                    },
                    "rain",
                    Measure.RAIN.of(rain_mm.p50()),
                    "low",
                    Measure.RAIN.of(rain_mm.p10()),
                    "high",
                    Measure.RAIN.of(rain_mm.p90()));
        }
    }

    /** Last day that the rig fits. */
    record FitsUntil(String rig, LocalDate lastDay) implements Reason {
        @Override
        public Said said() {
            return Said.of("reach.clears-through", "rig", rig, "day", lastDay);
        }
    }

    /** Losses so far this season [kg/ha]. */
    record LostSoFar(double leached_kgHa, double gas_kgHa) implements Reason {
        @Override
        public Said said() {
            return Said.of(
                    "lost.so-far",
                    "leached",
                    Measure.NITROGEN_RATE.of(leached_kgHa),
                    "gas",
                    Measure.NITROGEN_RATE.of(gas_kgHa));
        }
    }

    /** What may follow, by the rain until then. */
    record LookAgain(FollowUp then) implements Reason {
        @Override
        public Said said() {
            return Said.of(
                    "then.look-again",
                    "day",
                    then.date(),
                    "steps",
                    then.steps().stream().map(LookAgain::step).toList(),
                    "placement",
                    then.placement(),
                    "chance",
                    Measure.CHANCE.of(then.chance()),
                    "adds",
                    Measure.MONEY_RATE.of(then.adds_usdHa()));
        }

        private static Said step(FollowUp.Step s) {
            Said what = s.nitrogen_kgHa() > 0
                    ? Said.of("then.more", "rate", Measure.NITROGEN_RATE.of(s.nitrogen_kgHa()))
                    : Said.of("then.nothing");
            Measured upTo = Measure.RAIN.of(s.toRain_mm());
            boolean open = Double.isInfinite(s.toRain_mm());
            if (s.fromRain_mm() <= 0) {
                return open ? what : Said.of("then.up-to-rain", "what", what, "rain", upTo);
            }
            return open ? Said.of("then.after-more", "what", what) : Said.of("then.up-to", "what", what, "rain", upTo);
        }
    }

    /** Why something is hired. */
    record OwnRigsDoNotFit(String rig, double cost_usdHa, boolean isUsual) implements Reason {
        @Override
        public Said said() {
            return Said.of(
                    isUsual ? "hire.at-usual-price" : "hire.at-own-price",
                    "rig",
                    rig,
                    "cost",
                    Measure.MONEY_RATE.of(cost_usdHa));
        }
    }

    /** What dry urea does to wet leaves (common practice, no source). */
    record UreaOnLeaves() implements Reason {
        @Override
        public Said said() {
            return Said.of("hire.urea-on-leaves");
        }
    }

    /** How the advice did on real corn; a field unlike those of the trials says so. */
    record HeldAgainstTrials(boolean isFar) implements Reason {
        private static final BundledTable.Row RECORD =
                BundledTable.rows("trial-record.csv").get(0);

        @Override
        public Said said() {
            return Said.of(
                    isFar ? "trials.far" : "trials.near",
                    "farms",
                    (int) RECORD.number("farms"),
                    "seasons",
                    (int) RECORD.number("site_years"),
                    "first",
                    RECORD.text("first_year"),
                    "last",
                    RECORD.text("last_year"),
                    "off",
                    Measure.NITROGEN_RATE.of(RECORD.number("off_by_kgha")),
                    "share",
                    Measure.CHANCE.of(RECORD.number("off_in_share")),
                    "left",
                    Measure.MONEY_RATE.of(RECORD.number("left_usdha")),
                    "published",
                    Measure.MONEY_RATE.of(RECORD.number("published_left_usdha")));
        }
    }

    private static void hired(Farm farm, Option o, List<Reason> all) {
        boolean byAir = o.placement() == Placement.BY_AIR;
        if (HiredRig.find(o.rig()).isPresent()) {
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
        Tested.of(futures, trace).said().forEach(test -> all.add(() -> test));
        all.add(whereItLies(futures, trace, today));
        all.add(new RainToCome(rain(futures, o.date()), o.placement()));
        double gas = trace.at(today, Daily.DENITRIFIED) + trace.at(today, Daily.VOLATILISED);
        if (Units.lbAc(gas + trace.at(today, Daily.LEACHED)) >= 10) {
            all.add(new LostSoFar(trace.at(today, Daily.LEACHED), gas));
        }
        hired(futures.farm(), o, all);
        o.then().ifPresent(then -> all.add(new LookAgain(then)));
        lastDay(reach, o).ifPresent(d -> all.add(new FitsUntil(o.rig(), d)));
        futures.grew().said().forEach(past -> all.add(() -> past));
        all.add(new HeldAgainstTrials(
                TrialDistance.isFar(futures.zone(), futures.farm().site())));
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
            double dz = SoilProfile.thickness_mm(i);
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
}
