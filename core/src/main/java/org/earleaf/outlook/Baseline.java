// SPDX-License-Identifier: Apache-2.0
package org.earleaf.outlook;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.Yield;
import org.earleaf.season.ZoneSeason;

/** What happens in every member if a season runs on as it is: the ground on which every option is measured. */
public final class Baseline {
    private final ZoneEnsemble ensemble;
    private final SeasonTrace trace;
    private final SeasonRun run;
    /** By day since the decision day, then by member. */
    private final List<double[]> heights = new ArrayList<>();

    private final List<double[]> nni = new ArrayList<>();
    private final StageDays stages;
    private final double[] yields;
    private final DateSpread nShort;

    public Baseline(ZoneEnsemble ensemble, ZoneSeason season) {
        this.ensemble = ensemble;
        trace = ensemble.past();
        run = ensemble.members();
        // The morning itself: what passes of this day are measured against.
        heights.add(each(run::height_cm));
        nni.add(each(run::nni));
        stages = new StageDays(ensemble.decisionDay());
        stages.note(run);
        while (!run.date().isAfter(ensemble.last())) {
            season.advance(run, run.date().plusDays(1), trace);
            heights.add(each(run::height_cm));
            nni.add(each(run::nni));
            stages.note(run);
        }
        ensemble.count(run, ensemble.decisionDay());
        yields = each(m -> run.yield(m).grain_kgHa());
        nShort = spread(run::shortDay);
    }

    private double[] each(IntToDoubleFunction value) {
        return each(run, value);
    }

    /** Something of every member of a run. */
    public static double[] each(SeasonRun run, IntToDoubleFunction value) {
        double[] all = new double[run.members()];
        Arrays.setAll(all, value);
        return all;
    }

    public double[] yields_kgHa() {
        return yields;
    }

    public SeasonTrace trace() {
        return trace;
    }

    /** Height in the evening of a day; before the decision day only the mean is kept. */
    public Spread height_cm(LocalDate date) {
        int k = (int) ChronoUnit.DAYS.between(ensemble.decisionDay(), date) + 1;
        if (k < 0) {
            double mean = trace.at(trace.day(date), Daily.HEIGHT_CM);
            return new Spread(mean, mean, mean);
        }
        return Spread.of(heights.get(Math.min(k, heights.size() - 1)));
    }

    /** Height by member in the evening of a day, from the decision day on. */
    public double[] heights_cm(LocalDate date) {
        int k = (int) ChronoUnit.DAYS.between(ensemble.decisionDay(), date) + 1;
        return heights.get(Math.max(0, Math.min(k, heights.size() - 1))).clone();
    }

    public StageDays stages() {
        return stages;
    }

    public List<Spread> nniByDay() {
        List<Spread> all = new ArrayList<>();
        int known = (int) ChronoUnit.DAYS.between(trace.first(), ensemble.decisionDay());
        for (int day = 0; day < trace.days(); day++) {
            if (day < known) {
                double v = trace.at(day, Daily.NNI);
                all.add(new Spread(v, v, v));
            } else {
                all.add(Spread.of(nni.get(Math.min(day - known + 1, nni.size() - 1))));
            }
        }
        return all;
    }

    public DateSpread nShort() {
        return nShort;
    }

    /** When members reach something, as days of the run; below nought for a member that never does. */
    public DateSpread spread(IntToDoubleFunction dayOfMember) {
        return spread(each(m -> {
            double day = dayOfMember.applyAsDouble(m);
            return day < 0 ? Double.POSITIVE_INFINITY : day;
        }));
    }

    private DateSpread spread(double[] days) {
        Spread s = Spread.of(days);
        long reached = Arrays.stream(days).filter(Double::isFinite).count();
        return new DateSpread(date(s.p10()), date(s.p50()), date(s.p90()), (double) reached / days.length);
    }

    /** Day of a percentile; one that lies between a day and never is never. */
    private Optional<LocalDate> date(double day) {
        return Double.isFinite(day) && day >= 0
                ? Optional.of(trace.first().plusDays(Math.round(day)))
                : Optional.empty();
    }

    /** The run at its end. */
    public SeasonRun end() {
        return run;
    }

    /** What binds the yield in most members. */
    public Yield.Limit limitedBy() {
        int[] votes = new int[Yield.Limit.values().length];
        for (int m = 0; m < run.members(); m++) {
            votes[run.yield(m).limit().ordinal()]++;
        }
        int most = 0;
        for (int k = 1; k < votes.length; k++) {
            most = votes[k] > votes[most] ? k : most;
        }
        return Yield.Limit.values()[most];
    }

    public double waterRemainder_mm() {
        return Arrays.stream(each(run::waterRemainder_mm)).map(Math::abs).max().orElse(0);
    }

    public double nitrogenRemainder_kgHa() {
        return Arrays.stream(each(run::nitrogenRemainder_kgHa))
                .map(Math::abs)
                .max()
                .orElse(0);
    }
}
