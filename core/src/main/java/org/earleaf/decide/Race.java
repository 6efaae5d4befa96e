// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.earleaf.decide.Candidate.Trial;
import org.earleaf.farm.Rig;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.protection.PassWorth;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Ranks;
import org.earleaf.units.Units;

/**
 * Which trials of a day are run on all members: all are run on a few, and the hopeless are dropped.
 *
 * <pre>
 * e = mean of R over the few + c,   c = mean of R over all - mean over the few, when the trial was last run on all; of a rate
 *     that never was, as of the same rate of the best product and placement
 * today            every rate of the best product and placement, two rates of each other
 * the week's days  of each rig the best by e, and the next where it is less than a dollar an acre worse; two rates of the
 *                  best product and placement
 * later            the latter alone
 * every third day  rates within 1.6 times the two best are looked through anew; who is then four dollars an acre behind the
 *                  best of each of its rigs is not looked at until the next time
 *
 * R      gain in a future with nothing after it             [$/ha]
 * Source successive halving over common draws: Karnin, Koren & Somekh 2013, ICML; control variates: common statistics
 *        (both from memory); what is kept, so that the week's plan has a choice for each rig and day: own construct
 * Check  RaceTest, bench/brief
 * </pre>
 */
final class Race {
    /** So many rates of a day, product and placement go on. */
    private static final int PROMISING = 2;

    private static final int SCOUT_EVERY_D = 3;
    /** Days of the week's plan, which chooses among rigs. */
    private static final int WEEK_D = 7;

    private static final double NEAR_USDHA = 1 / Units.HA_PER_AC;
    /** A neighbouring rate is less than so many times another. */
    private static final double STEP = 1.6;
    /** So far behind the best, nobody is looked at until rates are looked through anew. */
    private static final double HOPELESS_USDHA = 4 / Units.HA_PER_AC;

    private final ZoneEnsemble futures;
    private final Baseline base;
    private final Trials runs;
    private final boolean all;
    private final Map<Candidate, Set<Double>> promising = new HashMap<>();
    private final Map<Lay, Double> corrections = new HashMap<>();
    private final Map<Double, Double> correctionsOfRate = new HashMap<>();
    private final Set<Candidate> hopeless = new HashSet<>();
    private Set<Candidate> fitting = Set.of();
    private int scouted = -SCOUT_EVERY_D;

    Race(ZoneEnsemble futures, Baseline base, Trials runs, NitrogenOptions.Search search) {
        this.futures = futures;
        this.base = base;
        this.runs = runs;
        all = search == NitrogenOptions.Search.ALL;
    }

    /** @param yields dry grain by trial and member [kg/ha] */
    record Run(List<Trial> trials, double[][] yields) {}

    private record Lay(Candidate candidate, double rate_kgHa) {
        static Lay of(Trial t) {
            return new Lay(t.candidate(), t.rate_kgHa());
        }
    }

    /**
     * A trial on the few.
     *
     * @param mean_usdHa gain by its first rig
     */
    private record Scouted(Trial trial, double[] yields, double mean_usdHa) {
        boolean isOf(Candidate c) {
            return trial.candidate().equals(c);
        }
    }

    /**
     * Those of a day's trials that matter, on all members.
     *
     * @param trials every rate of each candidate
     */
    Run run(SeasonRun trunk, List<Trial> trials, int ahead) {
        if (all) {
            return new Run(trials, runs.yields(trunk, trials, Trials.ALL));
        }
        Map<Trial, double[]> run = raced(trunk, trials, ahead);
        List<Trial> order = trials.stream().filter(run::containsKey).toList();
        return new Run(order, order.stream().map(run::get).toArray(double[][]::new));
    }

    private Map<Trial, double[]> raced(SeasonRun trunk, List<Trial> trials, int ahead) {
        Set<Candidate> today = trials.stream().map(Trial::candidate).collect(Collectors.toSet());
        boolean anew = ahead - scouted >= SCOUT_EVERY_D || !today.equals(fitting);
        fitting = today;
        scouted = anew ? ahead : scouted;
        List<Scouted> looked =
                scouts(trunk, trials.stream().filter(t -> isLookedAt(t, anew)).toList());
        Map<Trial, double[]> run = new HashMap<>();
        if (looked.isEmpty()) {
            return run;
        }
        if (ahead == 0) {
            runOnAll(trunk, looked, isOf(top(looked)), run);
        }
        promise(looked, anew);
        if (ahead == 0) {
            runOnAll(trunk, looked, s -> isPromising(s.trial()), run);
            runOnAll(trunk, looked, isOf(top(looked)), run);
        } else {
            Set<Trial> going = going(looked, ahead);
            runOnAll(trunk, looked, s -> going.contains(s.trial()), run);
        }
        if (anew) {
            giveUp(looked, ahead);
        }
        return run;
    }

    /** Those that no rig would choose, and after the week the plan would not. */
    private void giveUp(List<Scouted> looked, int ahead) {
        hopeless.clear();
        double best = bestFirst(looked.stream())
                .mapToDouble(this::estimate_usdHa)
                .findFirst()
                .orElseThrow();
        Map<Rig, Double> ofRig = new HashMap<>();
        looked.forEach(s -> s.trial().rigs().forEach(rig -> ofRig.merge(rig, free_usdHa(s), Math::max)));
        looked.stream()
                .collect(Collectors.groupingBy(s -> s.trial().candidate()))
                .forEach((c, own) -> {
                    boolean any = own.stream()
                            .anyMatch(s -> estimate_usdHa(s) > best - HOPELESS_USDHA
                                    || ahead < WEEK_D
                                            && s.trial().rigs().stream()
                                                    .anyMatch(rig -> free_usdHa(s)
                                                            > ofRig.getOrDefault(rig, 0.0) - HOPELESS_USDHA));
                    if (!any) {
                        hopeless.add(c);
                    }
                });
    }

    private static Predicate<Scouted> isOf(Candidate c) {
        return s -> s.isOf(c);
    }

    private void runOnAll(SeasonRun trunk, List<Scouted> looked, Predicate<Scouted> which, Map<Trial, double[]> run) {
        List<Scouted> going = looked.stream()
                .filter(s -> which.test(s) && !run.containsKey(s.trial()))
                .toList();
        List<Trial> order = going.stream().map(Scouted::trial).toList();
        double[][] yields = runs.yieldsOfAll(
                trunk, order, going.stream().map(Scouted::yields).toList());
        double[][] gains = gains(order, yields, Trials.ALL);
        for (int t = 0; t < yields.length; t++) {
            Trial trial = order.get(t);
            run.put(trial, yields[t]);
            double more = Ranks.mean(gains[t]) - going.get(t).mean_usdHa();
            corrections.put(Lay.of(trial), more);
            correctionsOfRate.putIfAbsent(trial.rate_kgHa(), more);
        }
    }

    /** What a trial seems to bring, the luck of the few taken out as far as it is known. */
    private double estimate_usdHa(Scouted s) {
        double ofRate = correctionsOfRate.getOrDefault(s.trial().rate_kgHa(), 0.0);
        return s.mean_usdHa() + corrections.getOrDefault(Lay.of(s.trial()), ofRate);
    }

    private Candidate top(List<Scouted> looked) {
        return bestFirst(looked.stream()).findFirst().orElseThrow().trial().candidate();
    }

    /** Gain by trial and member with its first rig and nothing after it [$/ha]. */
    double[][] gains(List<Trial> trials, double[][] yields, int[] members) {
        double[] without = Trials.of(base.yields_kgHa(), members);
        double[][] gains = new double[yields.length][];
        for (int t = 0; t < gains.length; t++) {
            Trial trial = trials.get(t);
            gains[t] = PassWorth.gains_usdHa(
                    Worth.gained(yields[t], without),
                    trial.cost_usdHa(futures.farm(), trial.rigs().get(0)),
                    futures.farm().prices());
        }
        return gains;
    }

    /** Every third day the promising rates and their neighbours, on the others the promising of those with hope. */
    private boolean isLookedAt(Trial t, boolean anew) {
        Set<Double> rates = promising.get(t.candidate());
        if (rates == null) {
            return true;
        }
        double least = Collections.min(rates) / STEP;
        double most = Collections.max(rates) * STEP;
        return anew
                ? t.rate_kgHa() > least && t.rate_kgHa() < most
                : isPromising(t) && !hopeless.contains(t.candidate());
    }

    private List<Scouted> scouts(SeasonRun trunk, List<Trial> trials) {
        double[][] yields = runs.yields(trunk, trials, Trials.SCOUTS);
        double[][] gains = gains(trials, yields, Trials.SCOUTS);
        List<Scouted> found = new ArrayList<>();
        for (int t = 0; t < yields.length; t++) {
            found.add(new Scouted(trials.get(t), yields[t], Ranks.mean(gains[t])));
        }
        return found;
    }

    private void promise(List<Scouted> looked, boolean anew) {
        Map<Candidate, List<Scouted>> of = looked.stream()
                .collect(Collectors.groupingBy(s -> s.trial().candidate(), LinkedHashMap::new, Collectors.toList()));
        of.forEach((c, trials) -> {
            if (anew || !promising.containsKey(c)) {
                promising.put(
                        c,
                        bestFirst(trials.stream())
                                .limit(PROMISING)
                                .map(s -> s.trial().rate_kgHa())
                                .collect(Collectors.toSet()));
            }
        });
    }

    private Stream<Scouted> bestFirst(Stream<Scouted> trials) {
        return trials.sorted(Comparator.comparingDouble(s -> -estimate_usdHa(s)));
    }

    private Set<Trial> going(List<Scouted> looked, int ahead) {
        List<Scouted> best = looked.stream().filter(s -> isPromising(s.trial())).toList();
        Candidate top = top(best);
        Set<Trial> going = new HashSet<>();
        best.stream().filter(isOf(top)).map(Scouted::trial).forEach(going::add);
        if (ahead < WEEK_D) {
            best.stream()
                    .flatMap(s -> s.trial().rigs().stream())
                    .distinct()
                    .forEach(rig -> going.addAll(ofRig(best, rig)));
        }
        return going;
    }

    private boolean isPromising(Trial t) {
        return promising.getOrDefault(t.candidate(), Set.of()).contains(t.rate_kgHa());
    }

    /** Its own cost is the same whatever it lays; that of the first rig of a trial is not its own. */
    private List<Trial> ofRig(List<Scouted> best, Rig rig) {
        List<Scouted> own = best.stream()
                .filter(s -> s.trial().rigs().contains(rig))
                .sorted(Comparator.comparingDouble(s -> -free_usdHa(s)))
                .limit(PROMISING)
                .toList();
        return own.stream()
                .filter(s -> free_usdHa(own.get(0)) - free_usdHa(s) < NEAR_USDHA)
                .map(Scouted::trial)
                .toList();
    }

    /** By a rig that costs nothing. */
    private double free_usdHa(Scouted s) {
        return estimate_usdHa(s) + s.trial().rigs().get(0).cost_usdHa();
    }
}
