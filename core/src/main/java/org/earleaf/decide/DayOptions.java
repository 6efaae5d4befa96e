// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.earleaf.decide.Candidate.Trial;
import org.earleaf.farm.NitrogenProduct;
import org.earleaf.farm.Prices;
import org.earleaf.farm.Rig;
import org.earleaf.field.FieldPart;
import org.earleaf.field.Purpose;
import org.earleaf.field.Zone;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.protection.PassWorth;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Ranks;
import org.earleaf.units.Units;

/** The options of one day, and what the day is worth. */
final class DayOptions {
    private static final double[] RATES_LBAC = {20, 30, 40, 50, 60, 80, 100, 120, 150, 180};
    /** So many rates of a day, product and placement are run on all members. */
    private static final int PROMISING = 2;

    /** How many weeks after a pass the next one is looked for: after one of today, after one of a later day. */
    private static final int WEEKS_TODAY = 3;

    private static final int WEEKS_LATER = 2;
    /** For so many days a pass after which no other adds anything is not looked at again. */
    private static final int LOOK_AGAIN_D = 3;
    /** Before this day nothing is known that is not known today. */
    private static final int KNOWS_MORE_D = 3;

    private final ZoneEnsemble futures;
    private final Baseline base;
    private final Trials runs;
    private final List<Candidate> candidates;
    private final List<Candidate> rescue;
    private final Recourse recourse;
    /** From this rate on no pass is worth a second. */
    private double enough_kgHa = Double.POSITIVE_INFINITY;

    private int followedAt = -LOOK_AGAIN_D;
    private final Race race;
    private final NitrogenOptions.Search search;

    DayOptions(ZoneEnsemble futures, Baseline base, Trials runs, NitrogenOptions.Search search) {
        this.search = search;
        this.futures = futures;
        this.base = base;
        this.runs = runs;
        candidates = Candidate.of(futures.farm(), futures.farm().rigs());
        rescue = Candidate.of(futures.farm(), Rescue.rigs(futures.farm()));
        race = new Race(futures, base, runs, search);
        recourse = new Recourse(
                futures,
                runs,
                Stream.concat(candidates.stream(), rescue.stream()).toList());
    }

    /**
     * What can be done on a day.
     *
     * @param options each with its gain by member, with what may follow it
     * @param gains by trial with nothing after it, and member, each with its first rig [$/ha]
     * @param bestPass the trial that brings most with nothing after it
     * @param best_usdHa what the best option brings on average; not below 0
     * @param waiting_usdHa what the rain until then adds, as it tells whether and how much; not below 0
     */
    record Day(
            List<Valued> options,
            double[][] gains,
            Optional<CropReadingWorth.DayPass> bestPass,
            double best_usdHa,
            double waiting_usdHa) {}

    /** @param gains_usdHa by member [$/ha] */
    record Valued(Option option, double[] gains_usdHa) {}

    /** The rigs that may enter for nitrogen, with what they would do. */
    Set<String> fitting(LocalDate day) {
        Set<String> all = new HashSet<>();
        for (Candidate c : candidates(day)) {
            for (Rig r : fitting(c, day)) {
                all.add(r.name() + ", " + c.placement());
            }
        }
        return all;
    }

    /** What the farm can do; when none of its own rigs fits, also what can be hired. */
    private List<Candidate> candidates(LocalDate day) {
        boolean ownFits = candidates.stream().anyMatch(c -> fitting(c, day).stream()
                .anyMatch(r -> !r.isHired()
                        && Reach.most_kgHa(base, c.placement(), day, c.product().isLiquid()) > 0));
        return ownFits
                ? candidates
                : Stream.concat(candidates.stream(), rescue.stream()).toList();
    }

    private List<Rig> fitting(Candidate c, LocalDate day) {
        return c.rigs().stream()
                .filter(r -> Reach.mayEnter(base, r, c.placement(), day))
                .toList();
    }

    Day of(SeasonRun trunk, int ahead) {
        LocalDate day = trunk.date();
        Race.Run run = race.run(trunk, trials(day), ahead);
        List<Trial> trials = run.trials();
        double[][] yields = run.yields();
        double[][] gains = race.gains(trials, yields, Trials.ALL);
        Map<Trial, Recourse.Later> later = later(trunk, trials, yields, gains, ahead);
        double[] known = Choice.known(gains, ZoneEnsemble.MEMBERS);
        List<Valued> options = new ArrayList<>();
        for (int t = 0; t < trials.size(); t++) {
            for (Rig rig : trials.get(t).rigs()) {
                Optional<Recourse.Later> then = Optional.ofNullable(later.get(trials.get(t)));
                options.add(option(trials.get(t), rig, day, yields[t], then, known));
            }
        }
        double best = options.stream()
                .mapToDouble(v -> v.option().worth().mean_usdHa())
                .reduce(0, Math::max);
        return new Day(options, gains, bestPass(trials, gains, ahead), best, waiting(gains, day, ahead));
    }

    /** The best pass of a day by a rig that may not enter only because nobody knows the crop's height well enough. */
    Optional<CropReadingWorth.DayPass> inDoubt(SeasonRun trunk) {
        LocalDate day = trunk.date();
        List<Trial> trials = new ArrayList<>();
        for (Candidate c : candidates) {
            List<Rig> doubtful = c.rigs().stream()
                    .filter(r -> Reach.isInDoubt(base, r, c.placement(), day))
                    .toList();
            trials.addAll(trials(c, doubtful, day));
        }
        double[][] gains = race.gains(trials, runs.yields(trunk, trials, Trials.ALL), Trials.ALL);
        return bestPass(trials, gains, 0);
    }

    private static Optional<CropReadingWorth.DayPass> bestPass(List<Trial> trials, double[][] gains, int ahead) {
        return best(trials, gains).stream()
                .findFirst()
                .map(t -> new CropReadingWorth.DayPass(
                        ahead,
                        gains[trials.indexOf(t)],
                        t.rigs().get(0),
                        t.candidate().placement()));
    }

    /** How much better a choice made on the day by the rain until then is than one made now; nothing may be chosen. */
    private double waiting(double[][] gains, LocalDate day, int ahead) {
        if (ahead < KNOWS_MORE_D || gains.length == 0) {
            return 0;
        }
        int[] choices = new Informed(recourse.rain(day), futures.courses()).choices(gains);
        double now = Arrays.stream(gains).mapToDouble(Ranks::mean).reduce(0, Math::max);
        return Math.max(0, Ranks.mean(Informed.realised(gains, choices)) - now);
    }

    private List<Trial> trials(LocalDate day) {
        return candidates(day).stream()
                .flatMap(c -> trials(c, fitting(c, day), day).stream())
                .toList();
    }

    /** Every rate that a candidate may lay that day. */
    private List<Trial> trials(Candidate c, List<Rig> fitting, LocalDate day) {
        double most = Reach.most_kgHa(base, c.placement(), day, c.product().isLiquid());
        return fitting.isEmpty()
                ? List.of()
                : Arrays.stream(RATES_LBAC)
                        .map(Units::kgHa)
                        .filter(rate -> rate <= most + 1e-9)
                        .mapToObj(rate -> new Trial(c, rate, fitting))
                        .toList();
    }

    static List<Trial> best(List<Trial> trials, double[][] gains) {
        return IntStream.range(0, trials.size())
                .boxed()
                .sorted(Comparator.comparingDouble(t -> -Ranks.mean(gains[t])))
                .map(trials::get)
                .toList();
    }

    /** What may follow the most promising trials of a day. */
    private Map<Trial, Recourse.Later> later(
            SeasonRun trunk, List<Trial> trials, double[][] yields, double[][] gains, int ahead) {
        Recourse.Weeks weeks = new Recourse.Weeks(1, ahead == 0 ? WEEKS_TODAY : WEEKS_LATER);
        List<Trial> firsts = worthASecondLook(best(trials, gains), ahead);
        Map<Trial, Recourse.Weeks> looked = search == NitrogenOptions.Search.ALL
                ? firsts.stream().collect(Collectors.toMap(t -> t, t -> weeks))
                : followed(trunk, firsts, t -> yields[trials.indexOf(t)], weeks, ahead);
        firsts = firsts.stream().filter(looked::containsKey).toList();
        List<Optional<Recourse.Later>> later = runs.how()
                .each(
                        firsts,
                        first -> recourse.after(
                                trunk, first, yields[trials.indexOf(first)], looked.getOrDefault(first, weeks)));
        Map<Trial, Recourse.Later> all = new HashMap<>();
        for (int k = 0; k < firsts.size(); k++) {
            Trial first = firsts.get(k);
            later.get(k).ifPresent(l -> all.put(first, l));
        }
        return all;
    }

    /**
     * After which of the passes another adds anything on a few members, and in which week: a larger one leaves it no more to
     * add, and what holds today holds for some days.
     */
    private Map<Trial, Recourse.Weeks> followed(
            SeasonRun trunk, List<Trial> firsts, Function<Trial, double[]> alone, Recourse.Weeks weeks, int ahead) {
        if (ahead - followedAt >= LOOK_AGAIN_D) {
            followedAt = ahead;
            enough_kgHa = Double.POSITIVE_INFINITY;
        }
        Map<Trial, Recourse.Weeks> all = new HashMap<>();
        List<Trial> smallFirst = firsts.stream()
                .sorted(Comparator.comparingDouble(Trial::rate_kgHa))
                .toList();
        for (Trial first : smallFirst) {
            if (first.rate_kgHa() < enough_kgHa) {
                recourse.week(trunk, first, alone.apply(first), weeks)
                        .ifPresentOrElse(week -> all.put(first, week), () -> enough_kgHa = first.rate_kgHa());
            }
        }
        return all;
    }

    /**
     * The best candidate's best rates and, today, some smaller ones that leave room for a second pass; today the best
     * rate of every other candidate too.
     */
    private static List<Trial> worthASecondLook(List<Trial> bestFirst, int ahead) {
        if (bestFirst.isEmpty()) {
            return List.of();
        }
        Trial top = bestFirst.get(0);
        List<Trial> own = bestFirst.stream()
                .filter(t -> t.candidate().equals(top.candidate()))
                .toList();
        if (ahead > 0) {
            return own.stream().limit(PROMISING).toList();
        }
        List<Trial> chosen = new ArrayList<>(own.stream().limit(3).toList());
        for (double share : new double[] {1.0 / 3, 2.0 / 3}) {
            own.stream()
                    .min(Comparator.comparingDouble(t -> Math.abs(t.rate_kgHa() - share * top.rate_kgHa())))
                    .filter(t -> !chosen.contains(t))
                    .ifPresent(chosen::add);
        }
        Set<Candidate> seen = new HashSet<>(Set.of(top.candidate()));
        bestFirst.stream().filter(t -> seen.add(t.candidate())).forEach(chosen::add);
        return chosen;
    }

    private Valued option(
            Trial trial, Rig rig, LocalDate day, double[] with, Optional<Recourse.Later> later, double[] known) {
        NitrogenProduct product = trial.candidate().product();
        double[] gained = Worth.gained(with, base.yields_kgHa());
        double[] cost = filled(trial.cost_usdHa(futures.farm(), rig), gained.length);
        Prices prices = futures.farm().prices();
        Worth alone = Worth.of(gained, cost, prices, known);
        double[] allGained = later.map(l -> sum(gained, l.gained_kgHa())).orElse(gained);
        double[] allCost = later.map(l -> sum(cost, l.cost_usdHa())).orElse(cost);
        Worth worth = later.isPresent() ? Worth.of(allGained, allCost, prices, known) : alone;
        Zone zone = futures.zone();
        Option option = new Option(
                FieldPart.of(zone),
                Purpose.NITROGEN,
                day,
                new Option.Application(
                        product.name(),
                        trial.candidate().placement(),
                        trial.rate_kgHa(),
                        product.isLiquid()
                                ? product.litresHa(trial.rate_kgHa())
                                : trial.rate_kgHa() / product.nitrogen_share(),
                        product.isLiquid(),
                        rig.name()),
                worth,
                0,
                List.of(),
                later.map(l -> l.followUp(alone)),
                Optional.empty());
        double[] gains = PassWorth.gains_usdHa(allGained, 0, prices);
        Arrays.setAll(gains, m -> gains[m] - allCost[m]);
        return new Valued(option, gains);
    }

    private static double[] sum(double[] a, double[] b) {
        double[] sum = new double[a.length];
        Arrays.setAll(sum, m -> a[m] + b[m]);
        return sum;
    }

    private static double[] filled(double value, int n) {
        double[] all = new double[n];
        Arrays.fill(all, value);
        return all;
    }
}
