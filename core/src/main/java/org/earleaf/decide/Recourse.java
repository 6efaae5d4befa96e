// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.earleaf.decide.Candidate.Trial;
import org.earleaf.farm.Rig;
import org.earleaf.outlook.Baseline;
import org.earleaf.outlook.FieldCalendar;
import org.earleaf.outlook.Spread;
import org.earleaf.outlook.WorkableDays;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.protection.PassWorth;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.Units;
import org.earleaf.weather.Forcing;

/**
 * The best later pass after a pass, so that a pass is not valued as if it were the last word.
 *
 * <pre>
 * Q(a) = mean of R_a + max over t of mean of R(b_m | a, t),   b_m chosen on day t by what will be known then (Informed)
 *
 * t      1, 2 or 3 weeks after the pass, while a rig fits and nitrogen still helps
 * b      nothing, or 40 or 80 lb N/ac as the best product and placement of the day can lay it
 * R(b|a,t)  gain of b after a; 0 in members where none of the three days from t can be worked     [$/ha]
 * Source two-stage stochastic programming with recourse: Dantzig 1955, Manage. Sci. 1:197, from memory; days and
 *        amounts: own construct
 * Check  RecourseTest
 * </pre>
 */
final class Recourse {
    private static final double[] RATES_LBAC = {40, 80};
    private static final int WEEK_D = 7;
    private static final int DAYS_TO_WORK = 3;
    /** Below 50 cents an acre a second look is not worth telling (own construct). */
    private static final double LEAST_USDHA = .5 / Units.HA_PER_AC;

    private final ZoneEnsemble futures;
    private final Trials trials;
    private final List<Candidate> candidates;

    /** @param candidates in the order in which they are turned to */
    Recourse(ZoneEnsemble futures, Trials trials, List<Candidate> candidates) {
        this.futures = futures;
        this.trials = trials;
        this.candidates = candidates;
    }

    /**
     * What a later pass brings.
     *
     * @param gained_kgHa by member, dry grain on top of the first pass
     * @param cost_usdHa by member
     */
    record Later(
            LocalDate date,
            Trial trial,
            List<FollowUp.Step> steps,
            double[] gained_kgHa,
            double[] cost_usdHa,
            double chance,
            double adds_usdHa) {
        FollowUp followUp(Worth alone) {
            Rig rig = trial.rigs().get(0);
            return new FollowUp(
                    date,
                    trial.candidate().product().name(),
                    trial.candidate().placement(),
                    rig.name(),
                    steps,
                    chance,
                    adds_usdHa,
                    alone);
        }
    }

    /** When a later pass is looked for, in weeks after the first. */
    record Weeks(int from, int to) {}

    /**
     * The best later pass; empty when none adds anything worth telling.
     *
     * @param morning all members on the morning of the first pass, before it
     * @param alone dry grain by member after the first pass with nothing after it [kg/ha]
     */
    Optional<Later> after(SeasonRun morning, Trial first, double[] alone, Weeks weeks) {
        return after(morning, first, alone, weeks, Trials.ALL);
    }

    /** The week in which a later pass adds most on a few members; empty when none adds anything there. */
    Optional<Weeks> week(SeasonRun morning, Trial first, double[] alone, Weeks weeks) {
        return after(morning, first, Trials.of(alone, Trials.SCOUTS), weeks, Trials.SCOUTS)
                .map(few -> (int) ChronoUnit.WEEKS.between(morning.date(), few.date()))
                .map(week -> new Weeks(week, week));
    }

    private Optional<Later> after(SeasonRun morning, Trial first, double[] alone, Weeks weeks, int[] members) {
        SeasonRun run = trials.branch(morning, 1, members, members);
        run.applyAll(first.pass());
        Optional<Later> best = Optional.empty();
        for (int week = weeks.from(); week <= weeks.to(); week++) {
            LocalDate day = morning.date().plusDays((long) WEEK_D * week);
            if (day.isAfter(futures.last())) {
                break;
            }
            futures.advance(run, day);
            Optional<Later> later = on(run, alone, first.candidate(), members);
            double least = best.map(Later::adds_usdHa).orElse(LEAST_USDHA);
            if (later.isPresent() && later.get().adds_usdHa() > least) {
                best = later;
            }
        }
        return best;
    }

    private Optional<Later> on(SeasonRun run, double[] alone, Candidate wished, int[] members) {
        LocalDate day = run.date();
        List<Trial> choices = choices(run, wished);
        if (choices.isEmpty()) {
            return Optional.empty();
        }
        double[][] yields =
                trials.yields(run, choices, IntStream.range(0, members.length).toArray(), members);
        double[][] gains = new double[yields.length][];
        for (int b = 0; b < gains.length; b++) {
            double[] gained = Worth.gained(yields[b], alone);
            gains[b] = PassWorth.gains_usdHa(
                    gained, cost(choices.get(b)), futures.farm().prices());
        }
        int[] courses = futures.courses();
        Informed informed = new Informed(
                Trials.of(rain(day), members),
                IntStream.of(members).map(m -> courses[m]).toArray());
        int[] chosen = informed.choices(gains);
        double[] gained = new double[chosen.length];
        double[] cost = new double[chosen.length];
        double adds = 0;
        int made = 0;
        for (int m = 0; m < chosen.length; m++) {
            if (chosen[m] != Informed.NONE && workable(members[m], day)) {
                gained[m] = yields[chosen[m]][m] - alone[m];
                cost[m] = cost(choices.get(chosen[m]));
                adds += gains[chosen[m]][m] / chosen.length;
                made++;
            }
        }
        List<FollowUp.Step> steps = steps(informed, informed.rule(gains), choices);
        return Optional.of(new Later(day, choices.get(0), steps, gained, cost, (double) made / chosen.length, adds));
    }

    private double cost(Trial trial) {
        return trial.cost_usdHa(futures.farm(), trial.rigs().get(0));
    }

    /** The wished candidate, or the first that still fits. */
    private List<Trial> choices(SeasonRun run, Candidate wished) {
        double p90 = Spread.of(Baseline.each(run, run::height_cm)).p90();
        double collars = Spread.of(Baseline.each(run, run::collars)).p50();
        List<Candidate> order = new ArrayList<>(List.of(wished));
        order.addAll(candidates);
        for (Candidate c : order) {
            List<Rig> fitting = c.rigs().stream()
                    .filter(r -> Reach.mayEnter(r, c.placement(), p90))
                    .toList();
            double most = Reach.most_kgHa(c.placement(), collars, c.product().isLiquid());
            if (!fitting.isEmpty() && most > 0 && isTime(run)) {
                return Arrays.stream(RATES_LBAC)
                        .map(Units::kgHa)
                        .filter(rate -> rate <= most + 1e-9)
                        .mapToObj(rate -> new Trial(c, rate, fitting))
                        .toList();
            }
        }
        return List.of();
    }

    private static boolean isTime(SeasonRun run) {
        return Spread.of(Baseline.each(run, run::rep)).p50() < FieldCalendar.TOO_LATE_REP;
    }

    /** Rain from this morning to a day [mm], by member. */
    double[] rain(LocalDate day) {
        double[] sums = new double[ZoneEnsemble.MEMBERS];
        for (int m = 0; m < sums.length; m++) {
            Forcing f = futures.weatherOf(m);
            for (int k = f.index(futures.decisionDay()); k < Math.min(f.days(), f.index(day)); k++) {
                sums[m] += f.rain_mm()[k];
            }
        }
        return sums;
    }

    private boolean workable(int m, LocalDate day) {
        for (int d = 0; d < DAYS_TO_WORK; d++) {
            Forcing f = futures.weatherOf(m);
            if (WorkableDays.isDry(f.rain_mm(), f.index(day) + d)) {
                return true;
            }
        }
        return false;
    }

    /** What is done by rain, neighbours that do the same as one. */
    private static List<FollowUp.Step> steps(Informed informed, int[] rule, List<Trial> choices) {
        List<FollowUp.Step> steps = new ArrayList<>();
        double from = 0;
        double share = 0;
        for (int g = 0; g < rule.length; g++) {
            share += informed.share(g);
            if (g + 1 < rule.length && rule[g + 1] == rule[g]) {
                continue;
            }
            double to = g + 1 < rule.length ? informed.edges()[g] : Double.POSITIVE_INFINITY;
            double rate = rule[g] == Informed.NONE ? 0 : choices.get(rule[g]).rate_kgHa();
            steps.add(new FollowUp.Step(from, to, share, rate));
            from = to;
            share = 0;
        }
        return steps;
    }
}
