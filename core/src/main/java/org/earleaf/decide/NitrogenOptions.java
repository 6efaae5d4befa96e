// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.earleaf.farm.Farm;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Rig;
import org.earleaf.field.Inhibitor;
import org.earleaf.field.Placement;
import org.earleaf.field.Zone;
import org.earleaf.season.NitrogenPass;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.ZoneSeason;
import org.earleaf.units.Units;
import org.jspecify.annotations.Nullable;

/**
 * Nitrogen options of a zone over the next three weeks, date x product x placement x rate x rig that still fits, each run
 * through the same members as doing nothing. On the first day every rate is run on all members; on later days the rates
 * are looked through on a fifth of them, and the best two go on.
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
    private static final int LANES = 200;
    /** All members, and the few on which rates are looked through first. */
    private static final int[] ALL = IntStream.range(0, ZoneEnsemble.MEMBERS).toArray();

    private static final int[] SCOUTS =
            IntStream.range(0, ZoneEnsemble.MEMBERS / 5).map(k -> 5 * k).toArray();
    /** So many rates of a day, product and placement are run on all members. */
    private static final int PROMISING = 2;

    private static final int SCOUT_EVERY_D = 3;

    private final ZoneEnsemble futures;
    private final Baseline base;
    private final List<Candidate> candidates;
    private final Map<Candidate, Set<Double>> promising = new HashMap<>();
    private @Nullable LocalDate go;
    private @Nullable SoilTestWorth soilTest;
    private long simulated;

    private NitrogenOptions(ZoneEnsemble futures, Baseline base) {
        this.futures = futures;
        this.base = base;
        this.candidates = candidates(futures.farm());
    }

    /**
     * The answer for a zone.
     *
     * @param options best first
     * @param proposed the best option of the day to go; empty when no day is worth it
     * @param soilTest what a nitrate test of the top foot this morning would be worth; empty when nothing can be done
     * @param simulated season runs behind it
     */
    public record Answer(
            Outlook outlook,
            List<Option> options,
            Optional<Option> proposed,
            Optional<SoilTestWorth> soilTest,
            long simulated) {
        public Answer {
            options = List.copyOf(options);
        }
    }

    /** Options best first, and the outlook they were measured on. */
    public static Answer of(Farm farm, Zone zone, LocalDate on, boolean hindsight) {
        ZoneEnsemble futures = ZoneEnsemble.of(farm, zone, on, hindsight);
        Baseline base = new Baseline(futures, futures.season());
        NitrogenOptions all = new NitrogenOptions(futures, base);
        List<Option> options = all.list();
        Optional<Option> proposed =
                options.stream().filter(o -> o.date().equals(all.go)).findFirst();
        return new Answer(
                Outlooks.of(futures, base),
                options,
                proposed,
                Optional.ofNullable(all.soilTest),
                all.simulated + ZoneEnsemble.MEMBERS);
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
        SeasonRun trunk = futures.members();
        LocalDate day = futures.decisionDay();
        for (int ahead = 0; ahead < DAYS_AHEAD && !day.isAfter(futures.last()); ahead++) {
            boolean isTime = FieldCalendar.usesNitrogen(futures.zone(), base.trace(), day);
            List<Option> ofDay = isTime ? ofDay(trunk, day, ahead == 0) : List.of();
            bestOfDay[ahead] = ofDay.stream()
                    .mapToDouble(o -> o.worth().mean_usdHa())
                    .max()
                    .orElse(0);
            all.addAll(ofDay);
            futures.season().advance(trunk, day.plusDays(1));
            day = day.plusDays(1);
        }
        LocalDate first = futures.decisionDay();
        Waiting waiting = new Waiting(bestOfDay, futures.workable().from(first, DAYS_AHEAD));
        go = waiting.day() < 0 ? null : first.plusDays(waiting.day());
        List<OutOfReach> reach = Reach.ofRigs(futures, base);
        all.replaceAll(o -> withWait(o, waiting.cost((int) (o.date().toEpochDay() - first.toEpochDay())), reach));
        all.sort(Comparator.comparingDouble((Option o) -> -o.worth().mean_usdHa())
                .thenComparing(Option::date)
                .thenComparing(Option::rig));
        return all;
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

    private List<Option> ofDay(SeasonRun trunk, LocalDate day, boolean everyRate) {
        List<Trial> trials = new ArrayList<>();
        for (Candidate c : candidates) {
            List<Rig> fitting = c.rigs().stream()
                    .filter(r -> Reach.mayEnter(base, r, c.placement(), day))
                    .toList();
            double most = Reach.most_kgHa(base, c.placement(), day, c.product().isLiquid());
            List<Trial> ofCandidate = new ArrayList<>();
            for (double lbAc : fitting.isEmpty() ? new double[0] : RATES_LBAC) {
                if (Units.kgHa(lbAc) <= most + 1e-9) {
                    ofCandidate.add(new Trial(c, Units.kgHa(lbAc), fitting));
                }
            }
            trials.addAll(everyRate ? ofCandidate : promising(trunk, c, ofCandidate, day));
        }
        List<Option> options = new ArrayList<>();
        double[][] yields = yields(trunk, trials, ALL);
        if (everyRate && !trials.isEmpty()) {
            soilTest = SoilTestWorth.of(trunk, gains(trials, yields));
        }
        for (int t = 0; t < trials.size(); t++) {
            for (Rig rig : trials.get(t).rigs()) {
                options.add(option(trials.get(t), rig, day, yields[t]));
            }
        }
        return options;
    }

    /** The rates that look best on a few members, looked through anew every third day; only they are run on all. */
    private List<Trial> promising(SeasonRun trunk, Candidate candidate, List<Trial> trials, LocalDate day) {
        Set<Double> rates = promising.get(candidate);
        long ahead = day.toEpochDay() - futures.decisionDay().toEpochDay();
        if (rates == null || ahead % SCOUT_EVERY_D == 1) {
            rates = scout(trunk, trials).stream().map(Trial::rate_kgHa).collect(Collectors.toSet());
            promising.put(candidate, rates);
        }
        Set<Double> chosen = rates;
        return trials.stream().filter(t -> chosen.contains(t.rate_kgHa())).toList();
    }

    private List<Trial> scout(SeasonRun trunk, List<Trial> trials) {
        double[][] yields = yields(trunk, trials, SCOUTS);
        double[] without =
                Arrays.stream(SCOUTS).mapToDouble(m -> base.yields_kgHa()[m]).toArray();
        Map<Trial, Double> mean = new HashMap<>();
        for (int t = 0; t < trials.size(); t++) {
            Trial trial = trials.get(t);
            mean.put(
                    trial,
                    -worth(trial, trial.rigs().get(0), yields[t], without).mean_usdHa());
        }
        return trials.stream()
                .sorted(Comparator.comparingDouble(mean::get))
                .limit(PROMISING)
                .sorted(Comparator.comparingDouble(Trial::rate_kgHa))
                .toList();
    }

    /** Yield by trial and member, for some of the members. */
    private double[][] yields(SeasonRun trunk, List<Trial> trials, int[] members) {
        double[][] yields = new double[trials.size()][members.length];
        int atOnce = Math.max(1, LANES / members.length);
        for (int k = 0; k < trials.size(); k += atOnce) {
            int n = Math.min(atOnce, trials.size() - k);
            yields(trunk, trials.subList(k, k + n), members, Arrays.copyOfRange(yields, k, k + n));
        }
        return yields;
    }

    private void yields(SeasonRun trunk, List<Trial> trials, int[] members, double[][] yields) {
        int n = members.length;
        int[] from = new int[trials.size() * n];
        Arrays.setAll(from, lane -> members[lane % n]);
        int[] weatherOf =
                Arrays.stream(from).map(m -> m % futures.weather().size()).toArray();
        SeasonRun run = trunk.branch(from, futures.weather(), weatherOf);
        for (int t = 0; t < trials.size(); t++) {
            Candidate c = trials.get(t).candidate();
            NitrogenPass pass = ZoneSeason.pass(c.product(), trials.get(t).rate_kgHa(), c.placement(), Inhibitor.NONE);
            for (int m = 0; m < n; m++) {
                run.apply(t * n + m, pass);
            }
        }
        futures.season().finish(run, futures.last());
        simulated += from.length;
        for (int t = 0; t < trials.size(); t++) {
            int at = t * n;
            Arrays.setAll(yields[t], m -> run.yield(at + m).grain_kgHa());
        }
    }

    /** Gain by trial and member with its first rig [$/ha]. */
    private double[][] gains(List<Trial> trials, double[][] yields) {
        double[][] gains = new double[yields.length][];
        for (int t = 0; t < gains.length; t++) {
            double[] gained = gained(yields[t], base.yields_kgHa());
            double cost = cost_usdHa(trials.get(t), trials.get(t).rigs().get(0));
            gains[t] = Worth.gains_usdHa(gained, cost, futures.farm().prices());
        }
        return gains;
    }

    private double cost_usdHa(Trial trial, Rig rig) {
        double price = futures.farm()
                .prices()
                .nitrogen_usdKg(trial.candidate().product().name());
        return trial.rate_kgHa() * price + rig.cost_usdHa();
    }

    private static double[] gained(double[] with, double[] without) {
        double[] gained = new double[with.length];
        Arrays.setAll(gained, m -> with[m] - without[m]);
        return gained;
    }

    private Worth worth(Trial trial, Rig rig, double[] with, double[] without) {
        return Worth.of(
                gained(with, without), cost_usdHa(trial, rig), futures.farm().prices());
    }

    private Option option(Trial trial, Rig rig, LocalDate day, double[] with) {
        NitrogenProduct product = trial.candidate().product();
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
                worth(trial, rig, with, base.yields_kgHa()),
                0,
                List.of());
    }
}
