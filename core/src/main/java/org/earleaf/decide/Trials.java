// SPDX-License-Identifier: Apache-2.0
package org.earleaf.decide;

import java.util.Arrays;
import java.util.List;
import java.util.concurrent.atomic.LongAdder;
import java.util.stream.IntStream;
import org.earleaf.decide.Candidate.Trial;
import org.earleaf.outlook.ZoneEnsemble;
import org.earleaf.season.SeasonRun;
import org.earleaf.units.SideBySide;

/** Runs trials to the end of the season, many lanes at once, and counts the runs. */
final class Trials {
    /** Lanes of one run: enough to fill the vector units, few enough to stay in the cache. */
    private static final int LANES = 200;
    /** All members, and the few on which rates are looked through first. */
    static final int[] ALL = IntStream.range(0, ZoneEnsemble.MEMBERS).toArray();

    static final int[] SCOUTS =
            IntStream.range(0, ZoneEnsemble.MEMBERS / 5).map(k -> 5 * k).toArray();
    private static final int[] OTHERS =
            IntStream.range(0, ZoneEnsemble.MEMBERS).filter(m -> m % 5 != 0).toArray();

    private final ZoneEnsemble futures;
    private final SideBySide how;
    private final LongAdder simulated = new LongAdder();

    Trials(ZoneEnsemble futures, SideBySide how) {
        this.futures = futures;
        this.how = how;
    }

    /** How pieces of these trials are done. */
    SideBySide how() {
        return how;
    }

    /** Season runs so far. */
    long simulated() {
        return simulated.sum();
    }

    /** Dry grain [kg/ha] by trial and member when the trials are made this morning, for some of the members. */
    double[][] yields(SeasonRun morning, List<Trial> trials, int[] members) {
        return yields(morning, trials, members, members);
    }

    /** The same on all members, where those of the few are known. */
    double[][] yieldsOfAll(SeasonRun morning, List<Trial> trials, List<double[]> ofScouts) {
        double[][] others = yields(morning, trials, OTHERS);
        double[][] all = new double[trials.size()][ALL.length];
        for (int t = 0; t < all.length; t++) {
            put(all[t], SCOUTS, ofScouts.get(t));
            put(all[t], OTHERS, others[t]);
        }
        return all;
    }

    private static void put(double[] all, int[] members, double[] of) {
        for (int k = 0; k < members.length; k++) {
            all[members[k]] = of[k];
        }
    }

    /** Of values by member those of some. */
    static double[] of(double[] all, int[] members) {
        return IntStream.of(members).mapToDouble(m -> all[m]).toArray();
    }

    /**
     * The same from a run that need not hold all members.
     *
     * @param lanes where in the run each of the members stands
     */
    double[][] yields(SeasonRun morning, List<Trial> trials, int[] lanes, int[] members) {
        double[][] yields = new double[trials.size()][members.length];
        int atOnce = Math.max(1, LANES / members.length);
        // Blocks share nothing, so a processor without a zone of its own helps with those of another.
        List<Integer> blocks = IntStream.iterate(0, k -> k < trials.size(), k -> k + atOnce)
                .boxed()
                .toList();
        how.each(blocks, k -> {
            int n = Math.min(atOnce, trials.size() - k);
            yields(branch(morning, n, lanes, members), trials.subList(k, k + n), Arrays.copyOfRange(yields, k, k + n));
            return n;
        });
        return yields;
    }

    private void yields(SeasonRun run, List<Trial> trials, double[][] yields) {
        int n = run.members() / trials.size();
        for (int t = 0; t < trials.size(); t++) {
            for (int m = 0; m < n; m++) {
                run.apply(t * n + m, trials.get(t).pass());
            }
        }
        futures.finish(run);
        simulated.add((long) trials.size() * n);
        for (int t = 0; t < trials.size(); t++) {
            int at = t * n;
            Arrays.setAll(yields[t], m -> run.yield(at + m).grain_kgHa());
        }
    }

    /** Copies of some members, each with its own course of weather, one set after the other. */
    SeasonRun branch(SeasonRun run, int copies, int[] lanes, int[] members) {
        int[] weatherOf = ZoneEnsemble.weatherOf(IntStream.of(members), futures.weather());
        return run.branch(repeated(lanes, copies), futures.weather(), repeated(weatherOf, copies));
    }

    private static int[] repeated(int[] values, int copies) {
        int[] all = new int[copies * values.length];
        Arrays.setAll(all, k -> values[k % values.length]);
        return all;
    }
}
