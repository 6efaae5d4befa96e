// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.earleaf.season.SeasonRun;
import org.earleaf.season.SeasonTrace;
import org.earleaf.season.SeasonTrace.Daily;
import org.earleaf.season.ZoneSeason;

/** What happens in every future if a season runs on as it is: the ground on which every option is measured. */
final class Baseline {
    private final ZoneFutures futures;
    private final ZoneSeason season;
    /** By day since the decision day, then by future. */
    private final List<double[]> heights = new ArrayList<>();

    private final List<double[]> nni = new ArrayList<>();
    private final double[] yields;
    private final double[] shortDays;
    private final SeasonTrace trace;
    private final SeasonRun typical;
    private final CropHeight height;

    Baseline(ZoneFutures futures, ZoneSeason season) {
        this.futures = futures;
        this.season = season;
        SeasonRun run = futures.morning(season);
        while (!run.date().isAfter(futures.last())) {
            season.advance(run, run.date().plusDays(1));
            heights.add(each(run, run::height_cm));
            nni.add(each(run, run::nni));
        }
        yields = each(run, m -> run.yield(m).grain_kgHa());
        shortDays = each(run, m -> run.shortDay(m) < 0 ? Double.POSITIVE_INFINITY : run.shortDay(m));
        int middle = median(yields);
        typical = season.start(futures.weather().get(middle));
        int days = futures.weather().get(middle).days();
        trace = season.newTrace(days);
        season.advance(typical, futures.last().plusDays(1), trace, 0);
        height = CropHeight.of(
                futures.farm(), futures.zone(), futures.on(), d -> trace.at(trace.day(d), Daily.HEIGHT_CM));
    }

    private static double[] each(SeasonRun run, java.util.function.IntToDoubleFunction value) {
        double[] all = new double[run.members()];
        Arrays.setAll(all, value);
        return all;
    }

    /** The future whose yield is the middle one. */
    private static int median(double[] values) {
        Integer[] order = new Integer[values.length];
        Arrays.setAll(order, k -> k);
        Arrays.sort(order, java.util.Comparator.comparingDouble(k -> values[k]));
        return order[(values.length - 1) / 2];
    }

    double[] yields_kgHa() {
        return yields;
    }

    SeasonTrace trace() {
        return trace;
    }

    /** The run behind the trace, at its end. */
    SeasonRun typical() {
        return typical;
    }

    CropHeight height() {
        return height;
    }

    /** Height on a day; before the decision day all futures agree. */
    Spread height_cm(LocalDate date) {
        int k = (int) java.time.temporal.ChronoUnit.DAYS.between(futures.decisionDay(), date);
        if (k < 0 || heights.isEmpty()) {
            return height.spread(new double[] {trace.at(trace.day(date), Daily.HEIGHT_CM)});
        }
        return height.spread(heights.get(Math.min(k, heights.size() - 1)));
    }

    List<Spread> nniByDay() {
        List<Spread> all = new ArrayList<>();
        int known = (int) java.time.temporal.ChronoUnit.DAYS.between(trace.first(), futures.decisionDay());
        for (int day = 0; day < trace.days(); day++) {
            if (day < known) {
                double v = trace.at(day, Daily.NNI);
                all.add(new Spread(v, v, v));
            } else {
                all.add(Spread.of(nni.get(Math.min(day - known, nni.size() - 1))));
            }
        }
        return all;
    }

    DateSpread nShort() {
        Spread s = Spread.of(shortDays);
        long short1 = Arrays.stream(shortDays).filter(Double::isFinite).count();
        return new DateSpread(date(s.p10()), date(s.p50()), date(s.p90()), (double) short1 / shortDays.length);
    }

    /** Day of a percentile; one that lies between a day and never is never. */
    private Optional<LocalDate> date(double day) {
        return Double.isFinite(day) ? Optional.of(trace.first().plusDays(Math.round(day))) : Optional.empty();
    }

    ZoneSeason season() {
        return season;
    }
}
