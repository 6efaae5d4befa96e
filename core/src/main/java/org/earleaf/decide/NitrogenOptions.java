// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Rig;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.ZoneSeason;
import org.earleaf.units.Units;
import org.jspecify.annotations.Nullable;

/**
 * Every nitrogen option of a zone over the next three weeks, date x product x placement x rate x rig that still fits,
 * each run through the same futures as doing nothing.
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

    private static final double[] RATES_LBAC = {20, 30, 40, 50, 60, 80, 100, 120, 150, 180};
    /** Lanes of one run: enough to fill the vector units, few enough to stay in the cache. */
    private static final int LANES = 256;
    /** From milk on, nitrogen comes too late (common practice, no source). */
    private static final double TOO_LATE_REP = .33;

    private final ZoneFutures futures;
    private final Baseline base;
    private final List<Candidate> candidates;
    private @Nullable LocalDate go;
    private long simulated;

    private NitrogenOptions(ZoneFutures futures, Baseline base) {
        this.futures = futures;
        this.base = base;
        this.candidates = candidates(futures.farm());
    }

    /**
     * The answer for a zone.
     *
     * @param options best first
     * @param proposed the best option of the day to go; empty when no day is worth it
     * @param simulated season runs behind it
     */
    public record Answer(Outlook outlook, List<Option> options, Optional<Option> proposed, long simulated) {
        public Answer {
            options = List.copyOf(options);
        }
    }

    /** Options best first, and the outlook they were measured on. */
    public static Answer of(Farm farm, Zone zone, LocalDate on, boolean hindsight) {
        ZoneFutures futures = ZoneFutures.of(farm, zone, on, hindsight);
        Baseline base = new Baseline(futures, futures.season());
        NitrogenOptions all = new NitrogenOptions(futures, base);
        List<Option> options = all.list();
        Optional<Option> proposed =
                options.stream().filter(o -> o.date().equals(all.go)).findFirst();
        return new Answer(Outlooks.of(futures, base), options, proposed, all.simulated + futures.futures());
    }

    static boolean carriesNitrogen(Placement p) {
        return switch (p) {
            case BROADCAST, ROW_BASE, MID_DRIBBLE, MID_INJECT, ROW_INJECT, BY_AIR -> true;
            default -> false;
        };
    }

    /** What may be laid where; rigs that do the same share the runs. */
    private record Candidate(NitrogenProduct product, Placement placement, List<Rig> rigs) {}

    private static List<Candidate> candidates(Farm farm) {
        List<Candidate> all = new ArrayList<>();
        for (Placement p : Placement.values()) {
            List<Rig> rigs = farm.rigs().stream()
                    .filter(r -> !r.isTender() && r.placements().contains(p))
                    .toList();
            if (!carriesNitrogen(p) || rigs.isEmpty()) {
                continue;
            }
            // Dry urea is spread by a hired aircraft only; own rigs carry liquids.
            List<NitrogenProduct> products =
                    p == Placement.BY_AIR ? farm.findNitrogen("urea").stream().toList() : liquids(farm);
            for (NitrogenProduct product : products) {
                all.add(new Candidate(product, p, rigs));
            }
        }
        return all;
    }

    /** Liquids with a price of their own; UAN 32 when none has one. Never ammonia. */
    private static List<NitrogenProduct> liquids(Farm farm) {
        List<NitrogenProduct> priced = farm.prices().nitrogenOf_usdKg().keySet().stream()
                .sorted()
                .flatMap(name -> farm.findNitrogen(name).stream())
                .filter(NitrogenProduct::isLiquid)
                .filter(n -> n.nitrogen_share() >= .2 && n.nitrogen_share() < .5)
                .toList();
        return priced.isEmpty() ? farm.findNitrogen("UAN 32").stream().toList() : priced;
    }

    private List<Option> list() {
        List<Option> all = new ArrayList<>();
        double[] bestOfDay = new double[DAYS_AHEAD];
        SeasonRun trunk = futures.morning(futures.season());
        LocalDate day = futures.decisionDay();
        for (int ahead = 0; ahead < DAYS_AHEAD && !day.isAfter(futures.last()); ahead++) {
            List<Option> ofDay = isTime(day) ? ofDay(trunk, day) : List.of();
            bestOfDay[ahead] = ofDay.stream()
                    .mapToDouble(o -> o.worth().mean_usdHa())
                    .max()
                    .orElse(0);
            all.addAll(ofDay);
            futures.season().advance(trunk, day.plusDays(1));
            day = day.plusDays(1);
        }
        LocalDate first = futures.decisionDay();
        Waiting waiting = new Waiting(bestOfDay, Waiting.workable(futures, first, DAYS_AHEAD));
        go = waiting.day() < 0 ? null : first.plusDays(waiting.day());
        List<OutOfReach> reach = Reach.ofRigs(futures, base);
        all.replaceAll(o -> withWait(o, waiting.cost((int) (o.date().toEpochDay() - first.toEpochDay())), reach));
        all.sort(Comparator.comparingDouble((Option o) -> -o.worth().mean_usdHa())
                .thenComparing(Option::date)
                .thenComparing(Option::rig));
        return all;
    }

    private boolean isTime(LocalDate day) {
        int k = base.trace().day(day);
        return !day.isBefore(futures.zone().planted()) && base.trace().at(k, Daily.REP) < TOO_LATE_REP;
    }

    private Option withWait(Option o, double wait, List<OutOfReach> reach) {
        return new Option(
                o.field(),
                o.zone(),
                o.kind(),
                o.date(),
                o.product(),
                o.placement(),
                o.nitrogen_kgHa(),
                o.productRate(),
                o.liquid(),
                o.rig(),
                o.worth(),
                wait,
                Reasons.of(futures, base, o, reach));
    }

    private record Trial(Candidate candidate, double rate_kgHa, List<Rig> rigs) {}

    private List<Option> ofDay(SeasonRun trunk, LocalDate day) {
        List<Trial> trials = new ArrayList<>();
        for (Candidate c : candidates) {
            List<Rig> fitting = c.rigs().stream()
                    .filter(r -> Reach.mayEnter(base, r, c.placement(), day))
                    .toList();
            double most = Reach.most_kgHa(base, c.placement(), day, c.product().isLiquid());
            for (double lbAc : fitting.isEmpty() ? new double[0] : RATES_LBAC) {
                if (Units.kgHa(lbAc) <= most + 1e-9) {
                    trials.add(new Trial(c, Units.kgHa(lbAc), fitting));
                }
            }
        }
        List<Option> options = new ArrayList<>();
        int atOnce = Math.max(1, LANES / futures.futures());
        for (int k = 0; k < trials.size(); k += atOnce) {
            List<Trial> some = trials.subList(k, Math.min(trials.size(), k + atOnce));
            run(trunk, day, some, options);
        }
        return options;
    }

    private void run(SeasonRun trunk, LocalDate day, List<Trial> trials, List<Option> options) {
        int n = futures.futures();
        int[] from = new int[trials.size() * n];
        Arrays.setAll(from, lane -> lane % n);
        SeasonRun run = trunk.branch(from, futures.weather(), from);
        for (int t = 0; t < trials.size(); t++) {
            Trial trial = trials.get(t);
            for (int m = 0; m < n; m++) {
                run.apply(
                        t * n + m,
                        ZoneSeason.pass(
                                trial.candidate().product(),
                                trial.rate_kgHa(),
                                trial.candidate().placement(),
                                Inhibitor.NONE));
            }
        }
        futures.season().finish(run, futures.last());
        simulated += from.length;
        for (int t = 0; t < trials.size(); t++) {
            int at = t * n;
            double[] with = new double[n];
            Arrays.setAll(with, m -> run.yield(at + m).grain_kgHa());
            for (Rig rig : trials.get(t).rigs()) {
                options.add(option(trials.get(t), rig, day, with));
            }
        }
    }

    private Option option(Trial trial, Rig rig, LocalDate day, double[] with) {
        NitrogenProduct product = trial.candidate().product();
        Prices prices = futures.farm().prices();
        double cost = trial.rate_kgHa() * prices.nitrogen_usdKg(product.name()) + rig.cost_usdHa();
        double[] without = base.yields_kgHa();
        double[] gained_kgHa = new double[with.length];
        Arrays.setAll(gained_kgHa, m -> with[m] - without[m]);
        Zone zone = futures.zone();
        return new Option(
                zone.field(),
                zone.zone(),
                "nitrogen",
                day,
                product.name(),
                trial.candidate().placement(),
                trial.rate_kgHa(),
                product.isLiquid() ? product.litresHa(trial.rate_kgHa()) : trial.rate_kgHa() / product.nitrogen_share(),
                product.isLiquid(),
                rig.name(),
                Worth.of(gained_kgHa, cost, prices),
                0,
                List.of());
    }
}
