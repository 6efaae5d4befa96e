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
        double[][] yields = new double[trials.size()][members.length];
        int atOnce = Math.max(1, LANES / members.length);
        // Blocks share nothing, so a processor without a zone of its own helps with those of another.
        List<Integer> blocks = IntStream.iterate(0, k -> k < trials.size(), k -> k + atOnce)
                .boxed()
                .toList();
        how.each(blocks, k -> {
            int n = Math.min(atOnce, trials.size() - k);
            yields(morning, trials.subList(k, k + n), members, Arrays.copyOfRange(yields, k, k + n));
            return n;
        });
        return yields;
    }

    private void yields(SeasonRun morning, List<Trial> trials, int[] members, double[][] yields) {
        int n = members.length;
        SeasonRun run = branch(morning, trials.size(), members);
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
    SeasonRun branch(SeasonRun run, int copies, int[] members) {
        int[] from = new int[copies * members.length];
        Arrays.setAll(from, lane -> members[lane % members.length]);
        return run.branch(from, futures.weather(), ZoneEnsemble.weatherOf(IntStream.of(from), futures.weather()));
    }
}
