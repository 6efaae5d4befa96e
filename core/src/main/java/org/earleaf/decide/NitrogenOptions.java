// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.Setting;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.EnoughNitrate;
import org.earleaf.outlook.FieldCalendar;
import org.earleaf.outlook.OutOfReach;
import org.earleaf.outlook.Outlook;
import org.earleaf.outlook.Tested;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.SideBySide;
import org.jspecify.annotations.Nullable;

/**
 * Nitrogen options of a zone over the next three weeks, date x product x placement x rate x rig that still fits, each run
 * through the same members as doing nothing: those that a few members leave in the race ({@link Race}). The most promising
 * are valued with the best pass that may follow them ({@link Recourse}).
 *
 * <pre>
 * gain = P (Y with - Y without) - N price - pass cost        in each future
 *
 * P      price of a bushel less what each bushel costs to bring home   [$/bu]
 * Y      yield                                                         [bu]
 * Source expected net return over equally likely futures, common decision theory; worst-fifth mean: Rockafellar &
 *        Uryasev 2000, J. Risk 2:21, from memory
 * Check  NitrogenOptionsTest, WorthTest
 * </pre>
 */
public final class NitrogenOptions {
    /** Days ahead that are looked at, today included. */
    public static final int DAYS_AHEAD = 21;

    /** Every day of the forecast's week is looked at, then every third. */
    private static final int EVERY_DAY_D = 8;

    private static final int THEN_EVERY_D = 3;

    private final ZoneEnsemble futures;
    private final Baseline base;
    private final Trials trials;
    private final DayOptions days;
    private @Nullable LocalDate go;
    private @Nullable SoilTestWorth soilTest;
    private double knowing_usdHa;
    private CropReadingWorth cropReading = new CropReadingWorth(0, 0, Optional.empty());

    private NitrogenOptions(ZoneEnsemble futures, Baseline base, SideBySide how, Search search) {
        this.futures = futures;
        this.base = base;
        trials = new Trials(futures, how);
        days = new DayOptions(futures, base, trials, search);
    }

    /** How many of the choices are run on all members. */
    public enum Search {
        /** Those that a few members leave in the race ({@link Race}). */
        RACED,
        /** All of them, to hold the race against. */
        ALL
    }

    /**
     * What knowing more this morning would be worth.
     *
     * @param soilTest a nitrate test of the top foot; empty when nothing can be done
     * @param cropReading a height or a stage
     * @param season_usdHa the whole season, to somebody who decides today: no reading and no forecast is worth more
     */
    public record Knowing(Optional<SoilTestWorth> soilTest, CropReadingWorth cropReading, double season_usdHa) {}

    /**
     * The answer for a zone.
     *
     * @param options best first
     * @param picks of each rig on each day the best, of those tied with it the smallest rate; by date
     * @param proposed the best option of the day to go; empty when no day is worth it or a test shows enough
     * @param knowing what knowing more would be worth
     * @param tested what nitrate tests say of the advice
     * @param protection passes against disease and insects, over the same members
     * @param simulated season runs behind it
     */
    public record Answer(
            Outlook outlook,
            List<Option> options,
            List<Option> picks,
            Optional<Option> proposed,
            Knowing knowing,
            Tested tested,
            ProtectionAnswer protection,
            long simulated) {
        public Answer {
            options = List.copyOf(options);
            picks = List.copyOf(picks);
        }

        public Optional<SoilTestWorth> soilTest() {
            return knowing.soilTest();
        }

        public CropReadingWorth cropReading() {
            return knowing.cropReading();
        }

        public double knowing_usdHa() {
            return knowing.season_usdHa();
        }
    }

    /** Options best first, and the outlook they were measured on. */
    public static Answer of(Farm farm, Zone zone, LocalDate on, boolean hindsight, SideBySide how) {
        return of(ZoneEnsemble.of(farm, zone, on, hindsight), how);
    }

    static Answer of(ZoneEnsemble futures, SideBySide how) {
        return of(futures, how, Search.RACED);
    }

    static Answer of(ZoneEnsemble futures, SideBySide how, Search search) {
        Baseline base = new Baseline(futures, futures.season());
        NitrogenOptions all = new NitrogenOptions(futures, base, how, search);
        List<DayOptions.Valued> valued = all.list();
        List<Option> options = valued.stream().map(DayOptions.Valued::option).toList();
        Tested tested = Tested.of(futures, base.trace());
        Optional<Option> proposed = tested.enough().isPresent()
                ? Optional.empty()
                : Ties.pick(valued.stream()
                                .filter(v -> v.option().date().equals(all.go))
                                .toList())
                        .map(DayOptions.Valued::option);
        return new Answer(
                Outlooks.of(futures, base),
                options,
                Ties.picks(valued),
                proposed,
                new Knowing(Optional.ofNullable(all.soilTest), all.cropReading, all.knowing_usdHa),
                tested,
                ProtectionPasses.of(futures, base),
                all.trials.simulated() + ZoneEnsemble.MEMBERS);
    }

    private List<DayOptions.Valued> list() {
        List<DayOptions.Valued> all = new ArrayList<>();
        double[] best = new double[DAYS_AHEAD];
        double[] waiting = new double[DAYS_AHEAD];
        boolean[] looked = new boolean[DAYS_AHEAD];
        Arrays.fill(looked, true);
        SeasonRun trunk = futures.members();
        List<CropReadingWorth.DayPass> passes = new ArrayList<>();
        Optional<CropReadingWorth.DayPass> doubt = Optional.empty();
        LocalDate day = futures.decisionDay();
        for (int ahead = 0; ahead < DAYS_AHEAD && !day.isAfter(futures.last()); ahead++) {
            looked[ahead] = isLookedAt(day, ahead);
            if (looked[ahead] && FieldCalendar.usesNitrogen(futures.zone(), base.trace(), day)) {
                DayOptions.Day found = days.of(trunk, ahead);
                best[ahead] = found.best_usdHa();
                waiting[ahead] = found.waiting_usdHa();
                all.addAll(found.options());
                found.bestPass().ifPresent(passes::add);
                doubt = ahead == 0 ? days.inDoubt(trunk) : doubt;
                if (ahead == 0 && found.gains().length > 0) {
                    soilTest = SoilTestWorth.of(trunk, found.gains(), EnoughNitrate.above_mgKg(futures, base.trace()));
                    knowing_usdHa = Choice.knowing_usdHa(found.gains());
                }
            }
            futures.advance(trunk, day.plusDays(1));
            day = day.plusDays(1);
        }
        cropReading = CropReadingWorth.of(futures.members(), base, passes, doubt);
        fillBetween(best, looked);
        fillBetween(waiting, looked);
        return withWaiting(all, best, waiting, looked);
    }

    /** Days of the first week, every third day after, and those on which a rig goes for the last time or the first. */
    private boolean isLookedAt(LocalDate day, int ahead) {
        return ahead < EVERY_DAY_D
                || (ahead - EVERY_DAY_D) % THEN_EVERY_D == THEN_EVERY_D - 1
                || !days.fitting(day).equals(days.fitting(day.plusDays(1)))
                || !days.fitting(day).equals(days.fitting(day.minusDays(1)));
    }

    /** Straight lines over the days that were not looked at. */
    static void fillBetween(double[] value, boolean[] known) {
        int before = 0;
        for (int d = 1; d < value.length; d++) {
            if (!known[d]) {
                continue;
            }
            for (int k = before + 1; k < d; k++) {
                value[k] = value[before] + (value[d] - value[before]) * (k - before) / (d - before);
            }
            before = d;
        }
        for (int k = before + 1; k < value.length; k++) {
            value[k] = value[before];
        }
    }

    /** What a hundred members say of what a day will know strays from day to day: the mean of three is taken. */
    static double[] smoothed(double[] value) {
        double[] mean = new double[value.length];
        for (int d = 0; d < value.length; d++) {
            int from = Math.max(0, d - 1);
            int to = Math.min(value.length - 1, d + 1);
            for (int k = from; k <= to; k++) {
                mean[d] += value[k] / (to - from + 1);
            }
        }
        return mean;
    }

    private List<DayOptions.Valued> withWaiting(
            List<DayOptions.Valued> all, double[] best, double[] knowsMore, boolean[] looked) {
        LocalDate first = futures.decisionDay();
        double[] more = smoothed(knowsMore);
        double[] value = new double[DAYS_AHEAD];
        boolean[] among = new boolean[DAYS_AHEAD];
        for (int d = 0; d < DAYS_AHEAD; d++) {
            // Today there is nothing to wait for any more, and what no option brings is not to be had.
            value[d] = best[d] + (d > 0 ? more[d] : 0);
            among[d] = looked[d] && best[d] > 0;
        }
        double[] workable = futures.workable().from(first, DAYS_AHEAD);
        Waiting waiting = new Waiting(value, workable, Ties.ofDays(all, first, value));
        int day = waiting.day(among);
        go = day < 0 ? null : first.plusDays(day);
        List<OutOfReach> reach = Reach.ofRigs(futures, base);
        List<DayOptions.Valued> sorted = new ArrayList<>();
        for (DayOptions.Valued v : all) {
            Option o = v.option();
            double wait = waiting.cost((int) (o.date().toEpochDay() - first.toEpochDay()));
            sorted.add(new DayOptions.Valued(o.with(wait, Reasons.of(futures, base, o, reach)), v.gains_usdHa()));
        }
        double weight = futures.farm().settings().of(Setting.BAD_CASE_WEIGHT);
        Comparator<Option> order = Comparator.comparingDouble(
                        (Option o) -> -o.worth().objective_usdHa(weight))
                .thenComparing(Option::date)
                .thenComparing(Option::rig);
        sorted.sort(Comparator.comparing(DayOptions.Valued::option, order));
        return sorted;
    }
}
